package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import org.deckplanreview.submission.Timber;

/**
 * A rectangular section.
 *
 * @param breadthIn b, across the load; of all plies together
 * @param depthIn d, along the load
 */
record Section(double breadthIn, double depthIn) {

    static Section of(Timber timber, int plies) {
        return new Section(
                plies * MILLIMETRE.convert(timber.breadth().mm(), INCH),
                MILLIMETRE.convert(timber.depth().mm(), INCH));
    }

    double areaIn2() {
        return breadthIn * depthIn;
    }

    /** S, in3, 3.3.2. */
    double modulusIn3() {
        return breadthIn * depthIn * depthIn / 6;
    }

    /** I, in4, 3.3.2. */
    double secondMomentIn4() {
        return breadthIn * depthIn * depthIn * depthIn / 12;
    }
}
