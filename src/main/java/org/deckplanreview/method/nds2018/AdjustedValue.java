package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE_PER_SQUARE_INCH;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;

/**
 * A reference design value times its adjustment factors, 4.3.1 and Table 4.3.1.
 *
 * @param referencePsi as tabulated
 * @param meaning for people
 * @param source of the reference value
 */
record AdjustedValue(Property property, double referencePsi, String meaning, String source, List<Factor> factors) {

    AdjustedValue {
        factors = List.copyOf(factors);
    }

    /** One adjustment factor, named as Table 4.3.1 names it. */
    record Factor(String symbol, double value, String meaning, String source) {}

    double psi() {
        double value = referencePsi;
        for (Factor f : factors) {
            value *= f.value();
        }
        return value;
    }

    /** With one more factor. */
    AdjustedValue times(Factor factor) {
        List<Factor> more = new ArrayList<>(factors);
        more.add(factor);
        return new AdjustedValue(property, referencePsi, meaning, source, more);
    }

    /** The symbol of the adjusted value, for example {@code F_b'}. */
    String symbol() {
        return property.symbol() + "'";
    }

    /** Shows the reference value, each factor and the product under {@link #symbol()}. */
    void write(Sheet w, Pointer... from) {
        writeReference(w, from);
        writeProduct(w);
    }

    void writeReference(Sheet w, Pointer... from) {
        w.given(property.symbol(), referencePsi, POUND_FORCE_PER_SQUARE_INCH, meaning, source, from);
        factors.forEach(f -> w.given(f.symbol(), f.value(), RATIO, f.meaning(), f.source()));
    }

    /** The product alone; reference value and factors stand in the working already. */
    void writeProduct(Sheet w) {
        writeProduct(w, symbol());
    }

    void writeProduct(Sheet w, String as) {
        w.step(
                as,
                property.symbol()
                        + factors.stream().map(f -> " * " + f.symbol()).collect(Collectors.joining()),
                psi(),
                POUND_FORCE_PER_SQUARE_INCH,
                "4.3.1");
    }
}
