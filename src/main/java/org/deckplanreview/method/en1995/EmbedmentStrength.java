package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.KILOGRAM_PER_CUBIC_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Embedment strength of solid timber under bolts in drilled holes, 8.5.1.1. */
record EmbedmentStrength(double factor, double diameterFactor, double softwood, double hardwood, double slope) {
    static final ParameterDescription LARGEST_DIAMETER = ParameterDescription.number(
            "embedmentLargestDiameter", MILLIMETRE, "largest diameter of bolts for the embedment strength");
    private static final ParameterDescription FACTOR =
            ParameterDescription.number("embedmentFactor", RATIO, "factor of f_h,0,k, with density in kg/m3");
    private static final ParameterDescription DIAMETER_FACTOR =
            ParameterDescription.number("embedmentDiameterFactor", RATIO, "what f_h,0,k loses for each mm of diameter");
    private static final ParameterDescription SOFTWOOD =
            ParameterDescription.number("k90Softwood", RATIO, "constant of k_90 for softwood");
    private static final ParameterDescription HARDWOOD =
            ParameterDescription.number("k90Hardwood", RATIO, "constant of k_90 for hardwood");
    private static final ParameterDescription SLOPE =
            ParameterDescription.number("k90Slope", RATIO, "what k_90 gains for each mm of diameter");
    static final List<ParameterDescription> PARAMETERS =
            List.of(FACTOR, DIAMETER_FACTOR, LARGEST_DIAMETER, SOFTWOOD, HARDWOOD, SLOPE);

    static EmbedmentStrength of(Parameters p) {
        return new EmbedmentStrength(
                p.number(FACTOR.name(), RATIO),
                p.number(DIAMETER_FACTOR.name(), RATIO),
                p.number(SOFTWOOD.name(), RATIO),
                p.number(HARDWOOD.name(), RATIO),
                p.number(SLOPE.name(), RATIO));
    }

    /** f_h,0,k along the grain, N/mm2, (8.32). */
    double along(StrengthClass timber, double diameterMm) {
        return factor * (1 - diameterFactor * diameterMm) * timber.rhoK();
    }

    /** k_90, (8.33). */
    double k90(StrengthClass timber, double diameterMm) {
        return (timber.softwood() ? softwood : hardwood) + slope * diameterMm;
    }

    /** f_h,α,k for α = 90°, N/mm2: (8.31) with sin² α = 1 and cos² α = 0. */
    double across(StrengthClass timber, double diameterMm) {
        return along(timber, diameterMm) / k90(timber, diameterMm);
    }

    /** Shows f_h,1,k of the beam, across its grain; d stands in the working already. */
    void writeAcross(Sheet w, Parameters p, StrengthClass timber, double diameterMm, Pointer strengthClass) {
        writeDensity(w, p, "1", "beam", timber, strengthClass);
        w.step("f_h,0,1", alongText("1"), along(timber, diameterMm), NEWTON_PER_SQUARE_MILLIMETRE, "(8.32)");
        w.step(
                "k_90",
                Numbers.plain(timber.softwood() ? softwood : hardwood) + " + " + Numbers.plain(slope) + " * d",
                k90(timber, diameterMm),
                RATIO,
                "(8.33)");
        w.step("f_h,1,k", "f_h,0,1 / k_90", across(timber, diameterMm), NEWTON_PER_SQUARE_MILLIMETRE, "(8.31)");
    }

    /** Shows f_h,2,k of the post, along its grain. */
    void writeAlong(Sheet w, Parameters p, StrengthClass timber, double diameterMm, Pointer strengthClass) {
        writeDensity(w, p, "2", "post", timber, strengthClass);
        w.step("f_h,2,k", alongText("2"), along(timber, diameterMm), NEWTON_PER_SQUARE_MILLIMETRE, "(8.31), (8.32)");
    }

    private static void writeDensity(
            Sheet w, Parameters p, String index, String piece, StrengthClass timber, Pointer strengthClass) {
        w.given(
                "ρ_" + index,
                timber.rhoK(),
                KILOGRAM_PER_CUBIC_METRE,
                "characteristic density of the " + piece + ", " + timber.name(),
                p.source(StrengthClass.TABLE.name()),
                strengthClass);
    }

    private String alongText(String index) {
        return Numbers.plain(factor) + " * (1 - " + Numbers.plain(diameterFactor) + " * d) * ρ_" + index;
    }
}
