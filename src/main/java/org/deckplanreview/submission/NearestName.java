package org.deckplanreview.submission;

import java.util.Collection;
import java.util.Optional;

/** The known name that is most like one that was written wrong. */
final class NearestName {

    private NearestName() {}

    /** The known name with the fewest letters to change, the first of those alike; none if half of it would change. */
    static Optional<String> of(String written, Collection<String> known) {
        Optional<String> nearest = Optional.empty();
        int fewest = Integer.MAX_VALUE;
        for (String name : known) {
            if (2 * Math.abs(written.length() - name.length()) > name.length()) {
                continue;
            }
            int changes = changes(written, name);
            if (changes < fewest && 2 * changes <= name.length()) {
                fewest = changes;
                nearest = Optional.of(name);
            }
        }
        return nearest;
    }

    /** Levenshtein's distance, row by row. */
    private static int changes(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[b.length()];
    }
}
