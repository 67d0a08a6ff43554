package org.deckplanreview.formula;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** An expression made ready to calculate: each symbol is a place in an array. */
@FunctionalInterface
interface Calculation {
    double of(double[] values);

    static Calculation of(Expression expression, List<Expression> operands) {
        int place = operands.indexOf(expression);
        if (place >= 0) {
            return v -> v[place];
        }
        if (expression instanceof Expression.Number n) {
            double number = n.value();
            return v -> number;
        }
        if (expression instanceof Expression.Negated n) {
            Calculation of = of(n.of(), operands);
            return v -> -of.of(v);
        }
        if (expression instanceof Expression.Bracketed b) {
            return of(b.inside(), operands);
        }
        if (expression instanceof Expression.Sum s) {
            Calculation left = of(s.left(), operands);
            Calculation right = of(s.right(), operands);
            return s.isDifference() ? v -> left.of(v) - right.of(v) : v -> left.of(v) + right.of(v);
        }
        if (expression instanceof Expression.Product p) {
            Calculation left = of(p.left(), operands);
            Calculation right = of(p.right(), operands);
            return v -> left.of(v) * right.of(v);
        }
        if (expression instanceof Expression.Quotient q) {
            Calculation over = of(q.over(), operands);
            Calculation under = of(q.under(), operands);
            return v -> over.of(v) / under.of(v);
        }
        if (expression instanceof Expression.Power p) {
            return power(of(p.base(), operands), p.exponent(), operands);
        }
        return expression instanceof Expression.Call c
                ? call(c, operands)
                : piecewise((Expression.Piecewise) expression, operands);
    }

    private static Calculation power(Calculation base, Expression exponent, List<Expression> operands) {
        if (exponent instanceof Expression.Number n) {
            return switch (n.digits()) {
                case "2" ->
                    v -> {
                        double b = base.of(v);
                        return b * b;
                    };
                case "3" ->
                    v -> {
                        double b = base.of(v);
                        return b * b * b;
                    };
                default -> v -> StrictMath.pow(base.of(v), n.value());
            };
        }
        Calculation to = of(exponent, operands);
        return v -> StrictMath.pow(base.of(v), to.of(v));
    }

    private static Calculation call(Expression.Call c, List<Expression> operands) {
        List<Calculation> arguments =
                c.arguments().stream().map(a -> of(a, operands)).toList();
        return switch (c.function()) {
            case MIN -> folded(arguments, Math::min);
            case MAX -> folded(arguments, Math::max);
            case SQRT -> applied(arguments.get(0), Math::sqrt);
            case SIN -> applied(arguments.get(0), StrictMath::sin);
            case COS -> applied(arguments.get(0), StrictMath::cos);
            case ACOS -> applied(arguments.get(0), StrictMath::acos);
        };
    }

    private static Calculation applied(Calculation argument, DoubleUnaryOperator function) {
        return v -> function.applyAsDouble(argument.of(v));
    }

    private static Calculation folded(List<Calculation> arguments, DoubleBinaryOperator operator) {
        Calculation folded = arguments.get(0);
        for (Calculation next : arguments.subList(1, arguments.size())) {
            Calculation before = folded;
            folded = v -> operator.applyAsDouble(before.of(v), next.of(v));
        }
        return folded;
    }

    private static Calculation piecewise(Expression.Piecewise p, List<Expression> operands) {
        Branches branches = new Branches(p, operands);
        return v -> branches.then.get(branches.taken(v)).of(v);
    }

    /** The branches of a formula that is defined piece by piece. */
    final class Branches {
        private final List<Calculation> then;
        private final List<List<Condition>> conditions;

        private record Condition(Calculation left, Relation relation, Calculation right) {
            boolean holds(double[] values) {
                return relation.holds(left.of(values), right.of(values));
            }
        }

        Branches(Expression.Piecewise p, List<Expression> operands) {
            then = p.branches().stream()
                    .map(b -> Calculation.of(b.then(), operands))
                    .toList();
            conditions = p.branches().stream()
                    .map(b -> b.conditions().stream()
                            .map(c -> new Condition(
                                    Calculation.of(c.left(), operands),
                                    c.relation(),
                                    Calculation.of(c.right(), operands)))
                            .toList())
                    .toList();
        }

        /** Index of the first branch whose conditions hold. */
        int taken(double[] values) {
            for (int i = 0; i < then.size() - 1; i++) {
                if (conditions.get(i).stream().allMatch(c -> c.holds(values))) {
                    return i;
                }
            }
            return then.size() - 1;
        }
    }
}
