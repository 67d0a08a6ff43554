package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** What keeps the lower end of a post from moving sideways. */
public enum PostBase implements Worded {
    CONNECTOR("connector"),
    EMBEDDED("embedded"),
    NONE("none");

    private final String word;

    PostBase(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
