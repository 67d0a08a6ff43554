package org.deckplanreview.submission;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.prep.PreparedGeometry;

/** Edges that leave the outline, describe a stretch of it twice, or have not beside them what they say. */
final class EdgeChecks {

    private final Submission submission;
    private final int platformIndex;
    private final List<Edge> edges;
    private final Pointer pointer;
    private final Map<Integer, PreparedGeometry> outlines;
    private final FaultList faults;

    /**
     * @param outlines what lies along the outline of each platform, by index; a platform whose outline is at fault has
     *     none, and then nothing is compared with it
     */
    EdgeChecks(Submission submission, int platformIndex, Map<Integer, PreparedGeometry> outlines, FaultList faults) {
        this.submission = submission;
        this.platformIndex = platformIndex;
        this.edges = submission.platforms().get(platformIndex).edges();
        this.pointer = Pointer.of("/platforms").child(platformIndex).child("edges");
        this.outlines = outlines;
        this.faults = faults;
    }

    void check() {
        List<Integer> drawn = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            PlanLine line = edges.get(i).line();
            Pointer at = pointer.child(i).child("line");
            if (Plan.hasLength(line, at, faults)) {
                if (onOutline(line, at)) {
                    beside(edges.get(i), pointer.child(i).child("kind"));
                }
                notDescribedTwice(i, drawn);
                drawn.add(i);
            }
        }
    }

    private boolean onOutline(PlanLine line, Pointer at) {
        boolean off = outlines.containsKey(platformIndex) && !liesAlong(platformIndex, line);
        if (off) {
            faults.add(
                    at,
                    "The edge does not lie along the outline",
                    "a line along one side of the outline, within " + faults.length(Tolerances.OUTLINE_MM) + " of it");
        }
        return !off;
    }

    private boolean liesAlong(int platform, PlanLine line) {
        return outlines.get(platform).covers(Plan.lineString(line));
    }

    private void beside(Edge edge, Pointer at) {
        switch (edge.kind()) {
            case OPEN -> {}
            case WALL -> besideWall(edge.line(), at);
            case PLATFORM -> besidePlatform(edge.line(), at);
        }
    }

    private void besideWall(PlanLine line, Pointer at) {
        Optional<Wall> nearest =
                submission.site().walls().stream().min(Comparator.comparingDouble(w -> farthest(line, w)));
        if (nearest.isEmpty()) {
            faults.add(
                    at,
                    "The edge is said to lie along a wall, and the site has none",
                    "'wall' along a wall that is given in /site/walls, or 'open'");
            return;
        }
        double off = farthest(line, nearest.get());
        if (off > Tolerances.LEDGER_MM) {
            faults.add(
                    at,
                    "An end of the edge lies " + faults.length(off) + " from the nearest wall, "
                            + Found.quoted(nearest.get().id()),
                    "'wall' along one wall of /site/walls, with both ends within " + faults.length(Tolerances.LEDGER_MM)
                            + " of it, or 'open'");
        }
    }

    /** How far the edge's farther end lies from a wall, in mm; nothing between its ends lies farther. */
    private static double farthest(PlanLine edge, Wall wall) {
        LineSegment line = Plan.segment(edge);
        LineSegment face = Plan.segment(wall.line());
        return Math.max(face.distance(line.p0), face.distance(line.p1));
    }

    private void besidePlatform(PlanLine line, Pointer at) {
        boolean allKnown = outlines.size() == submission.platforms().size();
        if (allKnown && outlines.keySet().stream().noneMatch(p -> p != platformIndex && liesAlong(p, line))) {
            faults.add(
                    at,
                    "The edge is said to lie along another platform, and does not on its whole length",
                    "'platform' along the outline of one other platform, within " + faults.length(Tolerances.OUTLINE_MM)
                            + " of it, or 'open'");
        }
    }

    private void notDescribedTwice(int index, List<Integer> earlier) {
        for (int other : earlier) {
            double shared =
                    Plan.sharedMm(edges.get(other).line(), edges.get(index).line());
            if (shared > Tolerances.OUTLINE_MM) {
                faults.add(
                        pointer.child(index).child("line"),
                        "The edge shares " + faults.length(shared) + " with " + pointer.child(other),
                        "edges that describe each stretch of the outline once");
                return;
            }
        }
    }
}
