package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** The ground under the footings, as a site investigation or a careful look names it. */
public enum SoilClass implements Worded {
    DENSE_GRAVEL("dense-gravel"),
    MEDIUM_DENSE_GRAVEL("medium-dense-gravel"),
    LOOSE_GRAVEL("loose-gravel"),
    COMPACT_SAND("compact-sand"),
    MEDIUM_DENSE_SAND("medium-dense-sand"),
    LOOSE_SAND("loose-sand"),
    HARD_CLAY("hard-clay"),
    STIFF_CLAY("stiff-clay"),
    FIRM_CLAY("firm-clay"),
    SOFT_CLAY("soft-clay"),
    MADE_GROUND("made-ground");

    private final String word;

    SoilClass(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
