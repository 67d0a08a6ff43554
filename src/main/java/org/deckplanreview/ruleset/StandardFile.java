package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The values of one edition of a standard, as its file states them.
 *
 * @param source with the file's name as its key
 * @param statements by name
 * @param csvFiles by the name of the table that each holds
 * @param digest over the content of the file and of its CSV files, whatever their layout
 */
record StandardFile(
        RulesetFile file,
        Source source,
        Map<String, Statement> statements,
        Map<String, CsvFile> csvFiles,
        String digest) {

    /** A CSV file that holds one of its tables, and the entry that names it. */
    record CsvFile(Entry path, CsvTable table) {}

    /** The same values, whose faults are told in another place. */
    StandardFile in(RulesetFile other) {
        Map<String, Statement> moved = new TreeMap<>();
        statements.forEach((name, s) -> moved.put(
                name,
                s.content() instanceof Content.Single single
                        ? new Statement(
                                new Content.Single(single.token().in(other)), s.clause(), s.confirmedBy(), s.on())
                        : s));
        return new StandardFile(other, source, Collections.unmodifiableMap(moved), csvFiles, digest);
    }

    boolean faultless() {
        return file.faultless()
                && csvFiles.values().stream().allMatch(csv -> csv.table().file().faultless());
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
        record Grid(Map<String, ColumnType> columns, List<GridRow> rows, TableLabels labels) implements Content {
            public Grid {
                rows = List.copyOf(rows);
            }
        }
    }

    /** Reads a checked file; empty if it or one of its CSV files has faults, which are then told. */
    static Optional<StandardFile> read(Entry root, CsvTables csvTables) {
        if (!root.isMap()) {
            return Optional.empty();
        }
        Optional<Entry> named = root.optional("source").filter(Entry::isSound);
        if (named.isEmpty()) {
            return Optional.empty();
        }
        Source source = source(root.optional("standard").map(Entry::text).orElse(""), named.get());
        Map<String, Statement> statements = new TreeMap<>();
        members(root, "values")
                .forEach((name, value) -> confirmedOn(value)
                        .ifPresent(on -> statements.put(
                                name, statement(value, source, new Content.Single(value.member("value")), on))));
        Map<String, CsvFile> csvFiles = new TreeMap<>();
        members(root, "tables").forEach((name, table) -> {
            Map<String, ColumnType> columns = GridReader.columns(table.member("columns"));
            Optional<Entry> path = table.optional("csv");
            Optional<CsvTable> csv = path.flatMap(csvTables::named);
            csv.ifPresent(found -> csvFiles.put(name, new CsvFile(path.get(), found)));
            List<GridRow> rows = path.isPresent()
                    ? csv.map(found -> rows(found, table, columns)).orElse(List.of())
                    : GridReader.rows(table.member("rows"), columns);
            rows.forEach(row -> Confirming.check(row, source));
            if (statements.containsKey(name)) {
                table.file().fault(table.line(), "'" + name + "'", "A value has this name already", "another name");
            }
            confirmedOn(table)
                    .ifPresent(on -> statements.put(
                            name,
                            statement(
                                    table,
                                    source,
                                    new Content.Grid(columns, rows, TableLabels.of(table, columns, rows)),
                                    on)));
        });
        root.optional("standard").filter(Entry::isSound).ifPresent(StandardFile::checkName);
        boolean isSound = root.file().faultless()
                && csvFiles.values().stream().allMatch(csv -> csv.table().file().faultless());
        if (!isSound) {
            return Optional.empty();
        }
        return Optional.of(new StandardFile(
                root.file(),
                source,
                Collections.unmodifiableMap(statements),
                Collections.unmodifiableMap(csvFiles),
                digest(root, csvFiles)));
    }

    private static List<GridRow> rows(CsvTable csv, Entry table, Map<String, ColumnType> columns) {
        Optional<String> across = table.optional("across").map(Entry::text);
        List<String> names = List.copyOf(columns.keySet());
        boolean isColumn =
                across.isEmpty() || names.subList(0, names.size() - 1).contains(across.get());
        if (!isColumn) {
            table.member("across").unknown(across.get(), "column before the last", names.subList(0, names.size() - 1));
            return List.of();
        }
        return csv.rows(columns, across);
    }

    private static String digest(Entry root, Map<String, CsvFile> csvFiles) {
        if (csvFiles.isEmpty()) {
            return CanonicalEdition.digestOf(root.node().plain());
        }
        Map<String, Object> tables = new TreeMap<>();
        csvFiles.forEach((name, csv) -> tables.put(name, csv.table().plain()));
        return CanonicalEdition.digestOf(List.of(root.node().plain(), tables));
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

    private static Statement statement(Entry entry, Source source, Content content, LocalDate on) {
        return new Statement(
                content, entry.member("clause").text(), Confirming.read(entry.member("confirmed"), source), on);
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
}
