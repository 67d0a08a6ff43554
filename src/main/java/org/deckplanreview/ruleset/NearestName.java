package org.deckplanreview.ruleset;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The known name that somebody most likely meant. */
final class NearestName {

    private static final int LISTED = 12;

    private NearestName() {}

    /** The nearest by insertions, deletions, replacements and swaps; empty if none shares more than half of its letters. */
    static Optional<String> of(String unknown, Collection<String> known) {
        return known.stream()
                .min(Comparator.comparingInt((String name) -> distance(unknown, name))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(name -> 2 * distance(unknown, name) <= Math.max(unknown.length(), name.length()));
    }

    /** What to write instead of an unknown name: all that are known while they are few, and the nearest. */
    static String accepted(String unknown, Collection<String> known) {
        if (known.isEmpty()) {
            return "none, because none is declared";
        }
        String names =
                known.size() <= LISTED ? String.join(", ", known) : "one of the " + known.size() + " known names";
        return of(unknown, known)
                .map(name -> names + "; the nearest is '" + name + "'")
                .orElse(names);
    }

    /** Optimal string alignment distance, by the usual table of prefixes. */
    private static int distance(String a, String b) {
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
