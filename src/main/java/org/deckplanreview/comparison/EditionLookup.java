package org.deckplanreview.comparison;

import org.deckplanreview.ruleset.Edition;

/** An edition that was asked for by name. */
public sealed interface EditionLookup {
    record Found(Edition edition) implements EditionLookup {}

    /** @param accepted what could be asked for */
    record Unknown(String detail, String accepted) implements EditionLookup {}
}
