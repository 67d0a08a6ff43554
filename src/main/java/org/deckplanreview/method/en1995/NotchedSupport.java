package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Reduction of shear strength at a notched support, 6.5.2. */
record NotchedSupport(double kn, double slopeFactor, double slopeExponent, double distanceFactor) {
    static final List<ParameterDescription> PARAMETERS = List.of(
            ParameterDescription.number("kn", RATIO, "k_n of solid timber, with depths in mm"),
            ParameterDescription.number("notchSlopeFactor", RATIO, "factor of the notch's slope in k_v"),
            ParameterDescription.number("notchSlopeExponent", RATIO, "exponent of the notch's slope in k_v"),
            ParameterDescription.number("notchDistanceFactor", RATIO, "factor of the distance to the reaction in k_v"));

    static NotchedSupport of(Parameters p) {
        return new NotchedSupport(
                p.number("kn", RATIO),
                p.number("notchSlopeFactor", RATIO),
                p.number("notchSlopeExponent", RATIO),
                p.number("notchDistanceFactor", RATIO));
    }

    /**
     * k_v of a notch on the support's side, (6.62).
     *
     * @param slope i, run over depth of the notch's incline
     * @param supportDistanceMm x, from the line of the reaction to the notch's corner
     */
    double kv(double depthMm, double effectiveDepthMm, double slope, double supportDistanceMm) {
        double alpha = effectiveDepthMm / depthMm;
        double above = kn * (1 + slopeFactor * StrictMath.pow(slope, slopeExponent) / Math.sqrt(depthMm));
        double below = Math.sqrt(depthMm)
                * (Math.sqrt(alpha * (1 - alpha))
                        + distanceFactor * supportDistanceMm / depthMm * Math.sqrt(1 / alpha - alpha * alpha));
        return Math.min(1, above / below);
    }

    /** (6.62) as a working shows it, of k_n, i, h, x and alpha. */
    String expression() {
        return "min(1, k_n * (1 + " + Numbers.plain(slopeFactor) + " * i^" + Numbers.plain(slopeExponent)
                + " / sqrt(h)) / (sqrt(h) * (sqrt(α * (1 - α)) + " + Numbers.plain(distanceFactor)
                + " * x / h * sqrt(1 / α - α^2))))";
    }
}
