package org.deckplanreview.submission;

import org.deckplanreview.kernel.Worded;
import org.deckplanreview.measure.UnitSystem;

/** The unit of all lengths and levels of one document. */
public enum LengthUnit implements Worded {
    MILLIMETRE("mm", UnitSystem.METRIC),
    INCH("in", UnitSystem.INCH_POUND);

    private final String word;
    private final UnitSystem system;

    LengthUnit(String word, UnitSystem system) {
        this.word = word;
        this.system = system;
    }

    /** The units in which the document's review is written. */
    public UnitSystem system() {
        return system;
    }

    @Override
    public String word() {
        return word;
    }
}
