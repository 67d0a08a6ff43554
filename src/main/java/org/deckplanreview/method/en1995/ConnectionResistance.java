package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Design resistance of a connection, 2.4.3 (2.17): k_mod R_k / γ_M. */
record ConnectionResistance(Formula formula) {
    static final List<ParameterDescription> PARAMETERS =
            List.of(Modification.SERVICE_CLASS, Modification.KMOD, Modification.DURATIONS, BeamJoint.GAMMA_M);

    /**
     * @param symbol of the design value
     * @param characteristic the characteristic value, in symbols
     */
    static ConnectionResistance of(String symbol, String characteristic) {
        return new ConnectionResistance(
                Formula.of(symbol + " = k_mod * " + characteristic + " / γ_M", NEWTON_, "(2.17)"));
    }

    /** Calculates the design value; what the characteristic value is written in stands on the sheet. */
    double calculate(Sheet sheet, Combination combination, Parameters parameters) {
        Modification.of(parameters, combination.factors()).enter(sheet, parameters);
        parameters.enter(sheet, "γ_M", BeamJoint.GAMMA_M);
        return sheet.calculate(formula);
    }
}
