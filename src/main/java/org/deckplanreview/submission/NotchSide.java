package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** The face that a notch is cut into: on the support's side, or opposite it. */
public enum NotchSide implements Worded {
    SUPPORT("support"),
    OPPOSITE("opposite");

    private final String word;

    NotchSide(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
