package org.deckplanreview.ruleset;

import org.deckplanreview.kernel.Worded;

/** The ISO/IEC drafting forms. */
public enum Obligation implements Worded {
    SHALL("shall"),
    SHOULD("should"),
    MAY("may");

    private final String word;

    Obligation(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
