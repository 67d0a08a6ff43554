package org.deckplanreview.formula;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.MeasureUnit;

/** One step of a calculation. What is text in it is made when it is asked for. */
public sealed interface WorkingStep {

    /** As the source writes it, subscripts after an underscore, for example {@code f_m,k}. */
    String symbol();

    /** Unrounded; not a number where the step is a word. */
    double value();

    MeasureUnit unit();

    /** In symbols; empty for a value that enters from outside. */
    default Optional<Expression> expression() {
        return Optional.empty();
    }

    /** The expression with numbers put in; empty likewise, and where it is one symbol, whose number is the value. */
    default Optional<Expression> substituted() {
        return Optional.empty();
    }

    /** Number or clause in the source; may be empty. */
    String equation();

    /** What the symbol stands for, in the trade's words; may be empty. */
    default String meaning() {
        return "";
    }

    /** Members of the submission that entered here. */
    default List<Pointer> from() {
        return List.of();
    }

    /** What a step comes to that is no number. */
    default Optional<String> word() {
        return Optional.empty();
    }

    /** A value that enters from outside. */
    static WorkingStep given(
            String symbol, double value, MeasureUnit unit, String meaning, String source, List<Pointer> from) {
        return new Given(symbol, value, unit, () -> meaning, source, from);
    }

    /** A step that comes to a word. */
    static WorkingStep ofWord(String symbol, String word, String equation, String meaning) {
        return new Stated(symbol, Optional.of(word), equation, meaning);
    }

    /** @param wording of the meaning */
    record Given(
            String symbol,
            double value,
            MeasureUnit unit,
            Supplier<String> wording,
            String equation,
            List<Pointer> from)
            implements WorkingStep {
        public Given {
            from = List.copyOf(from);
        }

        @Override
        public String meaning() {
            return wording.get();
        }
    }

    /** A word that enters from outside. */
    record Stated(String symbol, Optional<String> word, String equation, String meaning) implements WorkingStep {
        @Override
        public double value() {
            return Double.NaN;
        }

        @Override
        public MeasureUnit unit() {
            return MeasureUnit.RATIO;
        }
    }

    /** What a formula comes to. */
    final class Calculated implements WorkingStep {
        private final Formula formula;
        private final double value;
        private final double[] values;
        private final MeasureUnit[] units;

        Calculated(Formula formula, double[] values, MeasureUnit[] units) {
            this.formula = formula;
            this.values = values;
            this.units = units;
            value = formula.value(values, units);
        }

        Formula formula() {
            return formula;
        }

        @Override
        public String symbol() {
            return formula.symbol().toString();
        }

        @Override
        public double value() {
            return value;
        }

        @Override
        public MeasureUnit unit() {
            return formula.unit();
        }

        @Override
        public Optional<Expression> expression() {
            return Optional.of(formula.taken(values, units));
        }

        @Override
        public Optional<Expression> substituted() {
            boolean shown = formula.showsUnits(units);
            return expression()
                    .filter(e -> !(e instanceof Symbol))
                    .map(new Substitution(
                            formula.symbols(),
                            values,
                            i -> Optional.of(units[i]).filter(u -> shown))::in);
        }

        @Override
        public String equation() {
            return formula.clause(values, units);
        }
    }
}
