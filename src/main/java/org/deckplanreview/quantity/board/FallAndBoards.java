package org.deckplanreview.quantity.board;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.quantity.timber.TimberAndMetal;
import org.deckplanreview.submission.BoardLabel;
import org.deckplanreview.submission.BoardProfile;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Fall;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SubjectKind;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** How water leaves the deck: fall, boards, gaps. */
public final class FallAndBoards {
    private static final Formula GRADIENT = Formula.of("i = 1 / n", MeasureUnit.RATIO, "");

    private static final List<SubjectKind> SLOPED =
            List.of(SubjectKind.PLATFORMS, SubjectKind.BOARDS, SubjectKind.STAIRS);
    private static final List<SubjectKind> BOARDS = List.of(SubjectKind.BOARDS);

    /** How far from a wall a point is taken to see on which side of it the deck lies. */
    private static final double BESIDE_MM = 1;

    /** Cosine below which a fall that runs along a wall is not called a fall towards it. */
    private static final double ALONG = 1e-9;

    private FallAndBoards() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "fall gradient",
                        MeasureUnit.RATIO,
                        Subject.class,
                        SLOPED,
                        "The drop of the platform over its run, downhill; 0 for a platform stated as level.",
                        FallAndBoards::gradient),
                flag(
                        "fall away from building",
                        PlatformLayout.class,
                        List.of(SubjectKind.PLATFORMS),
                        "Whether the fall leads water away from every wall that the platform meets, or along it.",
                        FallAndBoards::awayFromBuilding),
                number(
                        "gap between boards",
                        MeasureUnit.MILLIMETRE,
                        BoardField.class,
                        BOARDS,
                        "The clear gap between boards, side by side.",
                        (boards, context) -> Observations.length(
                                boards.boards().gap(),
                                "g",
                                "the gap between boards",
                                boards.pointer().child("gap"))),
                word(
                        "board profile",
                        BoardProfile.values(),
                        BoardField.class,
                        BOARDS,
                        "The upper face of the boards.",
                        FallAndBoards::profile),
                flag(
                        "manufactured boards",
                        BoardField.class,
                        BOARDS,
                        "Whether the boards are not of sawn timber, so that their maker states what they carry.",
                        (boards, context) -> Observations.flag(!boards.isSawn(), "")),
                word(
                        "label of boards",
                        BoardLabel.values(),
                        BoardField.class,
                        BOARDS,
                        "The standard that the maker's label on manufactured boards names.",
                        FallAndBoards::labelOfBoards),
                number(
                        "angle of boards to fall",
                        MeasureUnit.DEGREE,
                        BoardField.class,
                        BOARDS,
                        "The angle in plan between the boards' length and the fall, 0 to 90 degrees.",
                        FallAndBoards::angleToFall));
    }

    private static Observation profile(BoardField boards, ReviewContext context) {
        return !boards.isSawn() && boards.boards().profile().isEmpty()
                ? Observations.notApplicable(TimberAndMetal.MANUFACTURED)
                : Observations.word(
                        boards.boards().profile(),
                        boards.pointer().child("profile"),
                        "the upper face of the boards: smooth or grooved");
    }

    private static Observation labelOfBoards(BoardField boards, ReviewContext context) {
        return boards.boards()
                .manufactured()
                .map(made -> Observations.word(
                        made.labelledTo(),
                        boards.pointer().child("manufactured").child("labelledTo"),
                        "the standard that the label of the boards names, for example ASTM-D7032"))
                .orElseGet(() -> Observations.notApplicable("the boards are of sawn timber"));
    }

    private static Observation gradient(Subject subject, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(subject);
        Optional<Fall> fall = platform.platform().fall();
        Pointer pointer = platform.pointer().child("fall");
        if (fall.isEmpty()) {
            return missingFall(platform);
        }
        if (isLevel(fall.get())) {
            return Observations.number("i", 0, MeasureUnit.RATIO, "fall gradient", "level", pointer);
        }
        Sheet working = Sheet.blank();
        double n = working.given(
                "n", fall.get().oneIn(), MeasureUnit.RATIO, "run for one of drop", "", pointer.child("gradient"));
        double i = working.calculate(GRADIENT);
        return new Observation.Found(Measure.of(i, MeasureUnit.RATIO), "1 in " + Numbers.plain(n), working.steps());
    }

    private static Observation angleToFall(BoardField boards, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(boards);
        return platform.platform().fall().filter(FallAndBoards::isLevel).isPresent()
                ? Observations.notApplicable("the platform is level")
                : Observations.derived(
                        boards.angleToFallDegrees(), "α", MeasureUnit.DEGREE, "angle between the boards and the fall");
    }

    private static Observation awayFromBuilding(PlatformLayout platform, ReviewContext context) {
        List<Direction> outwards = outwardsFromWalls(platform);
        if (outwards.isEmpty()) {
            return Observations.notApplicable("the platform meets no wall");
        }
        Optional<Fall> fall = platform.platform().fall();
        if (fall.isEmpty()) {
            return missingFall(platform);
        }
        if (isLevel(fall.get())) {
            return Observations.notApplicable("the platform is level");
        }
        if (fall.get().direction().isEmpty()) {
            return Observations.missing(
                    platform.pointer().child("fall").child("direction"),
                    "the direction in plan in which " + platform.label() + " falls");
        }
        Direction downhill = fall.get().direction().get();
        boolean away = outwards.stream().allMatch(out -> cosine(downhill, out) >= -ALONG);
        return Observations.flag(away, away ? "" : "water runs towards the wall");
    }

    private static Observation missingFall(PlatformLayout platform) {
        return Observations.missing(
                platform.pointer().child("fall"), "the fall of " + platform.label() + ", for example 1:80, or level");
    }

    private static boolean isLevel(Fall fall) {
        return Double.isInfinite(fall.oneIn());
    }

    /** One direction for each wall that the platform meets: square to it, towards the deck. */
    private static List<Direction> outwardsFromWalls(PlatformLayout platform) {
        List<Direction> all = new ArrayList<>();
        platform.ledger().ifPresent(ledger -> towardsJoists(platform, ledger).ifPresent(all::add));
        Polygon outline = polygon(platform.platform().outline());
        for (EdgeRun edge : platform.edges()) {
            if (edge.edgeKind().filter(EdgeKind.WALL::equals).isPresent()) {
                all.add(inwards(edge.line(), outline));
            }
        }
        return all;
    }

    private static Optional<Direction> towardsJoists(PlatformLayout platform, LedgerLine ledger) {
        return ledger.joists().stream().findFirst().map(bearing -> {
            Direction normal = normal(ledger.line());
            PlanPoint onJoist = middle(platform.joists().get(bearing.joist()).line());
            PlanPoint onLedger = ledger.line().from();
            Direction there = new Direction(onJoist.xMm() - onLedger.xMm(), onJoist.yMm() - onLedger.yMm());
            return dot(normal, there) >= 0 ? normal : opposite(normal);
        });
    }

    private static Direction inwards(PlanLine edge, Polygon outline) {
        Direction normal = normal(edge);
        double length = length(normal);
        PlanPoint middle = middle(edge);
        Coordinate beside = new Coordinate(
                middle.xMm() + BESIDE_MM * normal.dx() / length, middle.yMm() + BESIDE_MM * normal.dy() / length);
        return SimplePointInAreaLocator.locate(beside, outline) == Location.EXTERIOR ? opposite(normal) : normal;
    }

    private static Polygon polygon(List<PlanPoint> outline) {
        List<Coordinate> ring = new ArrayList<>();
        outline.forEach(p -> ring.add(new Coordinate(p.xMm(), p.yMm())));
        if (!ring.get(0).equals2D(ring.get(ring.size() - 1))) {
            ring.add(ring.get(0).copy());
        }
        return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static Direction normal(PlanLine line) {
        return new Direction(
                line.from().yMm() - line.to().yMm(),
                line.to().xMm() - line.from().xMm());
    }

    private static Direction opposite(Direction d) {
        return new Direction(-d.dx(), -d.dy());
    }

    private static PlanPoint middle(PlanLine line) {
        return new PlanPoint(
                (line.from().xMm() + line.to().xMm()) / 2,
                (line.from().yMm() + line.to().yMm()) / 2);
    }

    private static double cosine(Direction a, Direction b) {
        return dot(a, b) / (length(a) * length(b));
    }

    private static double dot(Direction a, Direction b) {
        return a.dx() * b.dx() + a.dy() * b.dy();
    }

    private static double length(Direction d) {
        return Math.sqrt(dot(d, d));
    }
}
