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
 */
public record Allowed(Sense sense, List<ShownValue> values, Optional<MeasureUnit> unit) {
    public Allowed {
        values = List.copyOf(values);
    }
}
