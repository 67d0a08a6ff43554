package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** How water is kept from the joint between ledger and wall. */
public enum LedgerWeathering implements Worded {
    GAP("gap"),
    FLASHING("flashing"),
    NONE("none");

    private final String word;

    LedgerWeathering(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
