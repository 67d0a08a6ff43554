package org.deckplanreview.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number with its unit. Written as one token, for example {@code 1100 mm}. */
public record Measure(double value, MeasureUnit unit) implements Value {

    private static final Pattern TOKEN = Pattern.compile("(-?(?:0|[1-9]\\d{0,8})(?:\\.\\d{1,9})?)(?: (\\S{1,8}))?");

    public Measure {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A measure is a finite number, not " + value);
        }
    }

    public static Measure of(double value, MeasureUnit unit) {
        return new Measure(value, unit);
    }

    public static Measure mm(double value) {
        return new Measure(value, MeasureUnit.MILLIMETRE);
    }

    /**
     * Reads a token such as {@code 1100 mm} or {@code 1.3}.
     *
     * @throws IllegalArgumentException naming what was found and what would be accepted
     */
    public static Measure parse(String token) {
        Matcher m = TOKEN.matcher(token);
        if (!m.matches()) {
            throw new IllegalArgumentException("'" + token + "' is not a number with a unit, such as '1100 mm'");
        }
        MeasureUnit unit = m.group(2) == null
                ? MeasureUnit.RATIO
                : MeasureUnit.ofSymbol(m.group(2))
                        .orElseThrow(() -> new IllegalArgumentException("'" + m.group(2) + "' is not a known unit"));
        return new Measure(Double.parseDouble(m.group(1)), unit);
    }

    /** The number in another unit of the same dimension. */
    public double in(MeasureUnit other) {
        return unit.convert(value, other);
    }

    /** The same in another unit of the same dimension. */
    public Measure to(MeasureUnit other) {
        return new Measure(in(other), other);
    }
}
