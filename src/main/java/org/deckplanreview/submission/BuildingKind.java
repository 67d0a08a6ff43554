package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** The building that the deck belongs to. */
public enum BuildingKind implements Worded {
    HOUSE("house"),
    FLAT("flat"),
    OTHER("other");

    private final String word;

    BuildingKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
