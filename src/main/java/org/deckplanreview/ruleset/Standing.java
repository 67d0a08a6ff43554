package org.deckplanreview.ruleset;

import org.deckplanreview.kernel.Worded;

/** How binding a source is. */
public enum Standing implements Worded {
    STATUTE("statute"),
    STATUTORY_GUIDANCE("statutory guidance"),
    STANDARD("standard"),
    GUIDANCE("guidance"),
    COMMON_PRACTICE("common practice");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
