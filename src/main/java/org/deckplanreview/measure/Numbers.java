package org.deckplanreview.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, the same in every locale and on every machine. */
public final class Numbers {

    private static final MathContext SHOWN = new MathContext(6, RoundingMode.HALF_EVEN);

    private static final MathContext TEN_DIGITS = new MathContext(10, RoundingMode.HALF_EVEN);

    private Numbers() {}

    /** Six significant digits without exponent or trailing zeros. */
    public static String plain(double value) {
        return rounded(value).toPlainString();
    }

    /** The number that {@link #plain} writes. */
    public static BigDecimal rounded(double value) {
        if (value == 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal r = new BigDecimal(value).round(SHOWN).stripTrailingZeros();
        return r.scale() < 0 ? r.setScale(0) : r;
    }

    /** A utilisation with three decimals, rounded up and so away from compliance, but for a noise in the tenth digit. */
    public static BigDecimal utilisation(double value) {
        return BigDecimal.valueOf(value).round(TEN_DIGITS).setScale(3, RoundingMode.CEILING);
    }
}
