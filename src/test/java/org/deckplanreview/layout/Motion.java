package org.deckplanreview.layout;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.Boards;
import org.deckplanreview.submission.Brace;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.Edge;
import org.deckplanreview.submission.Fall;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.GroundLevel;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.Level;
import org.deckplanreview.submission.MeasuredLevel;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.SiteMeasurements;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Use;
import org.deckplanreview.submission.Wall;

/**
 * Moves a whole submission in plan: x, y to (a x - f b y + dx, b x + f a y + dy), f = -1 for a mirror image. A mirror image
 * reverses the direction of the joists too, so that they are laid out from the same side of the deck.
 */
public record Motion(double a, double b, boolean mirrored, double dx, double dy) {

    public static Motion turn(double degrees, double dx, double dy) {
        double angle = StrictMath.toRadians(degrees);
        return new Motion(StrictMath.cos(angle), StrictMath.sin(angle), false, dx, dy);
    }

    public static Motion quarterTurn() {
        return new Motion(0, 1, false, 0, 0);
    }

    public static Motion mirror() {
        return new Motion(1, 0, true, 0, 0);
    }

    private Direction apply(Direction d) {
        double y = mirrored ? -d.dy() : d.dy();
        return new Direction(a * d.dx() - b * y, b * d.dx() + a * y);
    }

    public PlanPoint apply(PlanPoint p) {
        Direction moved = apply(new Direction(p.xMm(), p.yMm()));
        return new PlanPoint(moved.dx() + dx, moved.dy() + dy);
    }

    private PlanLine apply(PlanLine line) {
        return new PlanLine(apply(line.from()), apply(line.to()));
    }

    private List<PlanPoint> apply(List<PlanPoint> points) {
        return points.stream().map(this::apply).toList();
    }

    private JoistField apply(JoistField f) {
        Direction moved = apply(f.direction());
        Direction laidOut = mirrored ? new Direction(-moved.dx(), -moved.dy()) : moved;
        return new JoistField(
                f.timber(),
                laidOut,
                f.spacing(),
                f.endNotch(),
                f.hangerResistance(),
                f.holdDownResistance(),
                f.blocked());
    }

    public Submission apply(Submission s) {
        Use use = new Use(
                s.use().occupancy(),
                s.use().imposedLoad(),
                s.use().concentratedLoad(),
                s.use().youngChildren(),
                s.use().heavyItems().stream()
                        .map(i ->
                                new HeavyItem(i.id(), i.label(), apply(i.outline()), i.weight(), i.nature(), i.kind()))
                        .toList(),
                s.use().roofOver());
        Site site = new Site(
                s.site().groundLevels().stream().map(this::apply).toList(),
                s.site().soil(),
                s.site().frostDepth(),
                s.site().snowLoad(),
                s.site().groundSnowLoad(),
                s.site().coastDistance(),
                s.site().walls().stream()
                        .map(w -> new Wall(
                                w.id(),
                                w.label(),
                                apply(w.line()),
                                w.topLevel(),
                                w.dampProofCourseLevel(),
                                w.foundationDepth()))
                        .toList(),
                s.site().planning(),
                s.site().windPressure());
        return new Submission(
                s.reference(),
                s.title(),
                s.units(),
                s.reviewOn(),
                s.ruleset(),
                use,
                site,
                s.timbers(),
                s.platforms().stream().map(this::apply).toList(),
                s.protection(),
                s.siteMeasurements()
                        .map(m -> new SiteMeasurements(
                                m.diagonals(),
                                m.levels().stream()
                                        .map(l -> new MeasuredLevel(apply(l.at()), l.z()))
                                        .toList())));
    }

    private Footing apply(Footing f) {
        return new Footing(
                f.id(),
                f.label(),
                f.kind(),
                f.shape(),
                f.breadth(),
                f.length(),
                f.depth(),
                f.thickness(),
                f.embedment(),
                f.topAboveGround(),
                f.topShedsWater(),
                f.frostProtected(),
                f.at().map(this::apply));
    }

    private Brace apply(Brace b) {
        return new Brace(
                b.id(),
                b.label(),
                b.timber(),
                b.post(),
                apply(b.direction()),
                b.below(),
                b.reach(),
                b.fixingResistance());
    }

    private Stair apply(Stair t) {
        return new Stair(
                t.id(),
                t.label(),
                apply(t.line()),
                t.risers(),
                t.rise(),
                t.going(),
                t.largestRiseDifference(),
                t.footLevel(),
                t.openRisers(),
                t.treadOverlap(),
                t.riserOpening(),
                t.handrails(),
                t.topLanding(),
                t.bottomLanding(),
                t.headroom(),
                t.strings(),
                t.treadTimber(),
                t.guard(),
                t.guardTriangle(),
                t.guardEdge(),
                t.guardedSides(),
                t.nosing(),
                t.contrastingNosings(),
                t.slipResistantTreads());
    }

    private GroundLevel apply(GroundLevel g) {
        PlanPoint moved = apply(new PlanPoint(g.x().mm(), g.y().mm()));
        return new GroundLevel(new Length(moved.xMm()), new Length(moved.yMm()), g.z());
    }

    private Platform apply(Platform p) {
        Optional<Fall> fall =
                p.fall().map(f -> new Fall(f.oneIn(), f.direction().map(this::apply)));
        return new Platform(
                p.id(),
                p.label(),
                apply(p.outline()),
                p.level().map(l -> new Level(apply(l.at()), l.z())),
                fall,
                p.finishes(),
                p.boards()
                        .map(b -> new Boards(b.timber(), apply(b.direction()), b.gap(), b.profile(), b.manufactured())),
                p.joists().map(this::apply),
                p.beams().stream()
                        .map(b -> new Beam(
                                b.id(),
                                b.label(),
                                b.timber(),
                                b.plies(),
                                apply(b.line()),
                                b.posts(),
                                b.seating(),
                                b.joists(),
                                b.endNotch(),
                                b.joint(),
                                b.plyFixing(),
                                b.holdDownResistance(),
                                b.postCap(),
                                b.plyJoints()))
                        .toList(),
                p.ledger()
                        .map(l -> new Ledger(
                                l.timber(),
                                l.wall(),
                                apply(l.line()),
                                l.joists(),
                                l.bearingLength(),
                                l.fixings(),
                                l.bandJoist(),
                                l.lateralConnections())),
                p.posts().stream()
                        .map(o -> new Post(
                                o.id(),
                                o.label(),
                                o.timber(),
                                apply(o.at()),
                                o.footing(),
                                o.groundEnd(),
                                o.top(),
                                o.base(),
                                o.holdDownResistance()))
                        .toList(),
                p.footings().stream().map(this::apply).toList(),
                p.edges().stream()
                        .map(e -> new Edge(e.label(), apply(e.line()), e.kind(), e.guard()))
                        .toList(),
                p.guards(),
                p.braces().stream().map(this::apply).toList(),
                p.stairs().stream().map(this::apply).toList(),
                p.overRoom(),
                p.coversVents());
    }
}
