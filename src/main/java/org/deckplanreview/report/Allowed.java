package org.deckplanreview.report;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.vocabulary.Sense;

/**
 * What is allowed.
 *
 * @param values one but for {@link Sense#ONE_OF}
 * @param unit of numbers
 * @param text for people, where that is not the number with its unit: feet and inches, rounded to
 *     the side that complies
 * @param asWritten as the ruleset writes it, where it is shown in another unit
 */
public record Allowed(
        Sense sense,
        List<ShownValue> values,
        Optional<MeasureUnit> unit,
        Optional<String> text,
        Optional<String> asWritten) {
    public Allowed {
        values = List.copyOf(values);
    }
}
