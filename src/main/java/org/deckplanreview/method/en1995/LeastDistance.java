package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.vocabulary.Sense;

/** Minimum spacings and end and edge distances of bolts, 8.5.1.1(3), Table 8.4, for a force along or across the grain. */
enum LeastDistance {
    SPACING_ALONG("a_1", "(4 + cosα) * d"),
    SPACING_ACROSS("a_2", "4 * d"),
    LOADED_END("a_3,t", "max(7 * d, 80 [mm])"),
    UNLOADED_END("a_3,c", "max((1 + 6 * sinα) * d, 4 * d)"),
    LOADED_EDGE("a_4,t", "max((2 + 2 * sinα) * d, 3 * d)"),
    UNLOADED_EDGE("a_4,c", "3 * d");

    private static final String SINE = "sinα";
    private static final String COSINE = "cosα";

    /** Where a fastener would lie on or beyond the edge, what is lacking over what is needed, beyond 1. */
    private static final Utilisation UTILISATION = Utilisation.of(
            "a",
            Sense.AT_LEAST,
            "a_min",
            MILLIMETRE,
            Formula.of("utilisation = a_min / a if a > 0; 1 + (a_min - a) / a_min", RATIO, ""));

    private final String expression;
    private final Formula formula;

    LeastDistance(String distance, String expression) {
        this.expression = expression;
        formula = Formula.of("a_min = " + expression, MILLIMETRE, "Table 8.4, " + distance);
    }

    /**
     * The distance beside what is allowed.
     *
     * @param sheet on which the distance stands as a
     * @param across whether the force acts across the grain, α = 90°, as against along it
     * @param remark where it is
     */
    Evaluation.Measured compare(
            Sheet sheet, boolean across, double diameterMm, Pointer diameter, String remark, List<String> assumptions) {
        sheet.given("d", diameterMm, MILLIMETRE, "diameter of the fasteners", "", diameter);
        if (expression.contains(SINE)) {
            sheet.given(SINE, across ? 1 : 0, RATIO, "sine of the angle between force and grain", "");
        }
        if (expression.contains(COSINE)) {
            sheet.given(COSINE, across ? 0 : 1, RATIO, "cosine of the angle between force and grain", "");
        }
        sheet.calculate(formula);
        return UTILISATION.of(sheet, () -> remark, () -> assumptions).measured();
    }
}
