package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.ValueType;

/** Reads look-ups and checks them against their tables and the vocabulary: every row can be reached, and by one way only. */
final class LookUpReader {

    private final Layers layers;
    private final ConditionReader conditions;

    LookUpReader(Layers layers, ConditionReader conditions) {
        this.layers = layers;
        this.conditions = conditions;
    }

    /** A sound {@code lookUp}; empty if it or its tables have faults, which are then told. */
    Optional<Rule> read(Entry lookUp, SubjectKind subjects) {
        Entry name = lookUp.member("quantity");
        Optional<QuantityDescription> quantity = conditions.quantity(name.text(), name, subjects);
        Optional<Layered> layered = layers.table(lookUp.member("table"));
        if (quantity.isEmpty() || layered.isEmpty()) {
            return Optional.empty();
        }
        LookUpTable table = layered.get().table().orElseThrow();
        Sense sense = lookUp.optional(Sense.AT_LEAST.word()).isPresent() ? Sense.AT_LEAST : Sense.AT_MOST;
        Entry column = lookUp.member(sense.word());
        boolean holds = holdsAllowed(table, column, quantity.get());
        Optional<List<TableKey>> keys = keys(lookUp, table, column.text(), subjects);
        if (!holds || keys.isEmpty()) {
            return Optional.empty();
        }
        tellTwice(layered.get(), otherColumns(table, column.text()));
        Optional<Entry> interpolate = lookUp.optional("interpolate");
        Optional<Rule.Interpolation> interpolation =
                interpolate.flatMap(entry -> interpolation(entry, lookUp, keys.get(), table, column));
        if (interpolate.isEmpty()) {
            lookUp.optional("round")
                    .ifPresent(r -> r.fault("Only an interpolated value is rounded", "interpolate, or no round"));
        }
        return interpolate.isPresent() && interpolation.isEmpty()
                ? Optional.empty()
                : Optional.of(new Rule.LookUp(
                        name.text(), sense, column.text(), table, keys.get(), interpolation, share(lookUp)));
    }

    private static Optional<Measure> share(Entry lookUp) {
        return lookUp.optional("share").flatMap(entry -> TokenReader.number(entry, MeasureUnit.RATIO));
    }

    private static boolean holdsAllowed(LookUpTable table, Entry column, QuantityDescription quantity) {
        Optional<LookUpTable.Column> found = column(table, column.text(), column);
        if (found.isEmpty()) {
            return false;
        }
        if (quantity.type() != ValueType.NUMBER) {
            column.fault("'" + quantity.name() + "' is no number", "a quantity that is a number");
            return false;
        }
        return fits(found.get(), quantity, column);
    }

    private static Optional<LookUpTable.Column> column(LookUpTable table, String name, Entry at) {
        Optional<LookUpTable.Column> column =
                Optional.ofNullable(table.columns().get(name));
        if (column.isEmpty()) {
            at.unknown(name, "column in " + table.reference(), table.columns().keySet());
        }
        return column;
    }

    /** Whether a column can hold what a quantity is found to be; told if not. */
    private static boolean fits(LookUpTable.Column column, QuantityDescription quantity, Entry at) {
        boolean fits = column.type() == quantity.type()
                && (column.type() != ValueType.NUMBER
                        || column.unit()
                                .orElseThrow()
                                .sameDimension(quantity.unit().orElseThrow()));
        if (!fits) {
            at.file()
                    .fault(
                            at.line(),
                            "'" + quantity.name() + "'",
                            "The column holds " + column.word() + ", the quantity is "
                                    + quantity.unit()
                                            .map(unit -> "a number in " + unit.symbol())
                                            .orElse(quantity.type() == ValueType.FLAG ? "a flag" : "a word"),
                            "a quantity of what the column holds");
        }
        return fits;
    }

    private Optional<List<TableKey>> keys(Entry lookUp, LookUpTable table, String allowed, SubjectKind subjects) {
        Map<String, Entry> stated = lookUp.membersOf("keys");
        stated.forEach((name, key) -> {
            if (!table.columns().containsKey(name) || name.equals(allowed)) {
                key.unknown(
                        name,
                        "key column in " + table.reference(),
                        table.columns().keySet().stream()
                                .filter(c -> !c.equals(allowed))
                                .toList());
            }
        });
        List<TableKey> keys = new ArrayList<>();
        boolean sound = true;
        for (String column : table.columns().keySet()) {
            if (column.equals(allowed)) {
                continue;
            }
            if (!stated.containsKey(column)) {
                lookUp.member("keys")
                        .fault("The column '" + column + "' of " + table.reference() + " has no key", "a key for it");
                sound = false;
                continue;
            }
            Optional<TableKey> key = key(column, stated.get(column), lookUp, table, subjects);
            sound &= key.isPresent();
            key.ifPresent(keys::add);
        }
        return sound ? Optional.of(keys) : Optional.empty();
    }

    private Optional<TableKey> key(String column, Entry key, Entry lookUp, LookUpTable table, SubjectKind subjects) {
        Optional<Entry> from = key.optional("from");
        return from.isPresent()
                ? translated(column, key, table, subjects)
                : direct(column, key, isInterpolated(column, lookUp), table, subjects);
    }

    private static boolean isInterpolated(String column, Entry lookUp) {
        return lookUp.optional("interpolate")
                .filter(i -> i.member("key").text().equals(column))
                .isPresent();
    }

    private Optional<TableKey> direct(
            String name, Entry key, boolean isInterpolated, LookUpTable table, SubjectKind subjects) {
        Entry asked = key.member("quantity");
        Optional<QuantityDescription> quantity = conditions.quantity(asked.text(), asked, subjects);
        LookUpTable.Column column = table.columns().get(name);
        if (quantity.isEmpty() || !fits(column, quantity.get(), asked)) {
            return Optional.empty();
        }
        tellUnreachable(table, name, quantity.get(), asked);
        Optional<Entry> conservative = key.optional("conservative");
        Optional<Entry> least = key.optional("least");
        Optional<Entry> unstated = key.optional("unstated");
        Optional<Entry> times = key.optional("times");
        Optional<Entry> raised = key.optional("raised");
        if (column.type() != ValueType.NUMBER) {
            Stream.of(conservative, least, unstated, times, raised)
                    .flatMap(Optional::stream)
                    .forEach(e -> e.fault("Only a key that is a number has this", "the quantity alone"));
        } else if (conservative.isEmpty() && !isInterpolated && column.unit().orElseThrow() != MeasureUnit.RATIO) {
            key.fault(
                    "It is not said which row counts between two rows",
                    "conservative: up, down, or none where only a row's own value counts");
        }
        Optional<Measure> from = least.flatMap(e -> number(e, column));
        Optional<Measure> taken = unstated.flatMap(e -> number(e, column));
        TableKey.Match match =
                conservative.map(c -> c.worded(TableKey.Match.class)).orElse(TableKey.Match.NONE);
        Optional<TableKey.Factor> factor = times.flatMap(e -> factor(e, subjects));
        Optional<TableKey.Raise> raise = raised.flatMap(e -> raise(e, subjects));
        boolean isRead = least.isPresent() == from.isPresent()
                && unstated.isPresent() == taken.isPresent()
                && times.isPresent() == factor.isPresent()
                && raised.isPresent() == raise.isPresent();
        return isRead
                ? Optional.of(new TableKey.Direct(name, asked.text(), match, from, taken, factor, raise))
                : Optional.empty();
    }

    private Optional<TableKey.Raise> raise(Entry raised, SubjectKind subjects) {
        Entry asked = raised.member("quantity");
        Optional<QuantityDescription> quantity = conditions.quantity(asked.text(), asked, subjects);
        Optional<Layered> layered = layers.table(raised.member("over"));
        if (quantity.isEmpty() || layered.isEmpty()) {
            return Optional.empty();
        }
        LookUpTable assumed = layered.get().table().orElseThrow();
        Entry name = raised.member("column");
        Optional<LookUpTable.Column> column = column(assumed, name.text(), name);
        if (column.isEmpty() || !fits(column.get(), quantity.get(), asked)) {
            return Optional.empty();
        }
        tellTwice(layered.get(), otherColumns(assumed, name.text()));
        Optional<Measure> from = TokenReader.number(raised.member("from"), MeasureUnit.RATIO);
        return from.isEmpty()
                ? Optional.empty()
                : keys(raised, assumed, name.text(), subjects)
                        .filter(keys -> isOneNumber(keys, raised))
                        .map(keys -> new TableKey.Raise(
                                asked.text(), assumed, name.text(), (TableKey.Direct) keys.get(0), from.get()));
    }

    private Optional<TableKey.Factor> factor(Entry times, SubjectKind subjects) {
        Optional<Layered> layered = layers.table(times.member("from"));
        if (layered.isEmpty()) {
            return Optional.empty();
        }
        LookUpTable table = layered.get().table().orElseThrow();
        Entry name = times.member("column");
        Optional<LookUpTable.Column> column = column(table, name.text(), name);
        if (column.isEmpty()) {
            return Optional.empty();
        }
        if (column.get().unit().filter(MeasureUnit.RATIO::equals).isEmpty()) {
            name.fault("The column holds " + column.get().word() + ", a factor has no unit", "a column of ratios");
            return Optional.empty();
        }
        tellTwice(layered.get(), otherColumns(table, name.text()));
        return keys(times, table, name.text(), subjects)
                .filter(keys -> isOneNumber(keys, times))
                .map(keys -> new TableKey.Factor(
                        table,
                        name.text(),
                        (TableKey.Direct) keys.get(0),
                        times.optional("interpolation").map(Entry::text)));
    }

    private static boolean isOneNumber(List<TableKey> keys, Entry times) {
        boolean isOne = keys.size() == 1
                && keys.get(0) instanceof TableKey.Direct direct
                && direct.times().isEmpty()
                && direct.raised().isEmpty();
        if (!isOne) {
            times.member("keys").fault("One quantity finds the row of this table", "one key with a quantity");
        }
        return isOne;
    }

    private static List<String> otherColumns(LookUpTable table, String column) {
        return table.columns().keySet().stream()
                .filter(name -> !name.equals(column))
                .toList();
    }

    /** A zero is the same in every unit. */
    private static Optional<Measure> number(Entry entry, LookUpTable.Column column) {
        if (column.type() != ValueType.NUMBER) {
            return Optional.empty();
        }
        MeasureUnit unit = column.unit().orElseThrow();
        return entry.text().equals("0") ? Optional.of(Measure.of(0, unit)) : TokenReader.number(entry, unit);
    }

    private Optional<TableKey> translated(String column, Entry key, LookUpTable table, SubjectKind subjects) {
        Entry from = key.member("from");
        Optional<Layered> layered = layers.table(from);
        if (layered.isEmpty()) {
            return Optional.empty();
        }
        LookUpTable other = layered.get().table().orElseThrow();
        Optional<LookUpTable.Column> given = column(other, column, from);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        if (!given.get().equals(table.columns().get(column))) {
            from.fault(
                    "The column '" + column + "' of " + other.reference() + " holds "
                            + given.get().word() + ", that of " + table.reference() + " "
                            + table.columns().get(column).word(),
                    "columns that hold the same");
            return Optional.empty();
        }
        List<TableKey.Direct> by = new ArrayList<>();
        boolean sound = true;
        for (Map.Entry<String, Entry> one : key.membersOf("by").entrySet()) {
            Optional<TableKey.Direct> found = by(one.getKey(), one.getValue(), other, subjects);
            found.ifPresent(by::add);
            sound &= found.isPresent();
        }
        if (!sound) {
            return Optional.empty();
        }
        tellTwice(layered.get(), by.stream().map(TableKey.Direct::column).toList());
        tellUntranslated(table, column, other, from);
        return largest(key, other, by).map(largest -> new TableKey.Translated(column, other, by, largest));
    }

    private static Optional<Map<String, Measure>> largest(Entry key, LookUpTable other, List<TableKey.Direct> by) {
        List<String> sides = by.stream()
                .map(TableKey.Direct::column)
                .filter(name -> other.columns().get(name).type() == ValueType.NUMBER)
                .toList();
        Map<String, Measure> largest = new LinkedHashMap<>();
        boolean sound = true;
        for (Map.Entry<String, Entry> one : key.membersOf("smallerUpTo").entrySet()) {
            boolean isSide = sides.contains(one.getKey());
            if (!isSide) {
                one.getValue().unknown(one.getKey(), "column of numbers in by", sides);
            }
            Optional<Measure> end =
                    isSide ? number(one.getValue(), other.columns().get(one.getKey())) : Optional.empty();
            end.ifPresent(value -> largest.put(one.getKey(), value));
            sound &= end.isPresent();
        }
        return sound ? Optional.of(largest) : Optional.empty();
    }

    /** One way into a table that translates: a quantity alone, or with the direction in which numbers are taken. */
    private Optional<TableKey.Direct> by(String name, Entry stated, LookUpTable other, SubjectKind subjects) {
        boolean isDirected = stated.isMap();
        Entry asked = isDirected ? stated.member("quantity") : stated;
        Optional<LookUpTable.Column> column = column(other, name, asked);
        Optional<QuantityDescription> quantity = conditions.quantity(asked.text(), asked, subjects);
        if (column.isEmpty() || quantity.isEmpty() || !fits(column.get(), quantity.get(), asked)) {
            return Optional.empty();
        }
        tellUnreachable(other, name, quantity.get(), asked);
        TableKey.Match match =
                isDirected ? stated.member("conservative").worded(TableKey.Match.class) : TableKey.Match.NONE;
        Optional<Entry> raised = isDirected ? stated.optional("raised") : Optional.empty();
        Optional<TableKey.Raise> raise = raised.flatMap(e -> raise(e, subjects));
        return raised.isPresent() == raise.isPresent()
                ? Optional.of(new TableKey.Direct(
                        name, asked.text(), match, Optional.empty(), Optional.empty(), Optional.empty(), raise))
                : Optional.empty();
    }

    /** A word in the table that the quantity can never be was mistyped. */
    private static void tellUnreachable(LookUpTable table, String column, QuantityDescription quantity, Entry at) {
        if (quantity.words().isEmpty()) {
            return;
        }
        for (String word : words(table, column)) {
            if (!quantity.words().contains(word)) {
                at.file()
                        .fault(
                                at.line(),
                                "'" + Shortened.of(word) + "'",
                                "The column '" + column + "' of " + table.reference() + " has a word that '"
                                        + quantity.name() + "' can never be",
                                KnownNames.accepted(word, quantity.words()));
            }
        }
    }

    private static void tellUntranslated(LookUpTable table, String column, LookUpTable other, Entry at) {
        TreeSet<String> given = words(other, column);
        for (String word : words(table, column)) {
            if (!given.contains(word)) {
                at.file()
                        .fault(
                                at.line(),
                                "'" + Shortened.of(word) + "'",
                                "The column '" + column + "' of " + table.reference() + " has a word that "
                                        + other.reference() + " never gives",
                                KnownNames.accepted(word, given));
            }
        }
    }

    private static TreeSet<String> words(LookUpTable table, String column) {
        TreeSet<String> words = new TreeSet<>();
        table.rows().forEach(row -> {
            if (row.cells().get(column) instanceof Word word) {
                words.add(word.word());
            }
        });
        return words;
    }

    /** Tells rows that cannot be told apart by these columns; what a file does not hold may stand in another row. */
    private static void tellTwice(Layered layered, List<String> columns) {
        Map<List<Value>, GridRow> first = new LinkedHashMap<>();
        StandardFile.Content.Grid grid = (StandardFile.Content.Grid) layered.content();
        for (GridRow row : grid.rows()) {
            if (row.cells().size() < grid.columns().size()) {
                continue;
            }
            List<Value> key = columns.stream().map(c -> row.cells().get(c)).toList();
            GridRow other = first.putIfAbsent(key, row);
            if (other != null) {
                row.entry()
                        .fault(
                                "Line " + other.entry().line() + " has a row with the same "
                                        + String.join(", ", columns) + " already",
                                "each row once");
            }
        }
    }

    private static Optional<Rule.Interpolation> interpolation(
            Entry interpolate, Entry lookUp, List<TableKey> keys, LookUpTable table, Entry allowed) {
        Entry name = interpolate.member("key");
        boolean isKey =
                keys.stream().anyMatch(key -> key.column().equals(name.text()) && key instanceof TableKey.Direct);
        if (!isKey || table.columns().get(name.text()).type() != ValueType.NUMBER) {
            name.unknown(
                    name.text(),
                    "key that is a number",
                    keys.stream()
                            .filter(key -> key instanceof TableKey.Direct
                                    && table.columns().get(key.column()).type() == ValueType.NUMBER)
                            .map(TableKey::column)
                            .toList());
            return Optional.empty();
        }
        Optional<Entry> round = lookUp.optional("round");
        Optional<Measure> step =
                round.flatMap(entry -> step(entry, table.columns().get(allowed.text())));
        return round.isPresent() && step.isEmpty()
                ? Optional.empty()
                : Optional.of(new Rule.Interpolation(
                        name.text(), interpolate.member("clause").text(), step));
    }

    private static Optional<Measure> step(Entry round, LookUpTable.Column column) {
        Optional<Measure> step = TokenReader.number(round, column.unit().orElseThrow());
        if (step.isPresent() && step.get().value() <= 0) {
            round.fault("Nothing is rounded to this", "a number above 0");
            return Optional.empty();
        }
        return step;
    }
}
