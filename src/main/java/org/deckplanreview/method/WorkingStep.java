package org.deckplanreview.method;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.MeasureUnit;

/**
 * One step of a calculation.
 *
 * @param symbol as the source writes it, subscripts after an underscore, for example {@code f_m,k}
 * @param expression in symbols; empty for a value that enters from outside
 * @param substituted the expression with numbers put in; empty likewise
 * @param value unrounded; not a number where the step is a word
 * @param equation number or clause in the source; may be empty
 * @param meaning what the symbol stands for, in the trade's words; may be empty
 * @param from members of the submission that entered here
 * @param word what a step comes to that is no number
 */
public record WorkingStep(
        String symbol,
        String expression,
        String substituted,
        double value,
        MeasureUnit unit,
        String equation,
        String meaning,
        List<Pointer> from,
        Optional<String> word) {
    public WorkingStep {
        from = List.copyOf(from);
    }

    /** A step that comes to a number. */
    public WorkingStep(
            String symbol,
            String expression,
            String substituted,
            double value,
            MeasureUnit unit,
            String equation,
            String meaning,
            List<Pointer> from) {
        this(symbol, expression, substituted, value, unit, equation, meaning, from, Optional.empty());
    }

    /** A step that comes to a word. */
    public static WorkingStep ofWord(String symbol, String word, String equation, String meaning) {
        return new WorkingStep(
                symbol, "", "", Double.NaN, MeasureUnit.RATIO, equation, meaning, List.of(), Optional.of(word));
    }
}
