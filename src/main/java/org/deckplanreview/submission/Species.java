package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Species and species combinations of visually graded lumber. */
public enum Species implements Worded {
    SOUTHERN_PINE("southern-pine"),
    DOUGLAS_FIR_LARCH("douglas-fir-larch"),
    HEM_FIR("hem-fir"),
    SPRUCE_PINE_FIR("spruce-pine-fir"),
    REDWOOD("redwood"),
    WESTERN_CEDARS("western-cedars"),
    PONDEROSA_PINE("ponderosa-pine"),
    RED_PINE("red-pine");

    private final String word;

    Species(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
