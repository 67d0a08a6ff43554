package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Volume change potential of a clay soil; none for granular soils and rock. */
public enum VolumeChange implements Worded {
    NONE("none"),
    LOW("low"),
    MEDIUM("medium"),
    HIGH("high");

    private final String word;

    VolumeChange(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
