package org.deckplanreview.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * Lengths as drawings in feet and inches write them, to a sixteenth of an inch: {@code 5'-6 1/2"},
 * {@code 12'-0"}, and below a foot {@code 7 1/4"} (common practice).
 */
public final class FeetInches {

    private static final BigDecimal PARTS = BigDecimal.valueOf(16);
    private static final BigInteger PARTS_IN_INCH = BigInteger.valueOf(16);
    private static final BigInteger PARTS_IN_FOOT = BigInteger.valueOf(16 * 12);

    /** Less is left over from conversion and no length. */
    private static final double NOISE_INCH = 1e-6;

    private FeetInches() {}

    /** To the nearest sixteenth. */
    public static String of(double inches) {
        return of(inches, RoundingMode.HALF_UP);
    }

    /**
     * To a sixteenth, so that a limit can be rounded to its safe side; what is a whole sixteenth stays. What would become 0
     * without being 0 is written in decimals of an inch.
     */
    public static String of(double inches, RoundingMode rounding) {
        BigInteger parts = parts(inches, rounding);
        return parts.signum() == 0 && Math.abs(inches) > NOISE_INCH
                ? Phrases.of(Measure.of(inches, MeasureUnit.INCH))
                : fraction(parts);
    }

    /** The length in inches that {@link #of(double, RoundingMode)} writes in fractions. */
    public static double rounded(double inches, RoundingMode rounding) {
        return new BigDecimal(parts(inches, rounding)).divide(PARTS).doubleValue();
    }

    private static BigInteger parts(double inches, RoundingMode rounding) {
        BigDecimal exact = new BigDecimal(inches).multiply(PARTS);
        BigDecimal nearest = exact.setScale(0, RoundingMode.HALF_UP);
        boolean isWhole = Math.abs(exact.subtract(nearest).divide(PARTS).doubleValue()) <= NOISE_INCH;
        return (isWhole ? nearest : exact.setScale(0, rounding)).toBigInteger();
    }

    private static String fraction(BigInteger parts) {
        BigInteger[] feet = parts.abs().divideAndRemainder(PARTS_IN_FOOT);
        BigInteger[] whole = feet[1].divideAndRemainder(PARTS_IN_INCH);
        StringBuilder text = new StringBuilder(parts.signum() < 0 ? "-" : "");
        boolean hasFeet = feet[0].signum() > 0;
        boolean hasFraction = whole[1].signum() > 0;
        if (hasFeet) {
            text.append(feet[0]).append("'-");
        }
        if (hasFeet || whole[0].signum() > 0 || !hasFraction) {
            text.append(whole[0]).append(hasFraction ? " " : "");
        }
        if (hasFraction) {
            BigInteger common = whole[1].gcd(PARTS_IN_INCH);
            text.append(whole[1].divide(common)).append('/').append(PARTS_IN_INCH.divide(common));
        }
        return text.append('"').toString();
    }
}
