package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.KILOGRAM_PER_CUBIC_METRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Solid timber of a strength class.
 *
 * @param pointer of the submission's strength class
 */
record Material(StrengthClass strengthClass, Pointer pointer, Parameters parameters) {
    static final ParameterDescription GAMMA_M =
            ParameterDescription.number("gammaM", RATIO, "partial factor of solid timber");
    static final List<ParameterDescription> PARAMETERS =
            List.of(Modification.SERVICE_CLASS, Modification.KMOD, Modification.DURATIONS, GAMMA_M);

    /** k_h of the depth h, 3.2(3). */
    static final Formula SIZE_FACTOR = sizeFactor("k_h", "h");

    /** k_h of another side. */
    static Formula sizeFactor(String symbol, String side) {
        return Formula.of(
                symbol + " = min((150 [mm] / " + side + ")^0.2, 1.3) if " + side
                        + " < 150 [mm] and ρ_k <= 700 [kg/m3]; 1",
                RATIO,
                "(3.1)");
    }

    /** Enters what of (2.14) is the same under all combinations: the characteristic strength, k_sys and gamma_M. */
    void enter(Sheet sheet, Strength strength, double ksys) {
        enter(sheet, strength);
        sheet.given("k_sys", ksys, RATIO, "system strength factor", "6.6");
        parameters.enter(sheet, "γ_M", GAMMA_M);
    }

    /** Enters a characteristic strength alone. */
    void enter(Sheet sheet, Strength strength) {
        enter(
                sheet,
                strength.characteristicSymbol(),
                strength.characteristic(strengthClass),
                NEWTON_PER_SQUARE_MILLIMETRE,
                strength.meaning());
    }

    /** Likewise for bending, with k_h of a side that stands on the sheet. */
    void enterBending(Sheet sheet, double ksys, Formula sizeFactor) {
        enter(sheet, Strength.BENDING, ksys);
        enterDensity(sheet);
        sheet.calculate(sizeFactor);
    }

    /** Calculates the strength for design, whose other factors stand on the sheet. */
    double calculate(Sheet sheet, Strength strength, Modification modification) {
        modification.enter(sheet, parameters);
        return sheet.calculate(strength.design());
    }

    /** Enters ρ_k, which decides on k_h. */
    double enterDensity(Sheet sheet) {
        return enter(sheet, "ρ_k", strengthClass.rhoK(), KILOGRAM_PER_CUBIC_METRE, "characteristic density");
    }

    double enterStiffness(Sheet sheet) {
        return enterStiffness(sheet, "E_0,mean");
    }

    double enterStiffness(Sheet sheet, String symbol) {
        return enter(sheet, symbol, strengthClass.e0Mean(), NEWTON_PER_SQUARE_MILLIMETRE, "mean modulus of elasticity");
    }

    double enterLowStiffness(Sheet sheet) {
        return enter(
                sheet,
                "E_0,05",
                strengthClass.e005(),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "5 % value of the modulus of elasticity");
    }

    double enterShearModulus(Sheet sheet) {
        return enter(sheet, "G_mean", strengthClass.gMean(), NEWTON_PER_SQUARE_MILLIMETRE, "mean shear modulus");
    }

    private double enter(Sheet sheet, String symbol, double value, MeasureUnit unit, String meaning) {
        return sheet.given(symbol, value, unit, () -> meaning + " of " + strengthClass.name(), source(), pointer);
    }

    private String source() {
        return parameters.source(StrengthClass.TABLE.name());
    }
}
