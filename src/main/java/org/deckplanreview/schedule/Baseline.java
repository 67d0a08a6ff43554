package org.deckplanreview.schedule;

import java.util.List;
import org.deckplanreview.submission.PlanPoint;

/**
 * Where setting out counts from: a corner of the outline, the edge that leaves it, and the side of that edge on which the
 * platform lies.
 *
 * @param side 1 where the platform lies to the left of the edge, else -1
 */
record Baseline(PlanPoint datum, double dx, double dy, double side) {

    static Baseline of(List<PlanPoint> outline) {
        PlanPoint from = outline.get(0);
        PlanPoint to = outline.get(1);
        double length = distance(from, to);
        return new Baseline(
                from, (to.xMm() - from.xMm()) / length, (to.yMm() - from.yMm()) / length, turnsLeft(outline) ? 1 : -1);
    }

    double alongMm(PlanPoint p) {
        return (p.xMm() - datum.xMm()) * dx + (p.yMm() - datum.yMm()) * dy;
    }

    double offsetMm(PlanPoint p) {
        return side * ((p.yMm() - datum.yMm()) * dx - (p.xMm() - datum.xMm()) * dy);
    }

    static double distance(PlanPoint a, PlanPoint b) {
        return StrictMath.hypot(b.xMm() - a.xMm(), b.yMm() - a.yMm());
    }

    private static boolean turnsLeft(List<PlanPoint> outline) {
        double twiceArea = 0;
        for (int i = 0; i < outline.size(); i++) {
            PlanPoint a = outline.get(i);
            PlanPoint b = outline.get((i + 1) % outline.size());
            twiceArea += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        return twiceArea >= 0;
    }
}
