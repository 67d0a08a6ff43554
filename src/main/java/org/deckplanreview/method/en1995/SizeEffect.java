package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.KILOGRAM_PER_CUBIC_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** The influence of size on bending strength, 3.2(3). */
record SizeEffect(double referenceDepthMm, double exponent, double cap, double densityLimitKgPerM3) {
    static final List<ParameterDescription> PARAMETERS = List.of(
            ParameterDescription.number("khReferenceDepth", MILLIMETRE, "reference depth of k_h"),
            ParameterDescription.number("khExponent", RATIO, "exponent of k_h"),
            ParameterDescription.number("khCap", RATIO, "largest k_h"),
            ParameterDescription.number(
                    "khDensityLimit", KILOGRAM_PER_CUBIC_METRE, "largest characteristic density for k_h"));

    static SizeEffect of(Parameters p) {
        return new SizeEffect(
                p.number("khReferenceDepth", MILLIMETRE),
                p.number("khExponent", RATIO),
                p.number("khCap", RATIO),
                p.number("khDensityLimit", KILOGRAM_PER_CUBIC_METRE));
    }

    /** k_h, (3.1). */
    double kh(double depthMm, double rhoK) {
        return applies(depthMm, rhoK) ? Math.min(StrictMath.pow(referenceDepthMm / depthMm, exponent), cap) : 1;
    }

    /** (3.1) as a working shows it, of h. */
    String expression(double depthMm, double rhoK) {
        return applies(depthMm, rhoK)
                ? "min((" + Numbers.plain(referenceDepthMm) + " / h)^" + Numbers.plain(exponent) + ", "
                        + Numbers.plain(cap) + ")"
                : "1";
    }

    private boolean applies(double depthMm, double rhoK) {
        return depthMm < referenceDepthMm && rhoK <= densityLimitKgPerM3;
    }
}
