package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Dowel-type fasteners of a joint. */
public enum JointKind implements Worded {
    BOLT("bolt"),
    SCREW("screw");

    private final String word;

    JointKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
