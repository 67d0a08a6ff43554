package org.deckplanreview.comparison;

import org.deckplanreview.kernel.Worded;
import org.deckplanreview.ruleset.Strictness;

/** What a difference between two editions comes to. */
public enum Effect implements Worded {
    ADDED("added"),
    WITHDRAWN("withdrawn"),
    /** Asks for more, or in more cases. */
    TIGHTENED("tightened"),
    /** Asks for less, or in fewer cases. */
    RELAXED("relaxed"),
    /** Both ways, or in a way whose direction cannot be told. */
    CHANGED("changed"),
    /** Decides everything as before: other words, another citation, the same value in another unit. */
    REWORDED("reworded only");

    private final String word;

    Effect(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    static Effect of(Strictness strictness) {
        return switch (strictness) {
            case SAME -> REWORDED;
            case TIGHTER -> TIGHTENED;
            case LOOSER -> RELAXED;
            case BOTH, UNKNOWN -> CHANGED;
        };
    }
}
