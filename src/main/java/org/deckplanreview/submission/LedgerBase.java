package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** What a ledger is fixed to. */
public enum LedgerBase implements Worded {
    MASONRY("masonry"),
    CONCRETE("concrete"),
    TIMBER_FRAME("timber-frame"),
    CLADDING("cladding"),
    INSULATION("insulation"),
    BRICK_VENEER("brick-veneer"),
    UNKNOWN("unknown");

    private final String word;

    LedgerBase(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
