package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.KILOGRAM_PER_CUBIC_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.Map;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.vocabulary.ParameterDescription;

/** Embedment strength of solid timber under bolts in drilled holes, 8.5.1.1. */
final class EmbedmentStrength {
    static final ParameterDescription LARGEST_DIAMETER = ParameterDescription.number(
            "embedmentLargestDiameter", MILLIMETRE, "largest diameter of bolts for the embedment strength");

    private static final Formula BEAM_ALONG = along("f_h,0,1", "ρ_1", "(8.32)");
    private static final Formula POST_ALONG = along("f_h,2,k", "ρ_2", "(8.31), (8.32)");
    private static final Formula SOFTWOOD = k90("1.35");
    private static final Formula HARDWOOD = k90("0.9");

    /** (8.31) for α = 90°. */
    private static final Formula BEAM_ACROSS =
            Formula.of("f_h,1,k = f_h,0,1 / k_90", NEWTON_PER_SQUARE_MILLIMETRE, "(8.31)");

    private EmbedmentStrength() {}

    private static Formula along(String symbol, String density, String clause) {
        return Formula.ofNumbers(
                symbol + " = 0.082 * (1 - 0.01 * d) * " + density,
                NEWTON_PER_SQUARE_MILLIMETRE,
                clause,
                Map.of("d", MILLIMETRE, density, KILOGRAM_PER_CUBIC_METRE));
    }

    private static Formula k90(String constant) {
        return Formula.ofNumbers("k_90 = " + constant + " + 0.015 * d", RATIO, "(8.33)", Map.of("d", MILLIMETRE));
    }

    /** Calculates f_h,1,k of the beam, perpendicular to its grain; d stands on the sheet. */
    static void calculateAcross(Sheet sheet, Material beam) {
        enterDensity(sheet, "ρ_1", "beam", beam);
        sheet.calculate(BEAM_ALONG);
        sheet.calculate(beam.strengthClass().softwood() ? SOFTWOOD : HARDWOOD);
        sheet.calculate(BEAM_ACROSS);
    }

    /** Calculates f_h,2,k of the post, along its grain; d stands on the sheet. */
    static void calculateAlong(Sheet sheet, Material post) {
        enterDensity(sheet, "ρ_2", "post", post);
        sheet.calculate(POST_ALONG);
    }

    private static void enterDensity(Sheet sheet, String symbol, String piece, Material timber) {
        sheet.given(
                symbol,
                timber.strengthClass().rhoK(),
                KILOGRAM_PER_CUBIC_METRE,
                () -> "characteristic density of the " + piece + ", "
                        + timber.strengthClass().name(),
                timber.parameters().source(StrengthClass.TABLE.name()),
                timber.pointer());
    }
}
