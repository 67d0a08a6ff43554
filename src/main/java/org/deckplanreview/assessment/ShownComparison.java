package org.deckplanreview.assessment;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import org.deckplanreview.measure.FeetInches;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.measure.Value;
import org.deckplanreview.vocabulary.Sense;

/**
 * What was found and what is allowed, in the report's units. Both are rounded, but never so far that a value that fails
 * looks as if it complied: then more digits are shown, and decimals of an inch in place of fractions.
 *
 * @param number what was found, rounded; empty for words and flags
 * @param found for people, with its unit
 * @param allowed likewise
 */
public record ShownComparison(Optional<BigDecimal> number, String found, String allowed) {

    public static ShownComparison of(
            Value found, Sense sense, List<Value> allowed, Determination determination, UnitSystem system) {
        if (!(found instanceof Measure f)) {
            return new ShownComparison(Optional.empty(), Phrases.of(found), limit(sense, allowed, system));
        }
        Measure shown = system.measure(f);
        if (allowed.size() == 1
                && allowed.get(0) instanceof Measure a
                && a.unit().sameDimension(f.unit())) {
            return of(shown, sense, system.measure(a), telling(sense, determination), system);
        }
        return new ShownComparison(
                Optional.of(Numbers.rounded(shown.value())), Phrases.of(found, system), limit(sense, allowed, system));
    }

    /** A limit for people. In fractions of an inch it is rounded so that whoever keeps to them complies. */
    static String limit(Sense sense, List<Value> allowed, UnitSystem system) {
        return allowed.stream().map(v -> limit(sense, v, system)).collect(Collectors.joining(" or "));
    }

    private static String limit(Sense sense, Value allowed, UnitSystem system) {
        return allowed instanceof Measure m && system.unit(m.unit()) == MeasureUnit.INCH
                ? FeetInches.of(m.in(MeasureUnit.INCH), sense.safe())
                : Phrases.of(allowed, system);
    }

    /** Whether a report in these units shows values of a ruleset in other units than the ruleset writes them. */
    public static boolean isConverted(List<Value> written, UnitSystem system) {
        return written.stream().anyMatch(v -> v instanceof Measure m && system.isForeign(m.unit()));
    }

    /** Whether numbers as they are shown compare as the determination says. */
    private static BiPredicate<Double, Double> telling(Sense sense, Determination determination) {
        return switch (determination) {
            case COMPLIES -> sense::holds;
            case DOES_NOT_COMPLY -> (found, allowed) -> !sense.holds(found, allowed);
            default -> (found, allowed) -> true;
        };
    }

    private static ShownComparison of(
            Measure found, Sense sense, Measure allowed, BiPredicate<Double, Double> tells, UnitSystem system) {
        double limit = Numbers.rounded(allowed.in(found.unit())).doubleValue();
        BigDecimal number = Numbers.rounded(found.value(), n -> tells.test(n.doubleValue(), limit));
        boolean showsFractions = found.unit() == MeasureUnit.INCH
                && (tells.test(
                                FeetInches.rounded(found.value(), RoundingMode.HALF_UP),
                                FeetInches.rounded(allowed.in(MeasureUnit.INCH), sense.safe()))
                        || !tells.test(number.doubleValue(), limit));
        return showsFractions
                ? new ShownComparison(
                        Optional.of(number), Phrases.of(found, system), limit(sense, List.of(allowed), system))
                : new ShownComparison(Optional.of(number), Phrases.of(number, found.unit()), Phrases.of(allowed));
    }
}
