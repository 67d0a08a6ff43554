package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Use classes of EN 335, mildest first. */
public enum UseClass implements Worded {
    UC1("UC1"),
    UC2("UC2"),
    UC3_1("UC3.1"),
    UC3_2("UC3.2"),
    UC4("UC4"),
    UC5("UC5");

    private final String word;

    UseClass(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
