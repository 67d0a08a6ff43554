package org.deckplanreview.method;

import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;

/** From which value on a resistance that is not given would do. */
public final class Enough {
    /** The last place of what is asked for in metric units, N; else it is a pound. */
    private static final double STEP_N = 10;

    private Enough() {}

    /** For the end of a need's sentence, rounded up. */
    public static String from(double resistanceN, UnitSystem units) {
        return "; " + Phrases.of(asked(resistanceN, units)) + " would do";
    }

    private static Measure asked(double resistanceN, UnitSystem units) {
        return switch (units) {
            case METRIC ->
                Measure.of(
                        MeasureUnit.NEWTON_.convert(Math.ceil(resistanceN / STEP_N) * STEP_N, MeasureUnit.KILONEWTON),
                        MeasureUnit.KILONEWTON);
            case INCH_POUND ->
                Measure.of(
                        Math.ceil(MeasureUnit.NEWTON_.convert(resistanceN, MeasureUnit.POUND_FORCE)),
                        MeasureUnit.POUND_FORCE);
        };
    }
}
