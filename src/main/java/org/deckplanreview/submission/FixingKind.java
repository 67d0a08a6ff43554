package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Kinds of metal fixings. */
public enum FixingKind implements Worded {
    NAIL("nail"),
    SCREW("screw"),
    BOLT("bolt"),
    DOWEL("dowel"),
    STAPLE("staple"),
    PLATE("plate");

    private final String word;

    FixingKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
