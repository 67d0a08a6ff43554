package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;

import java.util.function.ToDoubleFunction;
import org.deckplanreview.formula.Formula;

/** A strength of solid timber, with its value for design by 2.4.1 (2.14). */
enum Strength {
    BENDING("m", "bending strength", StrengthClass::fmk, "k_mod * k_h * k_sys", "(2.14), 3.2, 6.6"),
    SHEAR("v", "shear strength", StrengthClass::fvk, "k_mod * k_sys", "(2.14), 6.6"),
    COMPRESSION_ALONG(
            "c,0", "compressive strength parallel to the grain", StrengthClass::fc0k, "k_mod * k_sys", "(2.14), 6.6"),
    COMPRESSION_ACROSS(
            "c,90",
            "compressive strength perpendicular to the grain",
            StrengthClass::fc90k,
            "k_mod * k_sys",
            "(2.14), 6.6");

    private final String index;
    private final String meaning;
    private final ToDoubleFunction<StrengthClass> characteristic;
    private final Formula design;

    Strength(
            String index,
            String meaning,
            ToDoubleFunction<StrengthClass> characteristic,
            String factors,
            String clause) {
        this.index = index;
        this.meaning = meaning;
        this.characteristic = characteristic;
        design = Formula.of(
                "f_" + index + ",d = " + factors + " * " + characteristicSymbol() + " / γ_M",
                NEWTON_PER_SQUARE_MILLIMETRE,
                clause);
    }

    /** For example {@code f_m,k}. */
    String characteristicSymbol() {
        return "f_" + index + ",k";
    }

    String meaning() {
        return meaning;
    }

    double characteristic(StrengthClass of) {
        return characteristic.applyAsDouble(of);
    }

    /** X_d = k_mod X_k / gamma_M, (2.14), times k_sys, and k_h for bending. */
    Formula design() {
        return design;
    }
}
