package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.QUARTIC_MILLIMETRE;

import org.deckplanreview.formula.Formula;

/**
 * A rectangular section.
 *
 * @param breadthMm across the load; of all plies together
 * @param depthMm along the load
 */
record Section(double breadthMm, double depthMm) {
    static final Formula MODULUS = Formula.of("W_y = b * h^2 / 6", CUBIC_MILLIMETRE, "");
    static final Formula LEFT_DEPTH = Formula.of("h_ef = h - d_n", MILLIMETRE, "6.5.2");
    static final Formula LEFT_MODULUS = Formula.of("W_y = b * h_ef^2 / 6", CUBIC_MILLIMETRE, "");
    static final Formula SECOND_MOMENT = Formula.of("I_y = b * h^3 / 12", QUARTIC_MILLIMETRE, "");
}
