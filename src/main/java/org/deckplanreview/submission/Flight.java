package org.deckplanreview.submission;

import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;

/** A flight of steps in plan, away from its platform, with the level of its nosings. */
final class Flight {

    private final Stair stair;
    private final LineSegment head;
    private final int outwards;

    private Flight(Stair stair, LineSegment head, int outwards) {
        this.stair = stair;
        this.head = head;
        this.outwards = outwards;
    }

    /** @param platform that it leaves */
    static Flight of(Stair stair, Polygon platform) {
        LineSegment head = Plan.segment(stair.line());
        // Farther than the line may lie off the outline.
        Coordinate left = head.pointAlongOffset(0.5, Tolerances.FLIGHT_MM);
        boolean insideLeft = platform.contains(Plan.GEOMETRY.createPoint(left));
        return new Flight(stair, head, insideLeft ? -1 : 1);
    }

    /** A flight of n risers has n - 1 treads between the floor below and the boards. */
    double goingMm() {
        return (stair.risers() - 1) * stair.going().mm();
    }

    /** What its treads cover, less a margin on all sides; empty for a single step. */
    Optional<Polygon> plan(double marginMm) {
        return between(marginMm, goingMm() - marginMm, marginMm);
    }

    /** The landing at its foot, less a margin on all sides. */
    Optional<Polygon> bottomLanding(double marginMm) {
        return stair.bottomLanding()
                .flatMap(l -> between(goingMm() + marginMm, goingMm() + l.mm() - marginMm, marginMm));
    }

    /** The landing at its head, on the platform, less a margin on all sides. */
    Optional<Polygon> topLanding(double marginMm) {
        return stair.topLanding().flatMap(l -> between(-l.mm() + marginMm, -marginMm, marginMm));
    }

    private Optional<Polygon> between(double fromMm, double toMm, double inMm) {
        double length = head.getLength();
        if (toMm <= fromMm || length <= 2 * inMm) {
            return Optional.empty();
        }
        double side = inMm / length;
        return Optional.of(Plan.GEOMETRY.createPolygon(new Coordinate[] {
            head.pointAlongOffset(side, outwards * fromMm),
            head.pointAlongOffset(1 - side, outwards * fromMm),
            head.pointAlongOffset(1 - side, outwards * toMm),
            head.pointAlongOffset(side, outwards * toMm),
            head.pointAlongOffset(side, outwards * fromMm)
        }));
    }

    /** How far its nosings lie below the boards at that part of it that lies nearest to its head, mm. */
    double leastBelowBoardsMm(Geometry part) {
        return belowBoardsMm(distances(part).min().orElse(0));
    }

    /** Likewise at that part of it that lies nearest to its foot. */
    double mostBelowBoardsMm(Geometry part) {
        return belowBoardsMm(distances(part).max().orElse(0));
    }

    private DoubleStream distances(Geometry part) {
        return Stream.of(part.getCoordinates()).mapToDouble(head::distancePerpendicular);
    }

    private double belowBoardsMm(double fromHeadMm) {
        return stair.rise().mm() * fromHeadMm / stair.going().mm();
    }

    /** How far its foot lies below the boards, mm. */
    double footBelowBoardsMm() {
        return stair.risers() * stair.rise().mm();
    }
}
