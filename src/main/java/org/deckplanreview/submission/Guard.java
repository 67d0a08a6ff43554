package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * A guard at one or more edges.
 *
 * @param height from the boards to the top
 * @param largestOpening side of the largest opening, or its smaller side
 * @param climbable whether it gives a foothold
 * @param posts that hold it
 * @param rail timber of the top rail
 * @param infillTimber timber of balusters or rails
 * @param postsNotched whether the posts are notched where they meet the frame
 */
public record Guard(
        String id,
        Optional<String> label,
        Optional<Length> height,
        Optional<GuardInfill> infill,
        Optional<Length> largestOpening,
        Optional<Boolean> climbable,
        Optional<GuardPosts> posts,
        Optional<String> rail,
        Optional<String> infillTimber,
        Optional<Boolean> postsNotched) {

    public String displayLabel() {
        return label.orElse("guard " + id);
    }
}
