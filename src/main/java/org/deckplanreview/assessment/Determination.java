package org.deckplanreview.assessment;

import org.deckplanreview.kernel.Worded;

/** What a provision comes to on a subject, worst first. */
public enum Determination implements Worded {
    DOES_NOT_COMPLY("does not comply"),
    UNDETERMINED("undetermined"),
    COMPLIES("complies"),
    NOT_APPLICABLE("not applicable");

    private final String word;

    Determination(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
