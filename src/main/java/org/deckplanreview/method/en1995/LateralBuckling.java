package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.QUARTIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;

/** k_crit: lateral torsional buckling of a rectangular member in bending, 6.3.3. Of several plies one alone counts. */
enum LateralBuckling {
    SOLID("b"),
    PLY("b_1");

    static final Formula RELATIVE_SLENDERNESS = Formula.of("λ_rel,m = sqrt(f_m,k / σ_m,crit)", RATIO, "(6.30)");
    static final Formula FACTOR = Formula.of(
            "k_crit = 1 if λ_rel,m <= 0.75; 1.56 - 0.75 * λ_rel,m if λ_rel,m <= 1.4; 1 / λ_rel,m^2", RATIO, "(6.34)");
    private static final Formula FACTOR_HELD = Formula.of("k_crit = 1", RATIO, "6.3.3(5)");
    private static final Formula SHEAR_MODULUS =
            Formula.of("G_0,05 = G_mean * E_0,05 / E_0,mean", NEWTON_PER_SQUARE_MILLIMETRE, "");

    private final Formula softwoodStress;
    private final Formula secondMoment;
    private final Formula torsionConstant;
    private final Formula generalStress;

    /** @param b symbol of the breadth that buckles */
    LateralBuckling(String b) {
        softwoodStress = Formula.of(
                "σ_m,crit = 0.78 * " + b + "^2 * E_0,05 / (h * l_ef)", NEWTON_PER_SQUARE_MILLIMETRE, "(6.32)");
        secondMoment = Formula.of("I_z = h * " + b + "^3 / 12", QUARTIC_MILLIMETRE, "");
        String thin = "min(" + b + ", h)";
        String wide = "max(" + b + ", h)";
        torsionConstant = Formula.of(
                "I_tor = " + wide + " * " + thin + "^3 / 3 * (1 - 0.63 * " + thin + " / " + wide + ")",
                QUARTIC_MILLIMETRE,
                "");
        generalStress = Formula.of(
                "σ_m,crit = π * sqrt(E_0,05 * I_z * G_0,05 * I_tor) / (l_ef * " + b + " * h^2 / 6)",
                NEWTON_PER_SQUARE_MILLIMETRE,
                "(6.31)");
    }

    /** Of the plies of a member. */
    static LateralBuckling of(int plies) {
        return plies > 1 ? PLY : SOLID;
    }

    /**
     * Calculates k_crit, (6.34); 1 for an edge that is held all along, 6.3.3(5). The section and f_m,k stand on the sheet.
     * sigma_m,crit is that of (6.32) for softwood, of (6.31) for hardwood, with G_0,05 in the same ratio to G_mean as E_0,05 to
     * E_0,mean.
     */
    double calculate(Sheet sheet, EffectiveLength length, Material material) {
        if (length.held()) {
            return sheet.calculate(FACTOR_HELD);
        }
        length.calculate(sheet);
        material.enterLowStiffness(sheet);
        if (material.strengthClass().softwood()) {
            sheet.calculate(softwoodStress);
        } else {
            material.enterShearModulus(sheet);
            material.enterStiffness(sheet);
            sheet.calculate(SHEAR_MODULUS);
            sheet.calculate(secondMoment);
            sheet.calculate(torsionConstant);
            sheet.calculate(generalStress);
        }
        sheet.calculate(RELATIVE_SLENDERNESS);
        return sheet.calculate(FACTOR);
    }

    /** sigma_m,crit of softwood, (6.32). */
    Formula softwoodStress() {
        return softwoodStress;
    }

    /** sigma_m,crit of any species, (6.31). */
    Formula generalStress() {
        return generalStress;
    }

    /** I_z. */
    Formula secondMoment() {
        return secondMoment;
    }

    /** I_tor: the usual approximation for a rectangle. */
    Formula torsionConstant() {
        return torsionConstant;
    }
}
