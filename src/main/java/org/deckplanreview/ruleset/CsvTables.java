package org.deckplanreview.ruleset;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** The CSV files of the rulesets: each is read once, and account is kept of those that standards name. */
final class CsvTables {

    private final Map<String, Optional<CsvTable>> tables = new TreeMap<>();
    private final TreeSet<String> named = new TreeSet<>();

    /** @param tables empty where a file cannot be read, which is told already */
    CsvTables(Map<String, Optional<CsvTable>> tables) {
        this.tables.putAll(tables);
    }

    /** The table in the file that an entry names; empty if there is none that can be read, which is told. */
    Optional<CsvTable> named(Entry path) {
        named.add(path.text());
        if (!tables.containsKey(path.text())) {
            path.unknown(path.text(), "file of a table", tables.keySet());
            return Optional.empty();
        }
        return tables.get(path.text());
    }

    /** Tells the files that no standard names. */
    void tellOthers(Function<String, RulesetFile> files) {
        tables.keySet().stream()
                .filter(path -> !named.contains(path))
                .forEach(path -> files.apply(path)
                        .fault(1, "'" + path + "'", "No standard has this table", "its path in a standard's tables"));
    }
}
