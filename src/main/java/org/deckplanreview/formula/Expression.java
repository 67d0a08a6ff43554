package org.deckplanreview.formula;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;

/** The right side of a formula as a tree. */
public sealed interface Expression
        permits Symbol,
                Expression.Number,
                Expression.Negated,
                Expression.Sum,
                Expression.Product,
                Expression.Quotient,
                Expression.Power,
                Expression.Call,
                Expression.Bracketed,
                Expression.Piecewise {

    /** @param unit of the number, where it has one */
    record Number(String digits, double value, Optional<MeasureUnit> unit) implements Expression {}

    record Negated(Expression of) implements Expression {}

    record Sum(Expression left, boolean isDifference, Expression right) implements Expression {}

    record Product(Expression left, Expression right) implements Expression {}

    record Quotient(Expression over, Expression under) implements Expression {}

    record Power(Expression base, Expression exponent) implements Expression {}

    record Call(MathFunction function, List<Expression> arguments) implements Expression {
        public Call {
            arguments = List.copyOf(arguments);
        }
    }

    record Bracketed(Expression inside) implements Expression {}

    /** The first branch whose condition holds; the last one has none. */
    record Piecewise(List<Branch> branches) implements Expression {
        public Piecewise {
            branches = List.copyOf(branches);
        }
    }

    /** @param conditions all of them must hold; empty where it always counts */
    record Branch(Expression then, List<Comparison> conditions) {
        public Branch {
            conditions = List.copyOf(conditions);
        }
    }

    record Comparison(Expression left, Relation relation, Expression right) {}

    /** On one line, as documents write it. */
    default String text() {
        return Texts.of(this);
    }

    /** Without brackets that a line or a root makes needless. */
    default Expression bare() {
        return this instanceof Bracketed b ? b.inside().bare() : this;
    }

    /**
     * Reads what rulesets' documents print: sums, products, powers, brackets and the functions of {@link MathFunction};
     * numbers may have a unit, as {@code 150 [mm]}. Several expressions, each with its condition, are parted by semicolons:
     * {@code 1 if λ <= 0.75; 1.56 - 0.75 * λ if λ <= 1.4; 1 / λ^2}.
     *
     * @throws IllegalArgumentException if the text is not in the grammar
     */
    static Expression parse(String text) {
        return new ExpressionReader(text).whole();
    }

    /** Empty for what is not in the grammar. */
    static Optional<Expression> find(String text) {
        try {
            return Optional.of(parse(text));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
