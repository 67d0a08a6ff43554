package org.deckplanreview.method.nds2018;

import org.deckplanreview.formula.Sheet;

/**
 * A reference design value with its adjustment factors, 4.3.1 and Table 4.3.1.
 *
 * @param reference as tabulated
 * @param factors that are the same whatever the load; those of one check are entered by it
 */
record AdjustedValue(Sheet reference, Sheet factors) {

    /** For a value to which no load duration factor applies. */
    Sheet always() {
        return Sheet.on(reference, factors);
    }

    /** @param duration on which C_D stands */
    Sheet under(Sheet duration) {
        return Sheet.on(reference, duration, factors);
    }
}
