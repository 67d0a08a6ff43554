package org.deckplanreview.formula;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;

/** Which dimension a formula comes to when its values have these units, and by what they are multiplied on the way in and out. */
final class Units {
    private Units() {}

    /** Sets of units in which a formula holds as it is written, each told by its length in metres and its force in newtons. */
    private enum Coherent {
        MILLIMETRE_NEWTON(MeasureUnit.MILLIMETRE, MeasureUnit.NEWTON_),
        INCH_POUND(MeasureUnit.INCH, MeasureUnit.POUND_FORCE),
        METRE_KILONEWTON(MeasureUnit.METRE_, MeasureUnit.KILONEWTON),
        FOOT_POUND(MeasureUnit.FOOT, MeasureUnit.POUND_FORCE);

        /** Two factors nearer to each other than this are one that was rounded in two ways. */
        private static final double ROUNDING = 1e-12;

        private final double metres;
        private final double kilograms;

        Coherent(MeasureUnit length, MeasureUnit force) {
            metres = inSi(length);
            kilograms = inSi(force) / metres;
        }

        /** How many of this set's units of that dimension one of the unit is. */
        private double factor(MeasureUnit unit) {
            Dimension d = Dimension.of(unit);
            double own = StrictMath.pow(kilograms, d.mass()) * StrictMath.pow(metres, d.length());
            double factor = inSi(unit) / own;
            return Math.abs(factor - 1) < ROUNDING ? 1 : factor;
        }

        private boolean has(MeasureUnit unit) {
            return factor(unit) == 1;
        }
    }

    @SuppressWarnings({"rawtypes", "unchecked"})
    private static double inSi(MeasureUnit unit) {
        javax.measure.Unit raw = unit.unit();
        return raw.getConverterTo(raw.getSystemUnit()).convert(1.0);
    }

    /**
     * @param operands by which the formula's values are multiplied
     * @param result by which what comes out is multiplied
     * @param areNeeded whether any of them is not 1
     */
    record Factors(double[] operands, double result, boolean areNeeded) {
        static Factors between(List<MeasureUnit> from, List<MeasureUnit> to) {
            double[] factors = new double[from.size()];
            boolean needed = false;
            for (int i = 0; i < factors.length; i++) {
                factors[i] = from.get(i).convert(1, to.get(i));
                needed |= factors[i] != 1;
            }
            return new Factors(factors, 1, needed);
        }

        static Factors coherent(List<MeasureUnit> operands, MeasureUnit result) {
            for (Coherent set : Coherent.values()) {
                if (set.has(result) && operands.stream().allMatch(set::has)) {
                    double[] ones = new double[operands.size()];
                    Arrays.fill(ones, 1);
                    return new Factors(ones, 1, false);
                }
            }
            Coherent set = Coherent.MILLIMETRE_NEWTON;
            return new Factors(operands.stream().mapToDouble(set::factor).toArray(), 1 / set.factor(result), true);
        }
    }

    /** Empty where a number such as 0 fits any dimension. */
    static Optional<Dimension> dimension(Expression of, List<Symbol> symbols, List<MeasureUnit> units) {
        if (of instanceof Symbol s) {
            return Optional.of(Dimension.of(units.get(symbols.indexOf(s))));
        }
        if (of instanceof Expression.Number n) {
            return n.unit().isPresent()
                    ? n.unit().map(Dimension::of)
                    : Optional.of(Dimension.NONE).filter(d -> n.value() != 0);
        }
        if (of instanceof Expression.Negated n) {
            return dimension(n.of(), symbols, units);
        }
        if (of instanceof Expression.Bracketed b) {
            return dimension(b.inside(), symbols, units);
        }
        if (of instanceof Expression.Sum s) {
            return alike(of, List.of(s.left(), s.right()), symbols, units);
        }
        if (of instanceof Expression.Product p) {
            return Optional.of(known(p.left(), symbols, units).times(known(p.right(), symbols, units)));
        }
        if (of instanceof Expression.Quotient q) {
            return Optional.of(known(q.over(), symbols, units).over(known(q.under(), symbols, units)));
        }
        if (of instanceof Expression.Power p) {
            return Optional.of(power(p, symbols, units));
        }
        if (of instanceof Expression.Call c) {
            Optional<Dimension> arguments = alike(of, c.arguments(), symbols, units);
            return switch (c.function()) {
                case MIN, MAX -> arguments;
                case SQRT -> arguments.map(d -> d.to(0.5));
                case SIN, COS -> Optional.of(ofAngle(c, arguments));
                case ACOS -> Optional.of(Dimension.NONE);
            };
        }
        Expression.Piecewise piecewise = (Expression.Piecewise) of;
        for (Expression.Branch b : piecewise.branches()) {
            b.conditions().forEach(c -> alike(of, List.of(c.left(), c.right()), symbols, units));
        }
        return alike(
                of, piecewise.branches().stream().map(Expression.Branch::then).toList(), symbols, units);
    }

    private static Dimension ofAngle(Expression.Call c, Optional<Dimension> argument) {
        if (argument.filter(Dimension.of(MeasureUnit.DEGREE)::isSame).isEmpty()) {
            throw new IllegalArgumentException("'" + Texts.of(c) + "' is not of an angle");
        }
        return Dimension.NONE;
    }

    private static Dimension known(Expression of, List<Symbol> symbols, List<MeasureUnit> units) {
        return dimension(of, symbols, units).orElse(Dimension.NONE);
    }

    private static Dimension power(Expression.Power p, List<Symbol> symbols, List<MeasureUnit> units) {
        Dimension base = known(p.base(), symbols, units);
        if (p.exponent() instanceof Expression.Number n && n.unit().isEmpty()) {
            return base.to(n.value());
        }
        if (!base.isSame(Dimension.NONE) || !known(p.exponent(), symbols, units).isSame(Dimension.NONE)) {
            throw new IllegalArgumentException(
                    "'" + Texts.of(p) + "': only a ratio can have a power that is no number");
        }
        return Dimension.NONE;
    }

    private static Optional<Dimension> alike(
            Expression of, List<Expression> parts, List<Symbol> symbols, List<MeasureUnit> units) {
        List<Dimension> all = parts.stream()
                .flatMap(p -> dimension(p, symbols, units).stream())
                .toList();
        if (all.stream().anyMatch(d -> !d.isSame(all.get(0)))) {
            throw new IllegalArgumentException("'" + Texts.of(of) + "' brings together what measures different things");
        }
        return all.stream().findFirst();
    }
}
