package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** What keeps a beam from sliding or rolling off the tops of its posts. */
public enum PostCap implements Worded {
    CONNECTOR("connector"),
    NOTCHED_POST("notched-post"),
    NAILS_OR_SCREWS("nails-or-screws"),
    NONE("none");

    private final String word;

    PostCap(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
