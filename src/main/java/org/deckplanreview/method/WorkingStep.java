package org.deckplanreview.method;

import java.util.List;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.Pointer;

/**
 * One step of a calculation.
 *
 * @param symbol as the source writes it, subscripts after an underscore, for example {@code f_m,k}
 * @param expression in symbols; empty for a value that enters from outside
 * @param substituted the expression with numbers put in; empty likewise
 * @param value unrounded
 * @param equation number or clause in the source; may be empty
 * @param meaning what the symbol stands for, in the trade's words; may be empty
 * @param from members of the submission that entered here
 */
public record WorkingStep(
        String symbol,
        String expression,
        String substituted,
        double value,
        MeasureUnit unit,
        String equation,
        String meaning,
        List<Pointer> from) {
    public WorkingStep {
        from = List.copyOf(from);
    }
}
