package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** The shape of a footing in plan. */
public enum FootingShape implements Worded {
    RECTANGULAR("rectangular"),
    ROUND("round");

    private final String word;

    FootingShape(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
