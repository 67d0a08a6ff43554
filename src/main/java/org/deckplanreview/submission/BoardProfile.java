package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** The upper face of a board. */
public enum BoardProfile implements Worded {
    SMOOTH("smooth"),
    GROOVED("grooved");

    private final String word;

    BoardProfile(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
