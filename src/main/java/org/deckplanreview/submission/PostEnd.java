package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** The end of a post that stands in ground or concrete. */
public enum PostEnd implements Worded {
    NOT_IN_GROUND("not-in-ground"),
    UNCUT("uncut"),
    CUT_AND_TREATED("cut-and-treated"),
    CUT_UNTREATED("cut-untreated");

    private final String word;

    PostEnd(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
