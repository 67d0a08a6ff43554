package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Lateral torsional buckling of a rectangular member in bending, 6.3.3. */
record LateralBuckling(double criticalStressFactor, double plateau, double slender, double constant, double slope) {
    static final ParameterDescription EFFECTIVE_LENGTHS = ParameterDescription.table(
            "effectiveLengths",
            "effective length over span by support (simply-supported, cantilever) and loading (constant-moment, uniform,"
                    + " concentrated), for a load at the centre of gravity",
            wordColumn("support"),
            wordColumn("loading"),
            numberColumn("ratio", RATIO));
    static final ParameterDescription AT_COMPRESSION_EDGE = ParameterDescription.number(
            "effectiveLengthAtCompressionEdge",
            RATIO,
            "depths added to the effective length of a load at the compression edge");
    static final List<ParameterDescription> PARAMETERS = List.of(
            ParameterDescription.number(
                    "criticalStressFactor", RATIO, "factor of the critical stress of softwood rectangles"),
            ParameterDescription.number("kcritPlateau", RATIO, "relative slenderness up to which k_crit is 1"),
            ParameterDescription.number(
                    "kcritSlender", RATIO, "relative slenderness up to which k_crit falls in a line"),
            ParameterDescription.number("kcritConstant", RATIO, "constant of that line"),
            ParameterDescription.number("kcritSlope", RATIO, "slope of that line"),
            EFFECTIVE_LENGTHS,
            AT_COMPRESSION_EDGE);

    static LateralBuckling of(Parameters p) {
        return new LateralBuckling(
                p.number("criticalStressFactor", RATIO),
                p.number("kcritPlateau", RATIO),
                p.number("kcritSlender", RATIO),
                p.number("kcritConstant", RATIO),
                p.number("kcritSlope", RATIO));
    }

    /** sigma_m,crit of softwood, N/mm2, (6.32). */
    double softwoodCriticalStress(Section ply, double e005, double lefMm) {
        return criticalStressFactor * ply.breadthMm() * ply.breadthMm() * e005 / (ply.depthMm() * lefMm);
    }

    /** sigma_m,crit of any species, N/mm2, (6.31). */
    static double generalCriticalStress(Section ply, double e005, double g005, double lefMm) {
        return StrictMath.PI
                * Math.sqrt(e005 * ply.weakSecondMomentMm4() * g005 * ply.torsionConstantMm4())
                / (lefMm * ply.sectionModulusMm3());
    }

    /** lambda_rel,m, (6.30). */
    static double relativeSlenderness(double fmk, double criticalStress) {
        return Math.sqrt(fmk / criticalStress);
    }

    /** k_crit, (6.34). */
    double kcrit(double relativeSlenderness) {
        if (relativeSlenderness <= plateau) {
            return 1;
        }
        return relativeSlenderness <= slender
                ? constant - slope * relativeSlenderness
                : 1 / (relativeSlenderness * relativeSlenderness);
    }

    /** (6.34) as a working shows it, of lambda_rel,m. */
    String expression(double relativeSlenderness) {
        if (relativeSlenderness <= plateau) {
            return "1";
        }
        return relativeSlenderness <= slender
                ? Numbers.plain(constant) + " - " + Numbers.plain(slope) + " * λ_rel,m"
                : "1 / λ_rel,m^2";
    }
}
