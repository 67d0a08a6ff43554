package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** The upper end of a post. */
public enum PostTop implements Worded {
    SLOPED("sloped"),
    CAPPED("capped"),
    COVERED("covered"),
    FLAT("flat");

    private final String word;

    PostTop(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
