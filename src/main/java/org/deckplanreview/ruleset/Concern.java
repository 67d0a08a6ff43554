package org.deckplanreview.ruleset;

import org.deckplanreview.kernel.Worded;

/** What a provision is about. */
public enum Concern implements Worded {
    SPAN("span"),
    POST("post"),
    FOOTING("footing"),
    CONNECTION("connection"),
    STABILITY("stability"),
    FALL("fall"),
    GUARDING("guarding"),
    STAIR("stair"),
    TREATMENT("treatment"),
    ACCESS("access"),
    PLANNING("planning");

    private final String word;

    Concern(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
