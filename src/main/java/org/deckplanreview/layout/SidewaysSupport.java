package org.deckplanreview.layout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.PlanPoint;

/** What keeps a platform from moving sideways. */
public record SidewaysSupport(PlatformLayout platform) {

    /** A brace holds the direction to which it lies nearest of two square to each other. */
    private static final double NEAREST_DEGREES = 45;

    /** Whether a ledger ties the platform to a building. */
    public boolean isTiedToBuilding() {
        return platform.ledger().isPresent();
    }

    /** The platform's braces that lie at most 45 degrees in plan from a direction, taken without sense. */
    public List<BraceLine> braces(Direction direction) {
        Axis axis = Axis.of(direction);
        return platform.braces().stream()
                .filter(b -> axis.degreesTo(Axis.of(b.brace().direction())) <= NEAREST_DEGREES)
                .toList();
    }

    /** Those of {@link #braces(Direction)} on one post. */
    public List<BraceLine> braces(Direction direction, PostPlace post) {
        return braces(direction).stream()
                .filter(b -> b.brace().post().equals(post.id()))
                .toList();
    }

    /** Cosine of the angle in plan between a brace and a direction, taken without sense. */
    public static double cosine(BraceLine brace, Direction direction) {
        double sine = Axis.of(brace.brace().direction()).sineTo(Axis.of(direction));
        return Math.sqrt(1 - sine * sine);
    }

    /** Along the first beam that the post carries; empty for a post without a beam. */
    public Optional<Direction> alongBeam(PostPlace post) {
        return platform.beams().stream()
                .filter(b -> post.beams().contains(b.id()))
                .findFirst()
                .map(SidewaysSupport::along);
    }

    /** Along the platform's first beam; empty without beams. */
    public Optional<Direction> alongFirstBeam() {
        return platform.beams().stream().findFirst().map(SidewaysSupport::along);
    }

    private static Direction along(BeamLine beam) {
        Axis axis = Axis.of(beam.line());
        return new Direction(axis.dx(), axis.dy());
    }

    /** Square to a direction. */
    public static Direction across(Direction direction) {
        return new Direction(-direction.dy(), direction.dx());
    }

    /** How far the platform reaches from its ledger, over the ledger's length; empty without a ledger. */
    public OptionalDouble reachOverLedger() {
        return platform.ledger()
                .map(ledger -> {
                    Axis axis = Axis.of(ledger.line());
                    double at = axis.across(ledger.line().from());
                    double reach = platform.platform().outline().stream()
                            .mapToDouble(p -> Math.abs(axis.across(p) - at))
                            .max()
                            .orElse(0);
                    return OptionalDouble.of(reach / ledger.lengthMm());
                })
                .orElse(OptionalDouble.empty());
    }

    /** Width of the platform as seen along a direction, mm. */
    public double widthMm(Direction seenAlong) {
        return extentMm(platform.platform().outline(), seenAlong);
    }

    /** Width of an edge as seen along a direction, mm. */
    public static double widthMm(EdgeRun edge, Direction seenAlong) {
        return extentMm(List.of(edge.line().from(), edge.line().to()), seenAlong);
    }

    private static double extentMm(List<PlanPoint> points, Direction seenAlong) {
        Axis axis = Axis.of(seenAlong);
        double least = across(points, axis).min().orElse(0);
        double largest = across(points, axis).max().orElse(0);
        return largest - least;
    }

    private static DoubleStream across(List<PlanPoint> points, Axis axis) {
        return points.stream().mapToDouble(axis::across);
    }
}
