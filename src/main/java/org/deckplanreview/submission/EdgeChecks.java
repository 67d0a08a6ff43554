package org.deckplanreview.submission;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Edges that leave the outline, or describe a stretch of it twice. */
final class EdgeChecks {

    private final List<Edge> edges;
    private final Pointer pointer;
    private final Optional<PreparedGeometry> alongOutline;
    private final FaultList faults;

    /**
     * @param area of the platform; empty where its outline is at fault, and then nothing is compared with it
     */
    EdgeChecks(Submission submission, int platformIndex, Optional<Polygon> area, FaultList faults) {
        this.edges = submission.platforms().get(platformIndex).edges();
        this.pointer = Pointer.of("/platforms").child(platformIndex).child("edges");
        this.alongOutline =
                area.map(a -> PreparedGeometryFactory.prepare(a.getBoundary().buffer(Tolerances.OUTLINE_MM)));
        this.faults = faults;
    }

    void check() {
        List<Integer> drawn = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            PlanLine line = edges.get(i).line();
            Pointer at = pointer.child(i).child("line");
            if (Plan.hasLength(line, at, faults)) {
                onOutline(line, at);
                notDescribedTwice(i, drawn);
                drawn.add(i);
            }
        }
    }

    private void onOutline(PlanLine line, Pointer at) {
        alongOutline
                .filter(o -> !o.covers(Plan.lineString(line)))
                .ifPresent(o -> faults.add(
                        at,
                        "The edge does not lie along the outline",
                        "a line along one side of the outline, within " + faults.length(Tolerances.OUTLINE_MM)
                                + " of it"));
    }

    private void notDescribedTwice(int index, List<Integer> earlier) {
        LineSegment line = Plan.segment(edges.get(index).line());
        for (int other : earlier) {
            double shared = shared(Plan.segment(edges.get(other).line()), line);
            if (shared > Tolerances.OUTLINE_MM) {
                faults.add(
                        pointer.child(index).child("line"),
                        "The edge shares " + faults.length(shared) + " with " + pointer.child(other),
                        "edges that describe each stretch of the outline once");
                return;
            }
        }
    }

    /** Length in mm that two lines along one straight have in common; 0 where they do not lie along one straight. */
    private static double shared(LineSegment one, LineSegment other) {
        boolean oneIsLonger = one.getLength() >= other.getLength();
        LineSegment longer = oneIsLonger ? one : other;
        LineSegment shorter = oneIsLonger ? other : one;
        if (longer.distancePerpendicular(shorter.p0) > Tolerances.OUTLINE_MM
                || longer.distancePerpendicular(shorter.p1) > Tolerances.OUTLINE_MM) {
            return 0;
        }
        double length = longer.getLength();
        double from = longer.projectionFactor(shorter.p0) * length;
        double to = longer.projectionFactor(shorter.p1) * length;
        return Math.min(length, Math.max(from, to)) - Math.max(0, Math.min(from, to));
    }
}
