package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * One stock of timber: its section, grade and treatment.
 *
 * @param breadth the smaller side of joists and beams; the width of a board
 * @param depth the side along the load; the thickness of a board
 * @param strengthClass of EN 338, for example C24
 * @param installedWet whether it is put in near fibre saturation and dries under load
 */
public record Timber(
        String id,
        Optional<String> label,
        Length breadth,
        Length depth,
        Optional<String> strengthClass,
        Optional<Treatment> treatment,
        Optional<NaturalDurability> naturalDurability,
        Optional<Boolean> installedWet) {

    public String displayLabel() {
        return label.orElse(id);
    }
}
