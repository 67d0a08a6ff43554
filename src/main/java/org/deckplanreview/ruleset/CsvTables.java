package org.deckplanreview.ruleset;

import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/** The CSV files of the rulesets: each is read once, and account is kept of those that standards name. */
final class CsvTables {

    private final Shelf<CsvTable> tables;
    private final TreeSet<String> named = new TreeSet<>();

    CsvTables(Shelf<CsvTable> tables) {
        this.tables = tables;
    }

    /** The table in the file that an entry names; empty if there is none that can be read, which is told. */
    Optional<CsvTable> named(Entry path) {
        named.add(path.text());
        if (!tables.has(path.text())) {
            path.unknown(path.text(), "file of a table", tables.paths());
            return Optional.empty();
        }
        return tables.get(path.text());
    }

    /** Also those that no standard names. */
    void readAll() {
        tables.paths().forEach(tables::get);
    }

    /** Tells the files that no standard names. */
    void tellOthers(Function<String, RulesetFile> files) {
        tables.paths().stream()
                .filter(path -> !named.contains(path))
                .forEach(path -> files.apply(path)
                        .fault(1, "'" + path + "'", "No standard has this table", "its path in a standard's tables"));
    }
}
