package org.deckplanreview.rendering.drawing;

import java.util.List;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/**
 * From plan coordinates, y upwards, to the sheet.
 *
 * @param origin where the point (xMm, yMm) of the plan lies on the sheet
 */
record PlanView(Vec origin, double xMm, double yMm, Scale scale) {

    Vec at(PlanPoint p) {
        return origin.plus(new Vec(scale.onSheet(p.xMm() - xMm), scale.onSheet(yMm - p.yMm())));
    }

    List<Vec> at(List<PlanPoint> points) {
        return points.stream().map(this::at).toList();
    }

    /** A direction in plan as the sheet shows it. */
    static Vec direction(double dx, double dy) {
        return new Vec(dx, -dy).unit();
    }

    /** The corners of a member of that breadth along a line. */
    List<Vec> strip(PlanLine line, double breadthMm) {
        return strip(at(line.from()), at(line.to()), scale.onSheet(breadthMm));
    }

    static List<Vec> strip(Vec a, Vec b, double breadth) {
        Vec aside = b.minus(a).unit().left().times(breadth / 2);
        return List.of(a.plus(aside), b.plus(aside), b.minus(aside), a.minus(aside));
    }

    /** A rectangle around a place. */
    List<Vec> rectangle(PlanPoint centre, Axes along, double lengthMm, double breadthMm) {
        Vec d = direction(along.dx(), along.dy()).times(scale.onSheet(lengthMm) / 2);
        return strip(at(centre).minus(d), at(centre).plus(d), scale.onSheet(breadthMm));
    }
}
