package org.deckplanreview.submission;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;
import org.locationtech.jts.geom.prep.PreparedGeometry;

/** Stairs that leave a platform where it has no side, from one place twice, or through a wall. */
final class StairChecks {

    private final Platform platform;
    private final Pointer pointer;
    private final Optional<PreparedGeometry> outline;
    private final FaultList faults;

    /**
     * @param outline what lies along the outline of the platform; empty where its outline is at fault, and then nothing
     *     is compared with it
     */
    StairChecks(Submission submission, int platformIndex, Optional<PreparedGeometry> outline, FaultList faults) {
        this.platform = submission.platforms().get(platformIndex);
        this.pointer = Pointer.of("/platforms").child(platformIndex);
        this.outline = outline;
        this.faults = faults;
    }

    void check() {
        List<Integer> drawn = new ArrayList<>();
        for (int i = 0; i < platform.stairs().size(); i++) {
            PlanLine line = platform.stairs().get(i).line();
            Pointer at = pointer.child("stairs").child(i).child("line");
            if (Plan.hasLength(line, at, faults)) {
                onOutline(line, at);
                apartFromStairs(line, at, drawn);
                apartFromWalls(line, at);
                drawn.add(i);
            }
        }
    }

    private void onOutline(PlanLine line, Pointer at) {
        outline.filter(o -> !o.covers(Plan.lineString(line)))
                .ifPresent(o -> faults.add(
                        at,
                        "The stair does not leave the platform along its outline",
                        "a line along one side of the outline, within " + faults.length(Tolerances.OUTLINE_MM)
                                + " of it"));
    }

    private void apartFromStairs(PlanLine line, Pointer at, List<Integer> earlier) {
        for (int other : earlier) {
            double shared = Plan.sharedMm(platform.stairs().get(other).line(), line);
            if (shared > Tolerances.OUTLINE_MM) {
                faults.add(
                        at,
                        "The stair shares " + faults.length(shared) + " with "
                                + pointer.child("stairs").child(other),
                        "stairs that leave the platform beside each other");
                return;
            }
        }
    }

    private void apartFromWalls(PlanLine line, Pointer at) {
        for (int i = 0; i < platform.edges().size(); i++) {
            Edge edge = platform.edges().get(i);
            double shared = Plan.sharedMm(edge.line(), line);
            if (edge.kind() == EdgeKind.WALL && shared > Tolerances.OUTLINE_MM) {
                faults.add(
                        at,
                        "The stair shares " + faults.length(shared) + " with "
                                + pointer.child("edges").child(i) + ", which lies along a wall",
                        "a stair that leaves the platform where no wall stands");
                return;
            }
        }
    }
}
