package org.deckplanreview.layout;

import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.SubjectKind;

/**
 * A stretch of the outline with one kind of neighbour. Stretches that the submission does not describe are runs of their own.
 *
 * @param pointer of the edge; of the stair where one leaves; of the platform's edges where it is not described
 * @param edgeKind empty where the submission does not describe the stretch
 * @param drop from the boards' upper face to the ground beside it; along another platform to the upper face of that
 *     platform's boards, 0 where they lie as high or higher; along a wall as if the wall were not there
 */
public record EdgeRun(
        int platformIndex,
        Pointer pointer,
        String label,
        PlanLine line,
        Optional<EdgeKind> edgeKind,
        Optional<Guard> guard,
        Optional<Pointer> guardPointer,
        Derived<Drop> drop)
        implements Subject {
    public double lengthMm() {
        return Axis.length(line);
    }

    @Override
    public SubjectKind kind() {
        return SubjectKind.EDGES;
    }

    @Override
    public String alikeKey() {
        return platformIndex + " " + edgeKind + " " + guard.map(Guard::id);
    }
}
