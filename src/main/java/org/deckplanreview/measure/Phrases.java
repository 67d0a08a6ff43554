package org.deckplanreview.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** Values as people read them. */
public final class Phrases {

    private Phrases() {}

    /** For example {@code 1100 mm}, {@code 2.5 kN/m²}, {@code UC4}, {@code yes}. */
    public static String of(Value value) {
        if (value instanceof Measure m) {
            return of(Numbers.rounded(m.value()), m.unit());
        }
        if (value instanceof Word w) {
            return w.word();
        }
        return ((Flag) value).yes() ? "yes" : "no";
    }

    /** The same in the units of a system, for example {@code 3'-7 1/4"}, {@code 52.2136 psf}. */
    public static String of(Value value, UnitSystem system) {
        if (!(value instanceof Measure m)) {
            return of(value);
        }
        Measure shown = system.measure(m);
        return isInFeetAndInches(shown, system) ? FeetInches.of(shown.value()) : of(shown);
    }

    private static boolean isInFeetAndInches(Measure shown, UnitSystem system) {
        return system == UnitSystem.INCH_POUND && shown.unit() == MeasureUnit.INCH;
    }

    /** A rounded number with its unit. */
    public static String of(BigDecimal number, MeasureUnit unit) {
        boolean isSpaced = unit != MeasureUnit.RATIO && unit != MeasureUnit.DEGREE;
        return number.toPlainString() + (isSpaced ? " " : "") + unit(unit);
    }

    public static String of(List<Value> values) {
        return values.stream().map(Phrases::of).collect(Collectors.joining(" or "));
    }

    /** A unit with raised powers and a middle dot. */
    public static String unit(MeasureUnit unit) {
        return switch (unit) {
            case RATIO -> "";
            case DEGREE -> "°";
            default ->
                unit.symbol()
                        .replace("2", "²")
                        .replace("3", "³")
                        .replace("4", "⁴")
                        .replace('.', '·');
        };
    }
}
