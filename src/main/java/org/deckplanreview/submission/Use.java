package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Measure;

/**
 * What the deck is for.
 *
 * @param imposedLoad if the designer states one
 * @param concentratedLoad if the designer states one
 * @param youngChildren whether children under five may use it
 * @param roofOver whether a roof stands on the deck or its posts
 */
public record Use(
        Occupancy occupancy,
        Optional<Measure> imposedLoad,
        Optional<Measure> concentratedLoad,
        Optional<Boolean> youngChildren,
        List<HeavyItem> heavyItems,
        Optional<Boolean> roofOver) {
    public Use {
        heavyItems = List.copyOf(heavyItems);
    }
}
