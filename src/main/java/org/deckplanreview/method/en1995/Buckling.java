package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;

/** Buckling of a rectangular column of solid timber about one axis, 6.3.2 (6.21) to (6.29). */
enum Buckling {
    ABOUT_Y("y", "h", "(6.21)", "(6.27)", "(6.25)"),
    ABOUT_Z("z", "b", "(6.22)", "(6.28)", "(6.26)"),
    /** Across the thinner side, t. */
    OF_THINNER_SIDE("z", "t", "(6.22)", "(6.28)", "(6.26)");

    private final Formula slenderness;
    private final Formula relativeSlenderness;
    private final Formula k;
    private final Formula factor;

    /**
     * @param axis index of the symbols
     * @param side symbol of the side of the section in the plane of buckling
     */
    Buckling(String axis, String side, String relativeClause, String kClause, String factorClause) {
        String relative = "λ_rel," + axis;
        slenderness = Formula.of("λ_" + axis + " = l_ef," + axis + " * sqrt(12) / " + side, RATIO, "");
        relativeSlenderness =
                Formula.of(relative + " = λ_" + axis + " / π * sqrt(f_c,0,k / E_0,05)", RATIO, relativeClause);
        k = Formula.of(
                "k_" + axis + " = 0.5 * (1 + 0.2 * (" + relative + " - 0.3) + " + relative + "^2)", RATIO, kClause);
        factor = Formula.of(
                "k_c," + axis + " = 1 if " + relative + " <= 0.3; 1 / (k_" + axis + " + sqrt(k_" + axis + "^2 - "
                        + relative + "^2))",
                RATIO,
                "6.3.2(2); " + factorClause);
    }

    /** Calculates k_c; the effective length, the side, f_c,0,k and E_0,05 stand on the sheet. */
    double calculate(Sheet sheet) {
        sheet.calculate(slenderness);
        sheet.calculate(relativeSlenderness);
        sheet.calculate(k);
        return sheet.calculate(factor);
    }
}
