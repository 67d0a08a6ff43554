package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * Metal fixings of one kind.
 *
 * @param diameter of the shank; not for plates
 * @param thickness of a plate
 */
public record Fixing(
        String id,
        Optional<String> label,
        FixingKind kind,
        Optional<Length> diameter,
        Optional<Length> thickness,
        Optional<FixingFinish> finish) {

    public String displayLabel() {
        return label.orElse(kind.word() + " " + id);
    }
}
