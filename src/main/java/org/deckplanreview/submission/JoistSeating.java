package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** How joists meet a beam or ledger: over it, or against its face by hangers. */
public enum JoistSeating implements Worded {
    ON_TOP("on-top"),
    HANGERS("hangers");

    private final String word;

    JoistSeating(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
