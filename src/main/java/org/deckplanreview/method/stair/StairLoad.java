package org.deckplanreview.method.stair;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;

import org.deckplanreview.formula.Formula;

/** Either the load on each area acts or the load on one place: what they come to along a string or tread, l long. */
enum StairLoad {
    ON_EACH_AREA("load on each area", "(γ_G * g_k + γ_Q * q_k)", "", ""),
    ON_ONE_PLACE("load on one place", "γ_G * g_k", " + γ_Q * Q_k * l / 4", " + γ_Q * Q_k");

    private final String meaning;
    private final Formula onString;
    private final Formula onStringWithGuard;
    private final Formula onTread;
    private final Formula moment;
    private final Formula force;

    StairLoad(String meaning, String area, String pointMoment, String pointForce) {
        this.meaning = meaning;
        String string = "p_d = " + area + " * b_s / n_s";
        onString = Formula.of(string, NEWTON_PER_MILLIMETRE, "");
        onStringWithGuard = Formula.of(string + " + γ_G * g_G", NEWTON_PER_MILLIMETRE, "");
        onTread = Formula.of("p_d = " + area + " * b_t", NEWTON_PER_MILLIMETRE, "");
        moment = Formula.of("M_d = p_d * l^2 / 8" + pointMoment, NEWTON_MILLIMETRE, "");
        force = Formula.of("F_d = p_d * l / 2" + pointForce, NEWTON_, "");
    }

    String meaning() {
        return meaning;
    }

    /** p_d along the string that carries most. */
    Formula onString(boolean guarded) {
        return guarded ? onStringWithGuard : onString;
    }

    /** p_d along one board of a tread. */
    Formula onTread() {
        return onTread;
    }

    /** M_d of a simple beam, with the load on one place at its middle. */
    Formula moment() {
        return moment;
    }

    /** F_d at the end of a simple beam, with the load on one place there. */
    Formula force() {
        return force;
    }
}
