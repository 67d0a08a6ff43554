package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Measure;

/**
 * What the deck is for.
 *
 * @param imposedLoad kN/m2, if the designer states one
 * @param concentratedLoad kN, if the designer states one
 * @param youngChildren whether children under five may use it
 */
public record Use(
        Occupancy occupancy,
        Optional<Measure> imposedLoad,
        Optional<Measure> concentratedLoad,
        Optional<Boolean> youngChildren,
        List<HeavyItem> heavyItems) {
    public Use {
        heavyItems = List.copyOf(heavyItems);
    }
}
