package org.deckplanreview.submission;

import java.util.List;
import org.deckplanreview.kernel.Pointer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;

/** The submission's points and lines as geometry in mm. */
final class Plan {

    static final GeometryFactory GEOMETRY = new GeometryFactory();

    private Plan() {}

    static Coordinate coordinate(PlanPoint point) {
        return new Coordinate(point.xMm(), point.yMm());
    }

    static Coordinate[] coordinates(List<PlanPoint> points) {
        return points.stream().map(Plan::coordinate).toArray(Coordinate[]::new);
    }

    static LineSegment segment(PlanLine line) {
        return new LineSegment(coordinate(line.from()), coordinate(line.to()));
    }

    static LineString lineString(PlanLine line) {
        return segment(line).toGeometry(GEOMETRY);
    }

    /** The points as a ring, closed by the first. */
    static LinearRing ring(List<PlanPoint> points) {
        Coordinate[] closed = new Coordinate[points.size() + 1];
        System.arraycopy(coordinates(points), 0, closed, 0, points.size());
        closed[points.size()] = coordinate(points.get(0));
        return GEOMETRY.createLinearRing(closed);
    }

    /** Whether a line has a length; a fault if not. */
    static boolean hasLength(PlanLine line, Pointer at, FaultList faults) {
        boolean drawn = segment(line).getLength() >= Tolerances.SAME_PLACE_MM;
        if (!drawn) {
            faults.add(at, "The line has no length", "a line between two different points");
        }
        return drawn;
    }

    /** Length in mm that two lines along one straight have in common; 0 where they do not lie along one straight. */
    static double sharedMm(PlanLine first, PlanLine second) {
        LineSegment one = segment(first);
        LineSegment other = segment(second);
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
