package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** The tension F_ax,Rk that a bolt can hold between its washers, 8.5.2. */
final class RopeEffect {
    private static final ParameterDescription CLEARANCE =
            ParameterDescription.number("boltHoleClearance", MILLIMETRE, "largest clearance of a hole around its bolt");
    private static final ParameterDescription TENSION_FACTOR =
            ParameterDescription.number("boltTensionFactor", RATIO, "k_2 of a bolt in tension");
    private static final ParameterDescription STRESS_AREA =
            ParameterDescription.number("boltStressAreaRatio", RATIO, "tensile stress area over the shank's area");
    static final List<ParameterDescription> PARAMETERS = List.of(CLEARANCE, TENSION_FACTOR, STRESS_AREA);

    private static final Formula WASHER_AREA =
            Formula.of("A_w = π * max(0, d_w^2 - (d + c)^2) / 4", SQUARE_MILLIMETRE, "8.5.2(2)");
    private static final Formula WASHER = Formula.of("F_w,Rk = 3 * f_c,90,k * A_w", NEWTON_, "8.5.2(2)");
    private static final Formula BOLT =
            Formula.of("F_t,Rk = k_2 * f_u,k * k_s * π * d^2 / 4", NEWTON_, "EN 1993-1-8, Table 3.4");
    private static final Formula AXIAL = Formula.of("F_ax,Rk = min(F_w,Rk, F_t,Rk)", NEWTON_, "8.5.2(1)");

    private RopeEffect() {}

    /**
     * Calculates F_ax,Rk; d and f_u,k stand on the sheet.
     *
     * @param fc90k of the weaker timber under a washer, N/mm2
     * @param joint pointer
     */
    static double calculate(Sheet sheet, Parameters parameters, double washerDiameterMm, double fc90k, Pointer joint) {
        sheet.given("d_w", washerDiameterMm, MILLIMETRE, "diameter of the washers", "", joint.child("washerDiameter"));
        parameters.enter(sheet, "c", CLEARANCE);
        sheet.given(
                "f_c,90,k",
                fc90k,
                NEWTON_PER_SQUARE_MILLIMETRE,
                "strength perpendicular to the grain of the weaker timber under a washer",
                parameters.source(StrengthClass.TABLE.name()));
        sheet.calculate(WASHER_AREA);
        sheet.calculate(WASHER);
        parameters.enter(sheet, "k_2", TENSION_FACTOR);
        parameters.enter(sheet, "k_s", STRESS_AREA);
        sheet.calculate(BOLT);
        return sheet.calculate(AXIAL);
    }
}
