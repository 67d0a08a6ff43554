package org.deckplanreview.rendering.text;

import org.deckplanreview.kernel.Worded;

/** Which calculations a text report prints. */
public enum WorkingShown implements Worded {
    /** Of every finding. */
    ALL("all"),
    /** Of those that do not comply and of the one with the highest utilisation of each concern. */
    GOVERNING("governing"),
    /** Of none. */
    NONE("none");

    private final String word;

    WorkingShown(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** So that the command line's help prints the words as they are. */
    @Override
    public String toString() {
        return word;
    }
}
