package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** What a heavy item is. */
public enum HeavyItemKind implements Worded {
    SPA_BATH("spa-bath"),
    PLANTER("planter"),
    OTHER("other");

    private final String word;

    HeavyItemKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
