package org.deckplanreview.layout;

import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Boards;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/**
 * The boards of a platform, spanning from joist to joist.
 *
 * @param spanMm largest distance between centre lines of neighbouring joists, measured along the boards
 * @param overhangMm largest length of board beyond the last joist, measured along the boards
 * @param angleToFallDegrees between the boards and the fall, 0 to 90; missing without a fall
 * @param groundClearanceMm between the boards' underside and the ground
 */
public record BoardField(
        int platformIndex,
        Pointer pointer,
        String label,
        Boards boards,
        Timber timber,
        Derived<Double> spanMm,
        Derived<Double> overhangMm,
        Derived<Double> angleToFallDegrees,
        Derived<Double> groundClearanceMm)
        implements TimberPiece {
    /** The angle in plan between the boards and another direction, both taken without sense: 0 to 90 degrees. */
    public double degreesTo(Direction other) {
        return Axis.of(boards.direction()).degreesTo(Axis.of(other));
    }

    @Override
    public SubjectKind kind() {
        return SubjectKind.BOARDS;
    }

    @Override
    public boolean isSawn() {
        return boards().manufactured().isEmpty();
    }

    @Override
    public String alikeKey() {
        return "" + platformIndex;
    }
}
