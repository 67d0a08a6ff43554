package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** How a beam meets its posts. */
public enum BeamSeating implements Worded {
    ON_POST("on-post"),
    BOTH_SIDES("both-sides"),
    ONE_SIDE("one-side");

    private final String word;

    BeamSeating(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
