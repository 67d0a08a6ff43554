package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** What a band joist is made of. */
public enum BandJoistKind implements Worded {
    SOLID_SAWN("solid-sawn"),
    LVL("lvl");

    private final String word;

    BandJoistKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
