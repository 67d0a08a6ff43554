package org.deckplanreview.report;

import java.math.BigDecimal;
import java.util.AbstractList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Expression;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;

/**
 * One step of a calculation.
 *
 * @param expression in symbols; empty for a value that enters from outside
 * @param substituted the expression with numbers put in
 * @param value empty where the step has no finite value
 * @param word what a step comes to that is no number
 * @param text value and unit in the report's units, where the step is written in others, and feet and inches for inches
 * @param equation number or clause in the source
 * @param meaning what the symbol stands for
 * @param from members of the submission that entered here
 */
public record ReportedStep(
        String symbol,
        Optional<Expression> expression,
        Optional<Expression> substituted,
        Optional<BigDecimal> value,
        Optional<String> word,
        MeasureUnit unit,
        Optional<String> text,
        Optional<String> equation,
        Optional<String> meaning,
        List<Pointer> from) {
    public ReportedStep {
        from = List.copyOf(from);
    }

    /** Steps that are made as they are read. */
    static List<ReportedStep> of(List<WorkingStep> steps, UnitSystem system) {
        return new AbstractList<>() {
            @Override
            public ReportedStep get(int index) {
                return of(steps.get(index), system);
            }

            @Override
            public int size() {
                return steps.size();
            }
        };
    }

    private static ReportedStep of(WorkingStep step, UnitSystem system) {
        return new ReportedStep(
                step.symbol(),
                step.expression(),
                step.substituted(),
                Optional.of(step.value()).filter(Double::isFinite).map(Numbers::rounded),
                step.word(),
                step.unit(),
                Optional.of(step.value())
                        .filter(Double::isFinite)
                        .map(v -> Measure.of(v, step.unit()))
                        .flatMap(m -> text(m, system)),
                given(step.equation()),
                given(step.meaning()),
                step.from());
    }

    private static Optional<String> text(Measure value, UnitSystem system) {
        return Optional.of(Phrases.of(value, system)).filter(t -> !t.equals(Phrases.of(value)));
    }

    private static Optional<String> given(String text) {
        return Optional.of(text).filter(t -> !t.isBlank());
    }
}
