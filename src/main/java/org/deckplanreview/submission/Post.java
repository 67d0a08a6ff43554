package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Measure;

/**
 * A post.
 *
 * @param holdDownResistance kN, design resistance of its base against uplift
 */
public record Post(
        String id,
        Optional<String> label,
        String timber,
        PlanPoint at,
        Optional<String> footing,
        Optional<PostEnd> groundEnd,
        Optional<PostTop> top,
        Optional<PostBase> base,
        Optional<Measure> holdDownResistance) {

    public String displayLabel() {
        return label.orElse("post " + id);
    }
}
