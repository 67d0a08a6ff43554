package org.deckplanreview.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Predicate;

/** Numbers as text, the same in every locale and on every machine. */
public final class Numbers {

    private static final int USUAL_DIGITS = 6;
    private static final int WORKABLE_DIGITS = 3;

    /** A double has at most 17 significant decimal digits, so that more would show nothing new. */
    private static final int MOST_DIGITS = 17;

    private static final MathContext TEN_DIGITS = new MathContext(10, RoundingMode.HALF_EVEN);

    /** What is left of the last digits when the same length is given in another unit. */
    private static final double NOISE = 1e-9;

    private Numbers() {}

    /** Whether two numbers are one in every comparison: they differ by no more than a part in a thousand million. */
    public static boolean areSame(double a, double b) {
        return Math.abs(a - b) <= NOISE * Math.max(Math.abs(a), Math.abs(b));
    }

    /** Six significant digits without exponent or trailing zeros. */
    public static String plain(double value) {
        return rounded(value).toPlainString();
    }

    /** The number that {@link #plain} writes. */
    public static BigDecimal rounded(double value) {
        return rounded(value, USUAL_DIGITS);
    }

    /** Six digits, and as many more as it takes to be true; six if no number of digits does. */
    public static BigDecimal rounded(double value, Predicate<BigDecimal> isTrue) {
        for (int digits = USUAL_DIGITS; digits <= MOST_DIGITS; digits++) {
            BigDecimal shown = rounded(value, digits);
            if (isTrue.test(shown)) {
                return shown;
            }
        }
        return rounded(value);
    }

    private static BigDecimal rounded(double value, int digits) {
        if (value == 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal r = new BigDecimal(value)
                .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        return r.scale() < 0 ? r.setScale(0) : r;
    }

    /**
     * A figure to work to: whole from ten on, three significant digits below, rounded this way but for a noise in the tenth
     * digit.
     */
    public static BigDecimal workable(double value, RoundingMode way) {
        BigDecimal exact = BigDecimal.valueOf(value).round(TEN_DIGITS);
        int digitsBeforePoint = exact.precision() - exact.scale();
        int decimals = digitsBeforePoint > 1 ? 0 : WORKABLE_DIGITS - digitsBeforePoint;
        BigDecimal r = exact.signum() == 0
                ? BigDecimal.ZERO
                : exact.setScale(decimals, way).stripTrailingZeros();
        return r.scale() < 0 ? r.setScale(0) : r;
    }

    /** A utilisation with three decimals, rounded up and so away from compliance, but for a noise in the tenth digit. */
    public static BigDecimal utilisation(double value) {
        return BigDecimal.valueOf(value).round(TEN_DIGITS).setScale(3, RoundingMode.CEILING);
    }
}
