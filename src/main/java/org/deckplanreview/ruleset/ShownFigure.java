package org.deckplanreview.ruleset;

import java.math.RoundingMode;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.deckplanreview.measure.FeetInches;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.measure.Value;
import org.deckplanreview.vocabulary.Sense;

/** Figures as texts show them. What is rounded is rounded so that whoever keeps to it complies. */
public final class ShownFigure {

    /** A ratio this near to one in a whole number is shown as that. */
    private static final double NEARLY_WHOLE = 0.005;

    private ShownFigure() {}

    /** As the ruleset's file writes it. */
    static String written(Figure figure, boolean isRatio) {
        return joined(figure, value -> isRatio ? oneIn(value, figure.sense()) : Phrases.of(value));
    }

    /**
     * In the units of a report.
     *
     * @param isComputed whether it comes out of a calculation, and is not as somebody wrote it
     */
    public static String in(UnitSystem units, Figure figure, boolean isRatio, boolean isComputed) {
        return joined(
                figure, value -> isRatio ? oneIn(value, figure.sense()) : in(units, value, figure.sense(), isComputed));
    }

    private static String joined(Figure figure, Function<Value, String> shown) {
        return figure.values().stream().map(shown).distinct().collect(Collectors.joining(" or "));
    }

    private static String in(UnitSystem units, Value value, Sense sense, boolean isComputed) {
        if (!(value instanceof Measure written)) {
            return Phrases.of(value);
        }
        Measure shown = units.measure(written);
        boolean isWritten = !isComputed && written.unit() == MeasureUnit.INCH;
        if (isWritten && units == UnitSystem.INCH_POUND && !isSixteenths(written.value())) {
            return Phrases.of(written);
        }
        if (shown.unit() == MeasureUnit.INCH && units == UnitSystem.INCH_POUND) {
            return FeetInches.of(shown.value(), sense.safe());
        }
        return isComputed || units.isForeign(written.unit())
                ? Phrases.of(Numbers.workable(shown.value(), sense.safe()), shown.unit())
                : Phrases.of(shown);
    }

    /** What is not, such as the diameter of a nail, is no length that is measured with a rule. */
    private static boolean isSixteenths(double inches) {
        return FeetInches.rounded(inches, RoundingMode.FLOOR) == FeetInches.rounded(inches, RoundingMode.CEILING);
    }

    private static String oneIn(Value value, Sense sense) {
        double ratio = value instanceof Measure m ? m.in(MeasureUnit.RATIO) : Double.NaN;
        if (!(ratio > 0)) {
            return Phrases.of(value);
        }
        double in = 1 / ratio;
        double whole = Math.rint(in);
        boolean isWhole = whole > 0 && Math.abs(in - whole) <= NEARLY_WHOLE * whole;
        return "1 in "
                + (isWhole
                        ? Numbers.plain(whole)
                        : Numbers.workable(in, steeperOrFlatter(sense)).toPlainString());
    }

    /** One in more is less. */
    private static RoundingMode steeperOrFlatter(Sense sense) {
        return switch (sense.safe()) {
            case CEILING -> RoundingMode.FLOOR;
            case FLOOR -> RoundingMode.CEILING;
            default -> RoundingMode.HALF_UP;
        };
    }
}
