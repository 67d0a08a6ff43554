package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** What fixes a ledger to a band joist. */
public enum LedgerFixingKind implements Worded {
    LAG_SCREW("lag-screw"),
    BOLT("bolt");

    private final String word;

    LedgerFixingKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
