package org.deckplanreview.assessment;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.Value;
import org.deckplanreview.ruleset.LookUpTable;
import org.deckplanreview.ruleset.TableKey;
import org.deckplanreview.vocabulary.Sense;

/** How rows of tables are found. */
final class TableRows {
    private TableRows() {}

    static double number(LookUpTable.Row row, String column) {
        return ((Measure) row.cells().get(column)).value();
    }

    static boolean isSame(Value cell, Value value) {
        return cell instanceof Measure a && value instanceof Measure b
                ? Sense.EQUAL.holds(b.in(a.unit()), a.value())
                : cell.equals(value);
    }

    /** Of two neighbours the one that the key's direction asks for. */
    static <T> Optional<T> next(TableKey.Direct key, Optional<T> lower, Optional<T> upper) {
        return switch (key.match()) {
            case NONE -> Optional.empty();
            case UP -> upper;
            case DOWN -> lower;
        };
    }

    /** The rows with the value of a column that a found one leads to. */
    static List<LookUpTable.Row> matching(TableKey.Direct by, Value found, List<LookUpTable.Row> all) {
        Optional<Value> value = all.stream()
                .map(row -> row.cells().get(by.column()))
                .filter(cell -> isSame(cell, found))
                .findFirst()
                .or(() -> found instanceof Measure measure ? beside(by, measure, all) : Optional.empty());
        return value.map(taken -> all.stream()
                        .filter(row -> isSame(row.cells().get(by.column()), taken))
                        .toList())
                .orElse(List.of());
    }

    private static Optional<Value> beside(TableKey.Direct by, Measure found, List<LookUpTable.Row> all) {
        NavigableMap<Double, Value> values = new TreeMap<>();
        all.forEach(row -> values.put(number(row, by.column()), row.cells().get(by.column())));
        if (values.isEmpty()) {
            return Optional.empty();
        }
        double at = found.in(((Measure) values.firstEntry().getValue()).unit());
        return next(
                by,
                Optional.ofNullable(values.lowerEntry(at)).map(NavigableMap.Entry::getValue),
                Optional.ofNullable(values.higherEntry(at)).map(NavigableMap.Entry::getValue));
    }

    static TakenRow taken(LookUpTable table, LookUpTable.Row row, List<TableKey.Direct> by) {
        String keys = by.stream()
                .map(one -> one.quantity() + " " + Phrases.of(row.cells().get(one.column())))
                .collect(Collectors.joining(", "));
        return new TakenRow(table.reference(), keys, table.source(), table.confirmedBy(row));
    }
}
