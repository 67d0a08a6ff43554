package org.deckplanreview.method.equilibrium;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What holds a joint down beside the weight on it.
 *
 * @param source where the ruleset has the force from; empty where it does not come from there
 */
record Hold(double newtons, String meaning, String source, List<Pointer> from) {

    static Hold none(String meaning, Pointer... from) {
        return new Hold(0, meaning, "", List.of(from));
    }

    static Hold stated(Measure resistance, String of, Pointer from) {
        return new Hold(
                resistance.in(NEWTON_), "stated resistance of the " + of + " against uplift", "", List.of(from));
    }

    /** That of ordinary fixings or bases, by the ruleset. */
    static Hold ordinary(ParameterDescription resistance, String of, Parameters parameters) {
        return new Hold(
                parameters.number(resistance.name(), NEWTON_),
                "resistance of " + of + " against uplift",
                parameters.source(resistance.name()),
                List.of());
    }

    /** Enters {@code T_Rd}. */
    void enter(Sheet sheet) {
        sheet.given("T_Rd", newtons, NEWTON_, meaning, source, from.toArray(Pointer[]::new));
    }
}
