package org.deckplanreview.submission;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;

/**
 * The pieces of a deck as bodies: their shapes in plan, and their levels as far as the submission has what these follow
 * from. Levels leave out the fall, which {@link Tolerances#FALL_MM} allows for.
 */
final class Pieces {

    private final Submission submission;

    Pieces(Submission submission) {
        this.submission = submission;
    }

    Platform platform(int index) {
        return submission.platforms().get(index);
    }

    Optional<Timber> timber(String id) {
        return submission.timbers().stream().filter(t -> t.id().equals(id)).findFirst();
    }

    /** Half the smaller side of a post, mm: whichever way it is turned, so much of it lies to every side of its centre. */
    double halfSideMm(Post post) {
        return timber(post.timber())
                .map(t -> Math.min(t.breadth().mm(), t.depth().mm()) / 2)
                .orElse(0.0);
    }

    /** Half the smaller side of a footing, mm. */
    static double halfSideMm(Footing footing) {
        return footing.length()
                        .map(l -> Math.min(l.mm(), footing.breadth().mm()))
                        .orElse(footing.breadth().mm())
                / 2;
    }

    /** Width in plan of all plies of a beam with the posts between them, mm. */
    double widthMm(Beam beam, Platform platform) {
        double plies =
                timber(beam.timber()).map(t -> beam.plies() * t.breadth().mm()).orElse(0.0);
        double between = beam.seating() != BeamSeating.BOTH_SIDES
                ? 0
                : platform.posts().stream()
                        .filter(p -> beam.posts().contains(p.id()))
                        .flatMap(p -> timber(p.timber()).stream())
                        .mapToDouble(t -> t.depth().mm())
                        .max()
                        .orElse(0);
        return plies + between;
    }

    /**
     * A strip along a line.
     *
     * @param offMm how far its sides lie from the line, to either side
     * @param shortenedMm at either end
     * @return empty where nothing is left
     */
    static Optional<Polygon> strip(PlanLine line, double offMm, double shortenedMm) {
        LineSegment s = Plan.segment(line);
        double length = s.getLength();
        if (length <= 2 * shortenedMm || offMm <= 0) {
            return Optional.empty();
        }
        double from = shortenedMm / length;
        return Optional.of(Plan.GEOMETRY.createPolygon(new Coordinate[] {
            s.pointAlongOffset(from, offMm),
            s.pointAlongOffset(1 - from, offMm),
            s.pointAlongOffset(1 - from, -offMm),
            s.pointAlongOffset(from, -offMm),
            s.pointAlongOffset(from, offMm)
        }));
    }

    Optional<Double> levelMm(Platform platform) {
        return platform.level().map(l -> l.z().mm());
    }

    /** How far the beam's upper face lies below the boards' upper face, mm. */
    Optional<Double> topBelowBoardsMm(Beam beam, Platform platform) {
        Optional<Double> boards = platform.boards()
                .flatMap(b -> timber(b.timber()))
                .map(t -> t.depth().mm());
        Optional<Double> joists = beam.joists() == JoistSeating.HANGERS
                ? Optional.of(0.0)
                : platform.joists()
                        .flatMap(j -> timber(j.timber()))
                        .map(t -> t.depth().mm());
        return boards.flatMap(b -> joists.map(j -> b + j));
    }

    /** How far the beam's underside lies below the boards' upper face, mm. */
    Optional<Double> undersideBelowBoardsMm(Beam beam, Platform platform) {
        return topBelowBoardsMm(beam, platform)
                .flatMap(top -> timber(beam.timber()).map(t -> top + t.depth().mm()));
    }

    /** How far the upper end of a post lies below the boards' upper face, mm; empty where it carries no beam. */
    Optional<Double> topBelowBoardsMm(Post post, Platform platform) {
        return platform.beams().stream()
                .filter(b -> b.posts().contains(post.id()))
                .map(b -> b.seating() == BeamSeating.ON_POST
                        ? undersideBelowBoardsMm(b, platform)
                        : topBelowBoardsMm(b, platform))
                .reduce((one, other) -> one.flatMap(o -> other.map(p -> Math.max(o, p))))
                .flatMap(o -> o);
    }
}
