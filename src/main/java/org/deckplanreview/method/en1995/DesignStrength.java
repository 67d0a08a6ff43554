package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * A strength for design, 2.4.1 (2.14), with k_sys of 6.6.
 *
 * @param property index of the strength, for example {@code v} of f_v,k
 */
record DesignStrength(String property, double characteristic, Modification modification, double ksys, double gammaM) {
    static final ParameterDescription GAMMA_M =
            ParameterDescription.number("gammaM", RATIO, "partial factor of solid timber");
    static final List<ParameterDescription> PARAMETERS =
            List.of(Modification.SERVICE_CLASS, Modification.KMOD, Modification.DURATIONS, GAMMA_M);

    /** X_d = k_mod X_k / gamma_M, (2.14), times k_sys; k_h is left to bending, which alone has it here. */
    double value() {
        return modification.kmod() * ksys * characteristic / gammaM;
    }

    /** Shows what enters; the caller shows the result. */
    void writeFactors(Sheet w, Parameters p, String meaning, Pointer strengthClass) {
        w.given(
                "f_" + property + ",k",
                characteristic,
                NEWTON_PER_SQUARE_MILLIMETRE,
                meaning,
                p.source(StrengthClass.TABLE.name()),
                strengthClass);
        w.given(
                "k_mod",
                modification.kmod(),
                RATIO,
                "modification factor, service class " + p.word(Modification.SERVICE_CLASS.name()) + ", "
                        + modification.duration(),
                p.source(Modification.KMOD.name()));
        w.given("k_sys", ksys, RATIO, "system strength factor", "6.6");
        w.given("γ_M", gammaM, RATIO, "partial factor of solid timber", p.source(GAMMA_M.name()));
    }

    void write(Sheet w, Parameters p, String meaning, Pointer strengthClass) {
        writeFactors(w, p, meaning, strengthClass);
        w.step(
                "f_" + property + ",d",
                "k_mod * k_sys * f_" + property + ",k / γ_M",
                value(),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "(2.14), 6.6");
    }
}
