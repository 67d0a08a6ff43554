package org.deckplanreview.method.en1995;

import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;

/** From which value on a resistance that is not given would do. */
final class Enough {
    /** The last place of what is asked for, N. */
    private static final double STEP_N = 10;

    private Enough() {}

    /** For the end of a need's sentence, rounded up. */
    static String from(double resistanceN) {
        double asked = Math.ceil(resistanceN / STEP_N) * STEP_N;
        return "; " + Numbers.plain(MeasureUnit.NEWTON_.convert(asked, MeasureUnit.KILONEWTON)) + " kN would do";
    }
}
