package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Shear stress of a rectangle, 6.1.7. */
final class ShearStress {
    static final ParameterDescription KCR =
            ParameterDescription.number("kcr", RATIO, "crack factor for shear of solid timber");

    static final Formula EFFECTIVE_BREADTH = Formula.of("b_ef = k_cr * b", MILLIMETRE, "(6.13a)");
    static final Formula OF_RECTANGLE =
            Formula.of("τ_d = 1.5 * V_d / (b_ef * h)", NEWTON_PER_SQUARE_MILLIMETRE, "6.1.7");
    static final Formula UTILISATION = Formula.of("utilisation = τ_d / f_v,d", RATIO, "(6.13)");

    private ShearStress() {}

    /** Calculates the breadth that cracks leave, (6.13a), of the breadth b on the sheet. */
    static void enterBreadth(Sheet sheet, Parameters parameters) {
        parameters.enter(sheet, "k_cr", KCR);
        sheet.calculate(EFFECTIVE_BREADTH);
    }
}
