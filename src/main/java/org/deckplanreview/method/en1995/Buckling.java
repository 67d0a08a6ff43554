package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Buckling of a rectangular column about one axis, 6.3.2 (6.21) to (6.29).
 *
 * @param axis y or z, the index of the symbols
 * @param effectiveLengthMm between points of no bending
 * @param sideMm of the section, in the plane of buckling
 */
record Buckling(
        String axis, double effectiveLengthMm, double sideMm, StrengthClass strengthClass, Parameters parameters) {
    private static final ParameterDescription BETA_C =
            ParameterDescription.number("betaC", RATIO, "straightness factor beta_c of columns");
    private static final ParameterDescription STOCKY = ParameterDescription.number(
            "stockySlenderness", RATIO, "relative slenderness up to which a column does not buckle");

    static final List<ParameterDescription> PARAMETERS = List.of(BETA_C, STOCKY);

    /** Effective length over the radius of gyration. */
    static double slenderness(double effectiveLengthMm, double sideMm) {
        return effectiveLengthMm * Math.sqrt(12) / sideMm;
    }

    /** lambda. */
    double slenderness() {
        return slenderness(effectiveLengthMm, sideMm);
    }

    /** lambda_rel, (6.21), (6.22). */
    double relativeSlenderness() {
        return slenderness() / Math.PI * Math.sqrt(strengthClass.fc0k() / strengthClass.e005());
    }

    private double betaC() {
        return parameters.number(BETA_C.name(), RATIO);
    }

    private double stocky() {
        return parameters.number(STOCKY.name(), RATIO);
    }

    boolean isStocky() {
        return relativeSlenderness() <= stocky();
    }

    /** k, (6.27), (6.28). */
    double k() {
        double rel = relativeSlenderness();
        return 0.5 * (1 + betaC() * (rel - stocky()) + rel * rel);
    }

    /** k_c, (6.25), (6.26); 1 for a stocky column. */
    double kc() {
        double rel = relativeSlenderness();
        return isStocky() ? 1 : 1 / (k() + Math.sqrt(k() * k() - rel * rel));
    }

    /** Shows all from the effective length on; the symbol of the side stands in the working already. */
    void write(Sheet w, String sideSymbol, String plane, Pointer from) {
        String rel = "λ_rel," + axis;
        w.given("l_ef," + axis, effectiveLengthMm, MILLIMETRE, "effective length, buckling " + plane, "", from);
        w.step("λ_" + axis, "l_ef," + axis + " * sqrt(12) / " + sideSymbol, slenderness(), RATIO, "");
        w.step(
                rel,
                "λ_" + axis + " / " + Numbers.plain(Math.PI) + " * sqrt(f_c,0,k / E_0,05)",
                relativeSlenderness(),
                RATIO,
                axis.equals("y") ? "(6.21)" : "(6.22)");
        if (isStocky()) {
            w.step("k_c," + axis, "1", 1, RATIO, "6.3.2(2)");
            return;
        }
        w.step(
                "k_" + axis,
                "0.5 * (1 + " + Numbers.plain(betaC()) + " * (" + rel + " - " + Numbers.plain(stocky()) + ") + " + rel
                        + "^2)",
                k(),
                RATIO,
                axis.equals("y") ? "(6.27)" : "(6.28)");
        w.step(
                "k_c," + axis,
                "1 / (k_" + axis + " + sqrt(k_" + axis + "^2 - " + rel + "^2))",
                kc(),
                RATIO,
                axis.equals("y") ? "(6.25)" : "(6.26)");
    }
}
