package org.deckplanreview.submission;

import java.util.Collection;
import java.util.Optional;

/** The known name that is most like one that was written wrong. */
public final class NearestName {

    private NearestName() {}

    /**
     * The known name with the fewest letters to insert, leave out, replace or swap, the first in the alphabet of those
     * alike; none if more than half of the letters would change.
     */
    public static Optional<String> of(String written, Collection<String> known) {
        Optional<String> nearest = Optional.empty();
        int fewest = Integer.MAX_VALUE;
        for (String name : known.stream().sorted().toList()) {
            int longer = Math.max(written.length(), name.length());
            // What differs too much in length cannot be near; without this, long names would cost a table each.
            if (2 * Math.abs(written.length() - name.length()) > longer) {
                continue;
            }
            int changes = changes(written, name);
            if (changes < fewest && 2 * changes <= longer) {
                fewest = changes;
                nearest = Optional.of(name);
            }
        }
        return nearest;
    }

    /** Optimal string alignment distance, by the usual table of prefixes. */
    private static int changes(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                d[i][j] = Math.min(replaced, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
