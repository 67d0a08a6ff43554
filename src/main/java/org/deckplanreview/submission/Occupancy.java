package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Who uses the deck. */
public enum Occupancy implements Worded {
    SINGLE_DWELLING("single-dwelling"),
    SHARED_RESIDENTIAL("shared-residential"),
    PUBLIC("public");

    private final String word;

    Occupancy(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
