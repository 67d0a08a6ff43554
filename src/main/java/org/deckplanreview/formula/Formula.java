package org.deckplanreview.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.deckplanreview.measure.MeasureUnit;

/**
 * An equation as its document writes it. The same object calculates and is shown. A constant that belongs to the equation stands
 * in it; what an edition or a nation may set is a symbol. Make each once, as a constant of the class that calculates with it.
 */
public final class Formula {

    private static final String EQUALS = " = ";
    private static final String CLAUSES = "; ";

    private final Symbol symbol;
    private final Expression expression;
    private final MeasureUnit unit;
    private final String clause;

    /** Units in which an empirical equation wants its numbers; empty for one that holds in any units. */
    private final Map<String, MeasureUnit> wanted;

    private final List<Symbol> symbols;

    /** The symbols, then the numbers that have a unit. */
    private final List<Expression> operands;

    private final Calculation calculation;

    /** What is known of the units met last. A race makes it anew, to the same. */
    private volatile Checked last;

    /** @param of units of the symbols' values for which the factors hold */
    private record Checked(MeasureUnit[] of, Units.Factors factors) {
        boolean holds(MeasureUnit[] units) {
            for (int i = 0; i < units.length; i++) {
                if (of[i] != units[i]) {
                    return false;
                }
            }
            return true;
        }
    }

    private Formula(String equation, MeasureUnit unit, String clause, Map<String, MeasureUnit> wanted) {
        int at = equation.indexOf(EQUALS);
        if (at < 0) {
            throw new IllegalArgumentException("'" + equation + "' is not an equation such as 'A = b * h'");
        }
        symbol = Symbol.of(equation.substring(0, at));
        expression = Expression.parse(equation.substring(at + EQUALS.length()));
        this.unit = unit;
        this.clause = clause;
        this.wanted = wanted;
        Set<Symbol> found = new LinkedHashSet<>();
        Set<Expression.Number> numbers = new LinkedHashSet<>();
        collect(expression, found, numbers);
        symbols = List.copyOf(found);
        List<Expression> all = new ArrayList<>(symbols);
        all.addAll(numbers);
        operands = List.copyOf(all);
        calculation = Calculation.of(expression, operands);
    }

    private Formula(Formula same, MeasureUnit unit, String clause) {
        symbol = same.symbol;
        expression = same.expression;
        wanted = same.wanted;
        symbols = same.symbols;
        operands = same.operands;
        calculation = same.calculation;
        this.unit = unit;
        this.clause = clause;
    }

    /**
     * An equation that holds in any units.
     *
     * @param equation such as {@code σ_m,d = M_d / W_y}
     * @param unit of what it comes to
     * @param clause number of the equation or clause in its document; may be blank; of a piecewise equation one for all
     *     pieces or, parted by semicolons as they are, one for each
     * @throws IllegalArgumentException if the equation is not in the grammar
     */
    public static Formula of(String equation, MeasureUnit unit, String clause) {
        return new Formula(equation, unit, clause, Map.of());
    }

    /**
     * An empirical equation, which holds for numbers in these units alone.
     *
     * @param in unit of every symbol
     * @throws IllegalArgumentException if the equation is not in the grammar, or the unit of a symbol is not told
     */
    public static Formula ofNumbers(String equation, MeasureUnit unit, String clause, Map<String, MeasureUnit> in) {
        Formula formula = new Formula(equation, unit, clause, Map.copyOf(in));
        for (Symbol s : formula.symbols) {
            if (!in.containsKey(s.toString())) {
                throw new IllegalArgumentException("'" + equation + "' does not tell the unit of " + s);
            }
        }
        return formula;
    }

    /** The same equation, of which the values are such that it comes to another unit. */
    public Formula in(MeasureUnit other) {
        return other == unit ? this : new Formula(this, other, clause);
    }

    /** The same equation as another clause permits it. */
    public Formula by(String otherClause) {
        return new Formula(this, unit, otherClause);
    }

    private static void collect(Expression of, Set<Symbol> symbols, Set<Expression.Number> numbers) {
        if (of instanceof Symbol s) {
            symbols.add(s);
        } else if (of instanceof Expression.Number n && n.unit().isPresent()) {
            numbers.add(n);
        } else {
            Parts.of(of).forEach(p -> collect(p, symbols, numbers));
        }
    }

    public Symbol symbol() {
        return symbol;
    }

    public Expression expression() {
        return expression;
    }

    public MeasureUnit unit() {
        return unit;
    }

    /** In the order in which the equation names them. */
    List<Symbol> symbols() {
        return symbols;
    }

    /**
     * What it comes to.
     *
     * @param values of the symbols, in their order
     * @param units of the values
     * @throws IllegalArgumentException if the units do not lead to the formula's own
     */
    double value(double[] values, MeasureUnit[] units) {
        return calculation.of(inward(values, units)) * factors(units).result();
    }

    private double[] inward(double[] values, MeasureUnit[] units) {
        Units.Factors factors = factors(units);
        if (operands.size() == values.length && !factors.areNeeded()) {
            return values;
        }
        double[] all = new double[operands.size()];
        for (int i = 0; i < all.length; i++) {
            double value = i < values.length ? values[i] : ((Expression.Number) operands.get(i)).value();
            all[i] = value * factors.operands()[i];
        }
        return all;
    }

    private Units.Factors factors(MeasureUnit[] units) {
        Checked known = last;
        if (known == null || !known.holds(units)) {
            known = new Checked(units.clone(), wanted.isEmpty() ? checked(List.of(units)) : stated(List.of(units)));
            last = known;
        }
        return known.factors();
    }

    private Units.Factors stated(List<MeasureUnit> units) {
        return Units.Factors.between(
                units, symbols.stream().map(s -> wanted.get(s.toString())).toList());
    }

    private Units.Factors checked(List<MeasureUnit> units) {
        Dimension own = Dimension.of(unit);
        Units.dimension(expression, symbols, units).filter(d -> !d.isSame(own)).ifPresent(d -> {
            throw new IllegalArgumentException("'" + this + "' does not come to " + unit.symbol());
        });
        List<MeasureUnit> all = new ArrayList<>(units);
        operands.subList(units.size(), operands.size())
                .forEach(o -> all.add(((Expression.Number) o).unit().orElseThrow()));
        return Units.Factors.coherent(all, unit);
    }

    /** The branch that counts for these values; the whole expression where it is not piecewise. */
    Expression taken(double[] values, MeasureUnit[] units) {
        return expression instanceof Expression.Piecewise p
                ? p.branches().get(branch(p, values, units)).then()
                : expression;
    }

    /** The clause of that branch. */
    String clause(double[] values, MeasureUnit[] units) {
        if (expression instanceof Expression.Piecewise p) {
            String[] clauses = clause.split(CLAUSES);
            return clauses.length == 1 ? clause : clauses[branch(p, values, units)];
        }
        return clause;
    }

    private int branch(Expression.Piecewise p, double[] values, MeasureUnit[] units) {
        return new Calculation.Branches(p, operands).taken(inward(values, units));
    }

    /** Whether numbers are to be shown with their units: where they do not fit each other as they are, or one is shown with its own. */
    boolean showsUnits(MeasureUnit[] units) {
        return operands.size() > symbols.size() || factors(units).areNeeded();
    }

    @Override
    public String toString() {
        return symbol + EQUALS + Texts.of(expression);
    }
}
