package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.function.Supplier;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.vocabulary.Sense;

/**
 * The last line of a sheet: what was found against what is allowed.
 *
 * @param found symbol of what was found
 * @param allowed symbol of what it is compared with
 * @param unit of both
 */
record Utilisation(String found, Sense sense, String allowed, MeasureUnit unit, Formula formula) {

    /** A demand over the resistance to it. */
    static Utilisation atMost(String found, String allowed, MeasureUnit unit, String clause) {
        return new Utilisation(found, Sense.AT_MOST, allowed, unit, over(found, allowed, clause));
    }

    /** What is needed over what there is. */
    static Utilisation atLeast(String found, String allowed, MeasureUnit unit, String clause) {
        return new Utilisation(found, Sense.AT_LEAST, allowed, unit, over(allowed, found, clause));
    }

    private static Formula over(String over, String under, String clause) {
        return Formula.of("utilisation = " + over + " / " + under, RATIO, clause);
    }

    /** Calculates it as the last line of a sheet on which both stand. */
    Case of(Sheet sheet, Supplier<String> remark, Supplier<List<String>> assumptions) {
        return new Closed(this, sheet, sheet.calculate(formula), remark, assumptions);
    }

    private record Closed(
            Utilisation last,
            Sheet sheet,
            double utilisation,
            Supplier<String> remark,
            Supplier<List<String>> assumptions)
            implements Case {
        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    Measure.of(sheet.value(last.found), last.unit),
                    last.sense,
                    Measure.of(sheet.value(last.allowed), last.unit),
                    utilisation,
                    remark.get(),
                    sheet.steps(),
                    assumptions.get());
        }
    }
}
