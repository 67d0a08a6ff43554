package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_INCH;
import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.QUARTIC_INCH;

import org.deckplanreview.formula.Formula;
import org.deckplanreview.submission.Timber;

/**
 * A rectangular section.
 *
 * @param breadthIn b, across the load; of all plies together
 * @param depthIn d, along the load
 */
record Section(double breadthIn, double depthIn) {

    static final Formula MODULUS = Formula.of("S = b * d^2 / 6", CUBIC_INCH, "3.3.2");
    static final Formula SECOND_MOMENT = Formula.of("I = b * d^3 / 12", QUARTIC_INCH, "3.3.2");

    /** d_n of what a notch of depth a leaves. */
    static Formula left(String clause) {
        return Formula.of("d_n = d - a", INCH, clause);
    }

    static Section of(Timber timber, int plies) {
        return new Section(
                plies * MILLIMETRE.convert(timber.breadth().mm(), INCH),
                MILLIMETRE.convert(timber.depth().mm(), INCH));
    }
}
