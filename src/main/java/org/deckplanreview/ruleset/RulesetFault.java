package org.deckplanreview.ruleset;

import java.util.Comparator;

/**
 * Something wrong in a ruleset's file.
 *
 * @param file path below the rulesets' root
 * @param line from 1
 * @param found what stands there, shortened
 * @param detail what is wrong with it
 * @param accepted what would be accepted instead, with the nearest known name where names are known
 */
public record RulesetFault(String file, int line, String found, String detail, String accepted)
        implements Comparable<RulesetFault> {

    private static final Comparator<RulesetFault> ORDER = Comparator.comparing(RulesetFault::file)
            .thenComparingInt(RulesetFault::line)
            .thenComparing(RulesetFault::detail)
            .thenComparing(RulesetFault::found)
            .thenComparing(RulesetFault::accepted);

    @Override
    public int compareTo(RulesetFault other) {
        return ORDER.compare(this, other);
    }

    /** One line for people. */
    public String message() {
        return "%s:%d: %s. Found: %s. Accepted: %s".formatted(file, line, detail, found, accepted);
    }
}
