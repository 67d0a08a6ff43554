package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * A stair from an edge of the platform to the ground.
 *
 * @param line where it leaves the outline; its length is the stair's width
 * @param rise of each riser
 * @param largestRiseDifference between any two risers
 * @param footLevel level on which the lowest riser stands; from the survey if left out
 * @param riserOpening smaller side of the opening between treads
 * @param topLanding length in the direction of travel
 * @param bottomLanding likewise
 * @param guard id of the guard beside the flight
 * @param guardTriangle smaller side of the largest triangle between riser, tread and the bottom rail of that guard
 * @param guardedSides sides of the flight that have a guard or a wall
 * @param guardEdge height of the lowest edge of that guard above the pitch line, parallel to it
 * @param nosing of the treads beyond the riser below
 * @param contrastingNosings whether the nosings can be told from their treads at a glance
 * @param slipResistantTreads whether the treads have a finish or inserts that grip when wet
 */
public record Stair(
        String id,
        Optional<String> label,
        PlanLine line,
        int risers,
        Length rise,
        Length going,
        Optional<Length> largestRiseDifference,
        Optional<Length> footLevel,
        Optional<Boolean> openRisers,
        Optional<Length> treadOverlap,
        Optional<Length> riserOpening,
        Optional<Handrails> handrails,
        Optional<Length> topLanding,
        Optional<Length> bottomLanding,
        Optional<Length> headroom,
        Optional<Strings> strings,
        Optional<String> treadTimber,
        Optional<String> guard,
        Optional<Length> guardTriangle,
        Optional<Length> guardEdge,
        Optional<StairSides> guardedSides,
        Optional<Length> nosing,
        Optional<Boolean> contrastingNosings,
        Optional<Boolean> slipResistantTreads) {
    public String displayLabel() {
        return label.orElse("stair " + id);
    }
}
