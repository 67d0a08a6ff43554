package org.deckplanreview.layout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.PlanPoint;

/** What keeps a platform from moving sideways. */
public record SidewaysSupport(PlatformLayout platform) {

    /** A brace holds the direction to which it lies nearest of two square to each other. */
    private static final double NEAREST_DEGREES = 45;

    /** Braces closer together than this, across their direction, stand in one line. */
    private static final double SAME_LINE_MM = 1;

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

    /**
     * One thing that holds the platform in a direction.
     *
     * @param acrossMm its place, measured across the direction
     * @param stiffness beside others of its kind
     */
    private record Holder(double acrossMm, double stiffness) {}

    /**
     * How evenly the platform is held in one direction: all measured across it.
     *
     * @param middleMm of what holds it
     * @param loadOffMm from that middle to the middle of the platform, with its sign
     * @param squareMm2 mean square of the distances from that middle; 0 for one line alone
     * @param apartMm between the outermost lines
     */
    public record Evenness(double middleMm, double loadOffMm, double squareMm2, double apartMm) {}

    /** Of the braces in a direction or, without any, of the embedded posts; empty where there are neither. */
    public Optional<Evenness> evenness(Direction direction) {
        List<Holder> holders = holders(direction);
        if (holders.isEmpty()) {
            return Optional.empty();
        }
        double stiffness = holders.stream().mapToDouble(Holder::stiffness).sum();
        double middle =
                holders.stream().mapToDouble(h -> h.stiffness() * h.acrossMm()).sum() / stiffness;
        double square = holders.stream()
                        .mapToDouble(h -> h.stiffness() * (h.acrossMm() - middle) * (h.acrossMm() - middle))
                        .sum()
                / stiffness;
        double least = holders.stream().mapToDouble(Holder::acrossMm).min().orElseThrow();
        double largest = holders.stream().mapToDouble(Holder::acrossMm).max().orElseThrow();
        double load = acrossMm(direction, new Outline(platform.platform().outline()).middle());
        boolean oneLine = largest - least < SAME_LINE_MM;
        return Optional.of(new Evenness(middle, load - middle, oneLine ? 0 : square, oneLine ? 0 : largest - least));
    }

    private List<Holder> holders(Direction direction) {
        List<BraceLine> braces = braces(direction);
        if (braces.isEmpty()) {
            return platform.posts().stream()
                    .filter(SidewaysSupport::isEmbedded)
                    .map(p -> new Holder(acrossMm(direction, p.post().at()), 1))
                    .toList();
        }
        return platform.posts().stream()
                .flatMap(p -> braces.stream()
                        .filter(b -> b.brace().post().equals(p.id()))
                        .map(b -> new Holder(acrossMm(direction, p.post().at()), cosine(b, direction))))
                .toList();
    }

    private static boolean isEmbedded(PostPlace post) {
        return post.footing()
                .filter(f -> f.footing().kind() == FootingKind.EMBEDDED_POST)
                .isPresent();
    }

    /** Where a point lies across a direction, mm. */
    public static double acrossMm(Direction direction, PlanPoint at) {
        return Axis.of(direction).across(at);
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
