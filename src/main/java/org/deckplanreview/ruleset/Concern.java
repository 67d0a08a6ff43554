package org.deckplanreview.ruleset;

import org.deckplanreview.submission.Worded;

/** What a provision is about. */
public enum Concern implements Worded {
    SPAN("span"),
    FOOTING("footing"),
    FALL("fall"),
    GUARDING("guarding"),
    TREATMENT("treatment");

    private final String word;

    Concern(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
