package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** What keeps plants from growing under the deck. */
public enum WeedControl implements Worded {
    MEMBRANE("membrane"),
    GRAVEL("gravel"),
    MEMBRANE_AND_GRAVEL("membrane-and-gravel"),
    PAVED("paved"),
    NONE("none");

    private final String word;

    WeedControl(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
