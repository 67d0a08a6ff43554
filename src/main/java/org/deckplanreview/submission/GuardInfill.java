package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** What fills a guard between the deck and its top rail. */
public enum GuardInfill implements Worded {
    BALUSTERS("balusters"),
    PANEL("panel"),
    HORIZONTAL_RAILS("horizontal-rails"),
    NONE("none");

    private final String word;

    GuardInfill(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
