package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import org.deckplanreview.formula.Sheet;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;

/** k_crit of one span of a member and how it comes about, 6.3.3. One ply alone counts. */
record CriticalStress(MemberBasis basis, EffectiveLength length) {
    private LateralBuckling buckling() {
        return LateralBuckling.of(basis.parameters());
    }

    /** sigma_m,crit: (6.32) for softwood, (6.31) for hardwood. */
    double value() {
        StrengthClass c = basis.strengthClass();
        return c.softwood()
                ? buckling().softwoodCriticalStress(basis.ply(), c.e005(), length.lefMm())
                : LateralBuckling.generalCriticalStress(basis.ply(), c.e005(), g005(), length.lefMm());
    }

    /** G_0,05 in the same ratio to G_mean as E_0,05 to E_0,mean. */
    private double g005() {
        StrengthClass c = basis.strengthClass();
        return c.gMean() * c.e005() / c.e0Mean();
    }

    /** k_crit, (6.34); 1 for an edge that is held all along, 6.3.3(5). */
    double kcrit() {
        return length.held() ? 1 : buckling().kcrit(relativeSlenderness());
    }

    private double relativeSlenderness() {
        return LateralBuckling.relativeSlenderness(basis.strengthClass().fmk(), value());
    }

    void write(Sheet w) {
        if (length.held()) {
            w.step("k_crit", "1", 1, RATIO, "6.3.3(5)");
            return;
        }
        w.given(
                "l",
                length.lengthMm(),
                MILLIMETRE,
                length.meaning(),
                "",
                basis.member().pointer());
        w.step("l_ef", length.expression(), length.lefMm(), MILLIMETRE, "Table 6.1");
        boolean plies = basis.member().plies() > 1;
        String b = plies ? "b_1" : "b";
        stiffness(w, "E_0,05", basis.strengthClass().e005(), "5 % value of the modulus of elasticity");
        if (basis.strengthClass().softwood()) {
            w.step(
                    "σ_m,crit",
                    Numbers.plain(buckling().criticalStressFactor()) + " * " + b + "^2 * E_0,05 / (h * l_ef)",
                    value(),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "(6.32)");
        } else {
            writeGeneral(w, b);
        }
        w.step("λ_rel,m", "sqrt(f_m,k / σ_m,crit)", relativeSlenderness(), RATIO, "(6.30)");
        w.step("k_crit", buckling().expression(relativeSlenderness()), kcrit(), RATIO, "(6.34)");
    }

    private void writeGeneral(Sheet w, String b) {
        StrengthClass c = basis.strengthClass();
        Section ply = basis.ply();
        stiffness(w, "G_mean", c.gMean(), "mean shear modulus");
        stiffness(w, "E_0,mean", c.e0Mean(), "mean modulus of elasticity");
        w.step("G_0,05", "G_mean * E_0,05 / E_0,mean", g005(), NEWTON_PER_SQUARE_MILLIMETRE, "");
        w.step("I_z", "h * " + b + "^3 / 12", ply.weakSecondMomentMm4(), MeasureUnit.QUARTIC_MILLIMETRE, "");
        w.step(
                "I_tor",
                "max(" + b + ", h) * min(" + b + ", h)^3 / 3 * (1 - 0.63 * min(" + b + ", h) / max(" + b + ", h))",
                ply.torsionConstantMm4(),
                MeasureUnit.QUARTIC_MILLIMETRE,
                "");
        w.step(
                "σ_m,crit",
                "3.14159265 * sqrt(E_0,05 * I_z * G_0,05 * I_tor) / (l_ef * " + b + " * h^2 / 6)",
                value(),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "(6.31)");
    }

    private void stiffness(Sheet w, String symbol, double value, String meaning) {
        w.given(
                symbol,
                value,
                NEWTON_PER_SQUARE_MILLIMETRE,
                meaning,
                basis.parameters().source(StrengthClass.TABLE.name()),
                basis.strengthClassPointer());
    }
}
