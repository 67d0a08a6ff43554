package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * A footing under a post, or a block at the ground on which joists lie without beam or post.
 *
 * @param breadth side, or diameter of a round one
 * @param length the other side of a rectangular one; without it the footing is square
 * @param depth from the ground to its underside
 * @param thickness of the concrete under and around the post
 * @param embedment of the post below the ground
 * @param frostProtected whether it is built as a frost-protected shallow foundation or stands on solid rock
 * @param at its centre in plan; under its post if left out; every block has it
 */
public record Footing(
        String id,
        Optional<String> label,
        FootingKind kind,
        FootingShape shape,
        Length breadth,
        Optional<Length> length,
        Optional<Length> depth,
        Optional<Length> thickness,
        Optional<Length> embedment,
        Optional<Length> topAboveGround,
        Optional<Boolean> topShedsWater,
        Optional<Boolean> frostProtected,
        Optional<PlanPoint> at) {

    public String displayLabel() {
        return label.orElse("footing " + id);
    }
}
