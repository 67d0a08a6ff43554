package org.deckplanreview.ruleset;

import org.deckplanreview.submission.Worded;

/** How a value was confirmed. */
public enum Confirmation implements Worded {
    PAGE("page"),
    SECONDARY_PAGE("secondary page"),
    /** Practice of the site or the office: no publication can confirm it. */
    PRACTICE("practice"),
    COMPUTED("computed"),
    MEMORY("memory");

    private final String word;

    Confirmation(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
