package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Use categories of AWPA U1 for sawn lumber in decks, mildest first. */
public enum UseCategory implements Worded {
    UC3A("UC3A"),
    UC3B("UC3B"),
    UC4A("UC4A"),
    UC4B("UC4B"),
    UC4C("UC4C");

    private final String word;

    UseCategory(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
