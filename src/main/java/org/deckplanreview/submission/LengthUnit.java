package org.deckplanreview.submission;

/** The unit of all lengths and levels of one document. */
public enum LengthUnit implements Worded {
    MILLIMETRE("mm"),
    INCH("in");

    private final String word;

    LengthUnit(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
