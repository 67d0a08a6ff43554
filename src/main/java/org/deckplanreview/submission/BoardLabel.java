package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;

/** Standards for boards of plastic and of wood and plastic that a maker's label names. */
public enum BoardLabel implements Worded {
    ASTM_D7032("ASTM-D7032"),
    EN_15534_4("EN-15534-4");

    private final String word;

    BoardLabel(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
