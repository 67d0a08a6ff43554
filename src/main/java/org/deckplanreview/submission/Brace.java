package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * A brace from a post up to the beam, or down to the foot of the next post.
 *
 * @param direction in plan, away from the post
 * @param below from the post's upper end down to where it meets the post
 * @param reach in plan, from the post's centre to its upper end
 * @param fixingResistance kN, design resistance of the fixing at either end
 */
public record Brace(
        String id,
        Optional<String> label,
        String timber,
        String post,
        Direction direction,
        Length below,
        Length reach,
        Optional<Measure> fixingResistance) {
    public String displayLabel() {
        return label.orElse("brace " + id);
    }
}
