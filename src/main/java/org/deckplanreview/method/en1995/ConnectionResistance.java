package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import org.deckplanreview.formula.Sheet;
import org.deckplanreview.vocabulary.Parameters;

/** Design resistance of a connection, 2.4.3 (2.17): k_mod R_k / γ_M. */
record ConnectionResistance(double characteristicN, Modification modification, double gammaM, Parameters parameters) {

    static ConnectionResistance of(double characteristicN, Combination combination, Parameters parameters) {
        return new ConnectionResistance(
                characteristicN,
                Modification.of(parameters, combination.factors()),
                parameters.number(BeamJoint.GAMMA_M.name(), RATIO),
                parameters);
    }

    double designN() {
        return modification.kmod() * characteristicN / gammaM;
    }

    /** Shows the factors and the design value; what {@code characteristic} is written in must stand before. */
    void write(Sheet w, String symbol, String characteristic) {
        w.given(
                "k_mod",
                modification.kmod(),
                RATIO,
                "modification factor, service class " + parameters.word(Modification.SERVICE_CLASS.name()) + ", "
                        + modification.duration(),
                parameters.source(Modification.KMOD.name()));
        w.given("γ_M", gammaM, RATIO, "partial factor of connections", parameters.source(BeamJoint.GAMMA_M.name()));
        w.step(symbol, "k_mod * " + characteristic + " / γ_M", designN(), NEWTON_, "(2.17)");
    }
}
