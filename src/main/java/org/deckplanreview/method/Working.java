package org.deckplanreview.method;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;

/**
 * Collects the steps of one calculation while it is made, so that what is shown is what was calculated. Expressions
 * are written with {@code *}, {@code /}, {@code +}, {@code -}, {@code ^}, brackets and the functions min, max and sqrt;
 * every symbol in them must have been given before. A symbol may end in a prime, as adjusted values of NDS do.
 */
public final class Working {

    private static final Pattern SYMBOL =
            Pattern.compile("[A-Za-zα-ωΑ-Ω][A-Za-zα-ωΑ-Ω]*(?:_[A-Za-z0-9]+(?:,[A-Za-z0-9]+)*)?'?");
    private static final List<String> FUNCTIONS = List.of("min", "max", "sqrt");

    private final List<WorkingStep> steps = new ArrayList<>();
    private final Map<String, Double> known = new LinkedHashMap<>();

    /** A value from the submission or the ruleset. Returns it. */
    public double given(String symbol, double value, MeasureUnit unit, String meaning, String source, Pointer... from) {
        known.put(symbol, value);
        steps.add(new WorkingStep(symbol, "", "", value, unit, source, meaning, List.of(from)));
        return value;
    }

    /**
     * A calculated value. Returns it.
     *
     * @throws IllegalArgumentException if the expression uses a symbol that was not given before
     */
    public double step(String symbol, String expression, double value, MeasureUnit unit, String equation) {
        Matcher m = SYMBOL.matcher(expression);
        StringBuilder substituted = new StringBuilder();
        while (m.find()) {
            String name = m.group();
            if (FUNCTIONS.contains(name)) {
                m.appendReplacement(substituted, name);
                continue;
            }
            Double number = known.get(name);
            if (number == null) {
                throw new IllegalArgumentException("'" + name + "' in '" + expression + "' was not given before");
            }
            m.appendReplacement(substituted, number < 0 ? "(" + Numbers.plain(number) + ")" : Numbers.plain(number));
        }
        m.appendTail(substituted);
        known.put(symbol, value);
        steps.add(new WorkingStep(symbol, expression, substituted.toString(), value, unit, equation, "", List.of()));
        return value;
    }

    public List<WorkingStep> steps() {
        return List.copyOf(steps);
    }
}
