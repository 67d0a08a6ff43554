package org.deckplanreview.submission;

import java.util.Optional;

/**
 * A post.
 */
public record Post(
        String id,
        Optional<String> label,
        String timber,
        PlanPoint at,
        Optional<String> footing,
        Optional<PostEnd> groundEnd,
        Optional<PostTop> top,
        Optional<PostBase> base) {

    public String displayLabel() {
        return label.orElse("post " + id);
    }
}
