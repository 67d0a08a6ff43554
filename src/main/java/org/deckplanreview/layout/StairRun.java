package org.deckplanreview.layout;

import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.SubjectKind;

/**
 * A stair with what follows from the levels.
 *
 * @param climbMm from the level on which the lowest riser stands to the boards' upper face at the stair's middle
 * @param footOffGroundMm how far that level lies above or below what is there, the ground or the boards of another platform
 * @param pitchDegrees of the line through the nosings
 * @param goingMm total, of all treads
 */
public record StairRun(
        int platformIndex,
        Pointer pointer,
        String label,
        Stair stair,
        double widthMm,
        Derived<Double> climbMm,
        Derived<Double> footOffGroundMm,
        double pitchDegrees,
        double goingMm,
        Optional<Guard> guard)
        implements Subject {
    @Override
    public SubjectKind kind() {
        return SubjectKind.STAIRS;
    }

    @Override
    public String alikeKey() {
        return "" + platformIndex;
    }
}
