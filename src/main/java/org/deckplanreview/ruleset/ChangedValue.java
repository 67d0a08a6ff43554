package org.deckplanreview.ruleset;

import java.util.Optional;

/**
 * One value that differs between two editions, or between an edition and what an amendment makes of it.
 *
 * @param what it is, in plain words, for example {@code guard height, where occupancy is public}
 * @param standard the edition's short name of the standard that the value belongs to; empty for a provision's or load's own
 * @param was empty where there was none
 * @param is empty where there is none any more
 */
public record ChangedValue(
        String what, Optional<String> standard, Optional<Side> was, Optional<Side> is, Strictness strictness) {

    /**
     * What stands on one side.
     *
     * @param text the value in the words and units of its document, for example {@code at least 1100 mm}
     */
    public record Side(String text, Citation citation) {}
}
