package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** A platform's outline as an area in plan. */
final class PlanArea {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double ASIDE_MM = 5;

    private final Polygon polygon;

    PlanArea(List<PlanPoint> outline) {
        List<Coordinate> ring = new ArrayList<>(
                outline.stream().map(p -> new Coordinate(p.xMm(), p.yMm())).toList());
        ring.add(ring.get(0).copy());
        polygon = FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    boolean contains(PlanPoint p) {
        return SimplePointInAreaLocator.locatePointInPolygon(new Coordinate(p.xMm(), p.yMm()), polygon)
                != Location.EXTERIOR;
    }

    /** A place well inside. */
    PlanPoint middle() {
        Coordinate c = polygon.getInteriorPoint().getCoordinate();
        return new PlanPoint(c.x, c.y);
    }

    /** The unit direction square to a side, away from the area. */
    PlanPoint outwards(PlanLine side) {
        double dx = side.to().xMm() - side.from().xMm();
        double dy = side.to().yMm() - side.from().yMm();
        double length = Math.sqrt(dx * dx + dy * dy);
        PlanPoint normal = new PlanPoint(dy / length, -dx / length);
        PlanPoint beside = new PlanPoint(
                (side.from().xMm() + side.to().xMm()) / 2 + normal.xMm() * ASIDE_MM,
                (side.from().yMm() + side.to().yMm()) / 2 + normal.yMm() * ASIDE_MM);
        return contains(beside) ? new PlanPoint(-normal.xMm(), -normal.yMm()) : normal;
    }

    /** The longest stretch of a line that lies inside, in the line's sense; the first of those that are as long. */
    Optional<PlanLine> longestInside(PlanLine line) {
        Geometry inside = polygon.intersection(FACTORY.createLineString(new Coordinate[] {
            new Coordinate(line.from().xMm(), line.from().yMm()),
            new Coordinate(line.to().xMm(), line.to().yMm())
        }));
        List<LineString> parts = new ArrayList<>();
        for (int i = 0; i < inside.getNumGeometries(); i++) {
            if (inside.getGeometryN(i) instanceof LineString s && s.getLength() > 0) {
                parts.add(s);
            }
        }
        Coordinate start = new Coordinate(line.from().xMm(), line.from().yMm());
        return parts.stream()
                .sorted(Comparator.comparingDouble(s -> s.getCoordinateN(0).distance(start)))
                .max(Comparator.comparingDouble(LineString::getLength))
                .map(s -> {
                    Coordinate a = s.getCoordinateN(0);
                    Coordinate b = s.getCoordinateN(s.getNumPoints() - 1);
                    boolean turned = a.distance(start) > b.distance(start);
                    PlanPoint p = new PlanPoint(a.x, a.y);
                    PlanPoint q = new PlanPoint(b.x, b.y);
                    return turned ? new PlanLine(q, p) : new PlanLine(p, q);
                });
    }
}
