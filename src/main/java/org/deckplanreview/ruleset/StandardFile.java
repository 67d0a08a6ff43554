package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.vocabulary.Table;
import org.deckplanreview.vocabulary.ValueType;

/**
 * The values of one edition of a standard, as its file states them.
 *
 * @param source with the file's name as its key
 * @param statements by name
 * @param digest over the file's content, whatever its layout
 */
record StandardFile(RulesetFile file, Source source, Map<String, Statement> statements, String digest) {

    /** The same values, whose faults are told in another place. */
    StandardFile in(RulesetFile other) {
        Map<String, Statement> moved = new TreeMap<>();
        statements.forEach((name, s) -> moved.put(
                name,
                s.content() instanceof Content.Single single
                        ? new Statement(
                                new Content.Single(single.token().in(other)), s.clause(), s.confirmedBy(), s.on())
                        : s));
        return new StandardFile(other, source, Collections.unmodifiableMap(moved), digest);
    }

    boolean faultless() {
        return file.faultless();
    }

    /** A value or table with its clause. */
    record Statement(Content content, String clause, Confirmation confirmedBy, LocalDate on) {
        Citation citation(Source source) {
            return new Citation(source, clause, confirmedBy, on);
        }
    }

    /** What is stated. */
    sealed interface Content {
        /** One token, to be read as what it is used for. */
        record Single(Entry token) implements Content {}

        /** A table with its columns in order. */
        record Grid(Map<String, ColumnType> columns, List<Table.Row> rows) implements Content {}
    }

    /** What a column holds; a unit for numbers. */
    record ColumnType(String text, ValueType type, Optional<MeasureUnit> unit) {}

    /** Reads a checked file; empty if it has faults, which are then told. */
    static Optional<StandardFile> read(Entry root) {
        if (!root.isMap()) {
            return Optional.empty();
        }
        Map<String, Statement> statements = new TreeMap<>();
        members(root, "values")
                .forEach((name, value) -> confirmedOn(value)
                        .ifPresent(on ->
                                statements.put(name, statement(value, new Content.Single(value.member("value")), on))));
        members(root, "tables").forEach((name, table) -> {
            Map<String, ColumnType> columns = columns(table.member("columns"));
            List<Table.Row> rows = rows(table.member("rows"), columns);
            if (statements.containsKey(name)) {
                table.file().fault(table.line(), "'" + name + "'", "A value has this name already", "another name");
            }
            confirmedOn(table)
                    .ifPresent(on -> statements.put(name, statement(table, new Content.Grid(columns, rows), on)));
        });
        root.optional("standard").filter(Entry::isSound).ifPresent(StandardFile::checkName);
        if (!root.file().faultless()) {
            return Optional.empty();
        }
        String name = root.member("standard").text();
        return Optional.of(new StandardFile(
                root.file(),
                source(name, root.member("source")),
                Collections.unmodifiableMap(statements),
                CanonicalEdition.digestOf(root.node())));
    }

    private static Map<String, Entry> members(Entry root, String name) {
        Map<String, Entry> sound = new LinkedHashMap<>();
        root.optional(name)
                .ifPresent(all -> all.members().forEach((key, value) -> {
                    if (value.isSound()) {
                        sound.put(key, value);
                    }
                }));
        return sound;
    }

    private static void checkName(Entry standard) {
        String path = "standards/" + standard.text() + ".yaml";
        if (!standard.file().path().equals(path)) {
            standard.fault("The file has another name than the standard", "the file as " + path);
        }
    }

    private static Optional<LocalDate> confirmedOn(Entry statement) {
        return statement.member("confirmed").member("on").date();
    }

    private static Statement statement(Entry entry, Content content, LocalDate on) {
        return new Statement(
                content,
                entry.member("clause").text(),
                entry.member("confirmed").member("by").worded(Confirmation.class),
                on);
    }

    /** A sound source. */
    static Source source(String key, Entry source) {
        return new Source(
                key,
                source.member("title").text(),
                source.member("edition").text(),
                source.member("publisher").text(),
                source.member("standing").worded(Standing.class));
    }

    private static Map<String, ColumnType> columns(Entry columns) {
        Map<String, ColumnType> types = new LinkedHashMap<>();
        columns.members().forEach((name, type) -> {
            Optional<MeasureUnit> unit = MeasureUnit.ofSymbol(type.text());
            ValueType valueType =
                    switch (type.text()) {
                        case "word" -> ValueType.WORD;
                        case "flag" -> ValueType.FLAG;
                        default -> ValueType.NUMBER;
                    };
            if (valueType == ValueType.NUMBER && unit.isEmpty()) {
                List<String> known = new ArrayList<>(List.of("word", "flag"));
                known.addAll(MeasureUnit.symbols());
                type.unknown(type.text(), "type of column", known);
            }
            types.put(name, new ColumnType(type.text(), valueType, unit));
        });
        return types;
    }

    /** Rows of a table with these columns; cells that do not fit are told. */
    static List<Table.Row> rows(Entry rows, Map<String, ColumnType> columns) {
        List<Table.Row> read = new ArrayList<>();
        for (Entry row : rows.items()) {
            List<Entry> cells = row.items();
            if (cells.size() != columns.size()) {
                row.fault(
                        "The row has " + cells.size() + " cells for " + columns.size() + " columns",
                        "a cell for each of " + String.join(", ", columns.keySet()));
                continue;
            }
            Map<String, Value> values = new LinkedHashMap<>();
            int place = 0;
            for (Map.Entry<String, ColumnType> column : columns.entrySet()) {
                cell(cells.get(place++), column.getValue()).ifPresent(value -> values.put(column.getKey(), value));
            }
            read.add(new Table.Row(Collections.unmodifiableMap(values)));
        }
        return List.copyOf(read);
    }

    private static Optional<? extends Value> cell(Entry cell, ColumnType column) {
        if (column.type() == ValueType.FLAG) {
            return TokenReader.flag(cell);
        }
        if (column.type() == ValueType.WORD) {
            return TokenReader.word(cell, List.of());
        }
        if (!(cell.node() instanceof YamlNode.NumberNode)) {
            cell.fault("This is no number", "a plain number in " + column.text());
            return Optional.empty();
        }
        return column.unit().map(unit -> new Measure(Double.parseDouble(cell.text()), unit));
    }
}
