package org.deckplanreview.formula;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;

/** An expression with numbers put in for its symbols. */
final class Substitution {
    private final List<Symbol> symbols;
    private final double[] values;
    private final Function<Integer, Optional<MeasureUnit>> unit;

    /** @param unit that is shown with the value of a symbol, by the symbol's place */
    Substitution(List<Symbol> symbols, double[] values, Function<Integer, Optional<MeasureUnit>> unit) {
        this.symbols = symbols;
        this.values = values;
        this.unit = unit;
    }

    Expression in(Expression of) {
        if (of instanceof Symbol s) {
            return number(symbols.indexOf(s));
        }
        if (of instanceof Expression.Negated n) {
            return new Expression.Negated(in(n.of()));
        }
        if (of instanceof Expression.Bracketed b) {
            return new Expression.Bracketed(in(b.inside()));
        }
        if (of instanceof Expression.Sum s) {
            return new Expression.Sum(in(s.left()), s.isDifference(), in(s.right()));
        }
        if (of instanceof Expression.Product p) {
            return new Expression.Product(in(p.left()), in(p.right()));
        }
        if (of instanceof Expression.Quotient q) {
            return new Expression.Quotient(in(q.over()), in(q.under()));
        }
        if (of instanceof Expression.Power p) {
            return new Expression.Power(base(in(p.base())), in(p.exponent()));
        }
        return of instanceof Expression.Call c
                ? new Expression.Call(
                        c.function(), c.arguments().stream().map(this::in).toList())
                : of;
    }

    /** In brackets where its unit could be read as raised alone. */
    private static Expression base(Expression base) {
        return base instanceof Expression.Number n && n.unit().isPresent() ? new Expression.Bracketed(base) : base;
    }

    private Expression number(int place) {
        double value = values[place];
        Expression number = new Expression.Number(
                Numbers.plain(Math.abs(value)),
                Math.abs(value),
                unit.apply(place).filter(u -> u != MeasureUnit.RATIO));
        return value < 0 ? new Expression.Bracketed(new Expression.Negated(number)) : number;
    }
}
