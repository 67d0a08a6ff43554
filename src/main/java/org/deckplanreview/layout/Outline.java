package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** A simple polygon in plan, as its corners in order without repeating the first. */
record Outline(List<PlanPoint> corners) {

    /** A corner that deviates less than this from a straight line is none. */
    private static final double STRAIGHT_MM = 1e-6;

    double areaMm2() {
        return polygon().getArea();
    }

    PlanPoint middle() {
        Coordinate middle = polygon().getCentroid().getCoordinate();
        return new PlanPoint(middle.x, middle.y);
    }

    boolean contains(PlanPoint p) {
        return SimplePointInAreaLocator.locatePointInPolygon(new Coordinate(p.xMm(), p.yMm()), polygon())
                != Location.EXTERIOR;
    }

    Polygon polygon() {
        return polygon(
                corners.stream().map(p -> new Coordinate(p.xMm(), p.yMm())).toList());
    }

    /** Corners as points along and across the axis. */
    List<Coordinate> along(Axis axis) {
        return corners.stream()
                .map(p -> new Coordinate(axis.along(p), axis.across(p)))
                .toList();
    }

    static Polygon polygon(List<Coordinate> corners) {
        List<Coordinate> ring = new ArrayList<>(corners);
        ring.add(ring.get(0).copy());
        return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
    }

    /** The straight sides in the outline's order; a corner that does not turn ends no side. */
    List<PlanLine> sides() {
        List<PlanPoint> turning = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            PlanPoint before = corners.get((i + corners.size() - 1) % corners.size());
            PlanPoint after = corners.get((i + 1) % corners.size());
            PlanLine chord = new PlanLine(before, after);
            Axis axis = Axis.of(chord);
            if (!(Math.abs(axis.across(corners.get(i)) - axis.across(before)) <= STRAIGHT_MM)) {
                turning.add(corners.get(i));
            }
        }
        List<PlanLine> sides = new ArrayList<>();
        for (int i = 0; i < turning.size(); i++) {
            sides.add(new PlanLine(turning.get(i), turning.get((i + 1) % turning.size())));
        }
        return sides;
    }
}
