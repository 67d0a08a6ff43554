package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Sides of a stair that have something, such as a handrail. */
public enum StairSides implements Worded {
    NONE("none"),
    ONE("one"),
    BOTH("both");

    private final String word;

    StairSides(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
