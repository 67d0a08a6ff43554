package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Whether a heavy item always stands there. */
public enum LoadNature implements Worded {
    PERMANENT("permanent"),
    VARIABLE("variable");

    private final String word;

    LoadNature(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
