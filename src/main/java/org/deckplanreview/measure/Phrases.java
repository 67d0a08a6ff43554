package org.deckplanreview.measure;

import java.util.List;
import java.util.stream.Collectors;

/** Values as people read them. */
public final class Phrases {

    private Phrases() {}

    /** For example {@code 1100 mm}, {@code 2.5 kN/m²}, {@code UC4}, {@code yes}. */
    public static String of(Value value) {
        if (value instanceof Measure m) {
            boolean isSpaced = m.unit() != MeasureUnit.RATIO && m.unit() != MeasureUnit.DEGREE;
            return Numbers.plain(m.value()) + (isSpaced ? " " : "") + unit(m.unit());
        }
        if (value instanceof Word w) {
            return w.word();
        }
        return ((Flag) value).yes() ? "yes" : "no";
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
