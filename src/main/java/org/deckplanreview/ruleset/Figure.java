package org.deckplanreview.ruleset;

import java.util.List;
import org.deckplanreview.measure.Value;
import org.deckplanreview.vocabulary.Sense;

/**
 * A figure that an edition states and a text of a provision can show.
 *
 * @param sense which side of it whoever keeps to the text comes to lie on
 * @param values more than one where the case decides which counts; none where only a table or a calculation tells
 */
public record Figure(Sense sense, List<Value> values) {
    public Figure {
        values = List.copyOf(values);
    }
}
