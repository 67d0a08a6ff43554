package org.deckplanreview.method;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.MeasureUnit;

/**
 * Collects the steps of one calculation while it is made, so that what is shown is what was calculated. Expressions
 * are written with {@code *}, {@code /}, {@code +}, {@code -}, {@code ^}, brackets and the functions min, max and sqrt;
 * every symbol in them must have been given before. A symbol may end in a prime, as adjusted values of NDS do.
 */
public final class Working {

    private final List<WorkingStep> steps = new ArrayList<>();
    private final Map<String, Double> known = new LinkedHashMap<>();

    /** A value from the submission or the ruleset. Returns it. */
    public double given(String symbol, double value, MeasureUnit unit, String meaning, String source, Pointer... from) {
        known.put(symbol, value);
        steps.add(WorkingStep.given(symbol, value, unit, meaning, source, List.of(from)));
        return value;
    }

    /**
     * A calculated value. Returns it.
     *
     * @throws IllegalArgumentException if the expression uses a symbol that was not given before
     */
    public double step(String symbol, String expression, double value, MeasureUnit unit, String equation) {
        steps.add(WorkingStep.Written.of(symbol, expression, known, value, unit, equation));
        known.put(symbol, value);
        return value;
    }

    public List<WorkingStep> steps() {
        return List.copyOf(steps);
    }
}
