package org.deckplanreview.ruleset;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The register of released editions: a line each with region, edition and digest. What is released never changes. */
final class ReleasedEditions {

    static final String FILE = "released.txt";

    private static final String LINE = "region, edition and digest, such as uk-england 2024 sha256:…";

    private ReleasedEditions() {}

    /**
     * Holds the register against the editions.
     *
     * @param editions by path
     */
    static void check(RulesetFile file, byte[] register, Map<String, Edition> editions) {
        SortedMap<String, Integer> seen = new TreeMap<>();
        List<String> lines =
                new String(register, StandardCharsets.UTF_8).lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty()) {
                check(file, i + 1, line, editions, seen);
            }
        }
    }

    private static void check(
            RulesetFile file, int number, String line, Map<String, Edition> editions, Map<String, Integer> seen) {
        String[] words = line.split(" ");
        if (words.length != 3 || !words[2].matches("sha256:[0-9a-f]{64}")) {
            file.fault(number, "'" + Shortened.of(line) + "'", "This line is not understood", LINE);
            return;
        }
        String path = words[0] + "/" + words[1] + ".yaml";
        Integer first = seen.putIfAbsent(path, number);
        if (first != null) {
            file.fault(number, "'" + path + "'", "Line " + first + " has this edition already", "each edition once");
            return;
        }
        Edition edition = editions.get(path);
        if (edition == null) {
            file.fault(
                    number,
                    "'" + path + "'",
                    "A released edition is not there",
                    "the file " + path + " as it was released");
        } else if (!edition.digest().equals(words[2])) {
            file.fault(
                    number,
                    edition.digest(),
                    "The released edition " + words[0] + " " + words[1] + " has changed",
                    words[2] + ", the edition as it was released; what changes is a new edition");
        }
    }
}
