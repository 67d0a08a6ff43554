package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Measure;

/**
 * Something heavy on its own area, such as a planter or a spa bath.
 *
 * @param weight kN, with all that fills it
 */
public record HeavyItem(
        String id,
        Optional<String> label,
        List<PlanPoint> outline,
        Measure weight,
        LoadNature nature,
        Optional<HeavyItemKind> kind) {
    public HeavyItem {
        outline = List.copyOf(outline);
    }
}
