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
 * @param postNotchDepth of the notch of its posts where they meet the frame
 * @param standingSurface height above the boards of what one can stand on beside it, such as a bench; 0 for nothing
 * @param blocked whether blocking holds the frame at its posts against twisting
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
        Optional<Boolean> postsNotched,
        Optional<Length> postNotchDepth,
        Optional<Length> standingSurface,
        Optional<Boolean> blocked) {

    public String displayLabel() {
        return label.orElse("guard " + id);
    }
}
