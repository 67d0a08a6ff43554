package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Visual grades of structural lumber, weakest first. */
public enum Grade implements Worded {
    NO_3("no.3"),
    NO_2("no.2"),
    NO_1("no.1"),
    SELECT_STRUCTURAL("select-structural");

    private final String word;

    Grade(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
