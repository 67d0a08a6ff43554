package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.function.Supplier;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.vocabulary.Sense;

/**
 * The last line of a sheet: what was found against what is allowed.
 *
 * @param found symbol of what was found
 * @param allowed what it is compared with, as a product of what stands on the sheet
 * @param unit of both
 */
record Utilisation(String found, Sense sense, Formula allowed, MeasureUnit unit, Formula formula) {

    /** A demand over the resistance to it. */
    static Utilisation atMost(String found, String allowed, MeasureUnit unit, String clause) {
        return of(found, Sense.AT_MOST, allowed, unit, over(found, allowed, clause));
    }

    /** What is needed over what there is. */
    static Utilisation atLeast(String found, String allowed, MeasureUnit unit, String clause) {
        return of(found, Sense.AT_LEAST, allowed, unit, over(allowed, found, clause));
    }

    /** With an equation of its own for the utilisation. */
    static Utilisation of(String found, Sense sense, String allowed, MeasureUnit unit, Formula formula) {
        return new Utilisation(found, sense, Formula.of("allowed = " + allowed, unit, ""), unit, formula);
    }

    private static Formula over(String over, String under, String clause) {
        return Formula.of(
                "utilisation = " + over + " / " + (under.contains(" ") ? "(" + under + ")" : under), RATIO, clause);
    }

    /** Calculates it as the last line of a sheet on which both stand. */
    Case of(Sheet sheet, Supplier<String> remark, Supplier<List<String>> assumptions) {
        return of(sheet, () -> sheet, remark, assumptions);
    }

    /** @param whole the sheet with what goes before, for a reader */
    Case of(Sheet sheet, Supplier<Sheet> whole, Supplier<String> remark, Supplier<List<String>> assumptions) {
        return new Closed(this, sheet, sheet.calculate(formula), whole, remark, assumptions);
    }

    private record Closed(
            Utilisation last,
            Sheet sheet,
            double utilisation,
            Supplier<Sheet> whole,
            Supplier<String> remark,
            Supplier<List<String>> assumptions)
            implements Case {
        @Override
        public Evaluation.Measured measured() {
            return new Evaluation.Measured(
                    sheet.measure(last.found).to(last.unit),
                    last.sense,
                    sheet.measure(last.allowed),
                    utilisation,
                    remark.get(),
                    Sheet.late(whole),
                    assumptions.get());
        }
    }
}
