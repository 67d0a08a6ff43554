package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** How many fasteners of a row along the grain count, 8.5.1.1(4). */
record FastenerRow(double exponent, double spacingDiameters, double spacingExponent) {
    private static final ParameterDescription EXPONENT =
            ParameterDescription.number("rowExponent", RATIO, "exponent of the number of fasteners in a row");
    private static final ParameterDescription DIAMETERS = ParameterDescription.number(
            "rowSpacingDiameters", RATIO, "spacing, in diameters, to which that of the row is compared");
    private static final ParameterDescription SPACING_EXPONENT =
            ParameterDescription.number("rowSpacingExponent", RATIO, "exponent of the spacing in a row");
    static final List<ParameterDescription> PARAMETERS = List.of(EXPONENT, DIAMETERS, SPACING_EXPONENT);

    static FastenerRow of(Parameters p) {
        return new FastenerRow(
                p.number(EXPONENT.name(), RATIO),
                p.number(DIAMETERS.name(), RATIO),
                p.number(SPACING_EXPONENT.name(), RATIO));
    }

    /** n_ef, (8.34); a single fastener counts whole. */
    double effective(int n, double spacingMm, double diameterMm) {
        return n == 1
                ? 1
                : Math.min(
                        n,
                        StrictMath.pow(n, exponent)
                                * StrictMath.pow(spacingMm / (spacingDiameters * diameterMm), spacingExponent));
    }

    /** (8.34) as a working shows it. */
    String expression(String n, String diameter) {
        return "min(" + n + ", " + n + "^" + Numbers.plain(exponent) + " * (a_1 / (" + Numbers.plain(spacingDiameters)
                + " * " + diameter + "))^" + Numbers.plain(spacingExponent) + ")";
    }
}
