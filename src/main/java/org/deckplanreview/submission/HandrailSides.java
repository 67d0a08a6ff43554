package org.deckplanreview.submission;

/** Sides of a stair that have a handrail. */
public enum HandrailSides implements Worded {
    NONE("none"),
    ONE("one"),
    BOTH("both");

    private final String word;

    HandrailSides(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
