package org.deckplanreview.schedule;

import org.deckplanreview.kernel.Worded;

/** What timber is used for, as far as the lengths that it is sold in depend on it. */
public enum TimberUse implements Worded {
    POSTS("posts"),
    FRAME("frame"),
    BOARDS("boards");

    private final String word;

    TimberUse(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
