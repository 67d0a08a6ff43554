package org.deckplanreview.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Boards;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.Edge;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Fall;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.GroundLevel;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.HeavyItemKind;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.Level;
import org.deckplanreview.submission.LoadNature;
import org.deckplanreview.submission.ManufacturedBoards;
import org.deckplanreview.submission.Occupancy;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Planning;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Protection;
import org.deckplanreview.submission.RulesetChoice;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.submission.Use;

/**
 * Builds decks of one platform, and of others beside it, in mm. Timbers: {@code board} 145 x 28, {@code joist} 47 x 147, {@code beam} 47 x 197,
 * {@code ledger} 47 x 147, {@code post} 100 x 100. Starts with an outline alone; everything else is added.
 */
public final class Decks {

    private final List<PlanPoint> outline;
    private final List<Timber> timbers = new ArrayList<>(List.of(
            timber("board", 145, 28),
            timber("joist", 47, 147),
            timber("beam", 47, 197),
            timber("ledger", 47, 147),
            timber("post", 100, 100)));
    private LengthUnit units = LengthUnit.MILLIMETRE;
    private final List<GroundLevel> ground = new ArrayList<>();
    private final List<HeavyItem> heavyItems = new ArrayList<>();
    private final List<Beam> beams = new ArrayList<>();
    private final List<Post> posts = new ArrayList<>();
    private final List<Footing> footings = new ArrayList<>();
    private final List<Edge> edges = new ArrayList<>();
    private final List<Guard> guards = new ArrayList<>();
    private final List<Stair> stairs = new ArrayList<>();
    private Occupancy occupancy = Occupancy.SINGLE_DWELLING;
    private Optional<Planning> planning = Optional.empty();
    private Optional<Boolean> overRoom = Optional.empty();
    private Protection protection = new Protection(Optional.empty(), List.of(), Optional.empty(), Optional.empty());
    private final List<Platform> others = new ArrayList<>();
    private String label = "terrace";
    private Optional<Level> level = Optional.empty();
    private Optional<Fall> fall = Optional.empty();
    private Optional<Boards> boards = Optional.empty();
    private Optional<JoistField> joists = Optional.empty();
    private Optional<Ledger> ledger = Optional.empty();

    private Decks(List<PlanPoint> outline) {
        this.outline = outline;
    }

    /** Coordinates x, y, x, y and so on. */
    public static Decks outline(double... xy) {
        return new Decks(points(xy));
    }

    public static Decks outline(List<PlanPoint> corners) {
        return new Decks(corners);
    }

    /** From the origin to (x, y). */
    public static Decks rectangle(double x, double y) {
        return outline(0, 0, x, 0, x, y, 0, y);
    }

    public static List<PlanPoint> points(double... xy) {
        List<PlanPoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new PlanPoint(xy[i], xy[i + 1]));
        }
        return points;
    }

    public static PlanLine line(double x1, double y1, double x2, double y2) {
        return new PlanLine(new PlanPoint(x1, y1), new PlanPoint(x2, y2));
    }

    private static Timber timber(String id, double breadth, double depth) {
        return new Timber(
                id,
                Optional.empty(),
                new Length(breadth),
                new Length(depth),
                Optional.of("C24"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public Decks label(String name) {
        label = name;
        return this;
    }

    /** Replaces the timber of that id. */
    public Decks timber(Timber timber) {
        timbers.removeIf(t -> t.id().equals(timber.id()));
        timbers.add(timber);
        return this;
    }

    public Decks section(String id, double breadth, double depth) {
        return timber(timber(id, breadth, depth));
    }

    public Decks ground(double x, double y, double z) {
        ground.add(new GroundLevel(new Length(x), new Length(y), new Length(z)));
        return this;
    }

    public Decks levelGround(double z) {
        return ground(0, 0, z);
    }

    public Decks level(double x, double y, double z) {
        level = Optional.of(new Level(new PlanPoint(x, y), new Length(z)));
        return this;
    }

    /** One in so many, downhill along (dx, dy). */
    public Decks fall(double oneIn, double dx, double dy) {
        fall = Optional.of(new Fall(oneIn, Optional.of(new Direction(dx, dy))));
        return this;
    }

    public Decks noFall() {
        fall = Optional.of(new Fall(Double.POSITIVE_INFINITY, Optional.empty()));
        return this;
    }

    public Decks boards(double dx, double dy) {
        return boards(dx, dy, Optional.empty());
    }

    /** Boards of the stock's section that are not of sawn timber. */
    public Decks boards(double dx, double dy, ManufacturedBoards made) {
        return boards(dx, dy, Optional.of(made));
    }

    private Decks boards(double dx, double dy, Optional<ManufacturedBoards> made) {
        boards = Optional.of(new Boards("board", new Direction(dx, dy), Optional.empty(), Optional.empty(), made));
        return this;
    }

    public Decks joists(double dx, double dy, double spacing) {
        joists = Optional.of(new JoistField(
                "joist",
                new Direction(dx, dy),
                new Length(spacing),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        return this;
    }

    /** Joists in hangers on a ledger at the wall {@code house}. */
    public Decks ledger(PlanLine line, Optional<Double> bearing) {
        ledger = Optional.of(new Ledger(
                "ledger",
                "house",
                line,
                JoistSeating.HANGERS,
                bearing.map(Length::new),
                Optional.empty(),
                Optional.empty(),
                List.of()));
        return this;
    }

    /** On its posts, with joists on top. */
    public Decks beam(String id, int plies, PlanLine line, String... on) {
        return beam(id, plies, line, BeamSeating.ON_POST, JoistSeating.ON_TOP, on);
    }

    public Decks beam(
            String id, int plies, PlanLine line, BeamSeating seating, JoistSeating joistSeating, String... on) {
        beams.add(new Beam(
                id,
                Optional.empty(),
                "beam",
                plies,
                line,
                List.of(on),
                seating,
                joistSeating,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of()));
        return this;
    }

    /** Joints in the plies of a beam, as distances along it. */
    public Decks joints(String id, double... at) {
        beams.replaceAll(b -> b.id().equals(id)
                ? new Beam(
                        b.id(),
                        b.label(),
                        b.timber(),
                        b.plies(),
                        b.line(),
                        b.posts(),
                        b.seating(),
                        b.joists(),
                        b.endNotch(),
                        b.joint(),
                        b.plyFixing(),
                        b.holdDownResistance(),
                        b.postCap(),
                        DoubleStream.of(at).mapToObj(Length::new).toList())
                : b);
        return this;
    }

    /** On the footing of the same id. */
    public Decks post(String id, double x, double y) {
        return post(id, x, y, Optional.of(id));
    }

    public Decks post(String id, double x, double y, Optional<String> footing) {
        posts.add(new Post(
                id,
                Optional.empty(),
                "post",
                new PlanPoint(x, y),
                footing,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        return this;
    }

    public Decks footing(Footing footing) {
        footings.add(footing);
        return this;
    }

    /** Square, with its top above the ground. */
    public Decks pad(String id, double side, double thickness, double topAboveGround) {
        return footing(new Footing(
                id,
                Optional.empty(),
                FootingKind.PAD,
                FootingShape.RECTANGULAR,
                new Length(side),
                Optional.empty(),
                Optional.of(new Length(thickness - topAboveGround)),
                Optional.of(new Length(thickness)),
                Optional.empty(),
                Optional.of(new Length(topAboveGround)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    public Decks edge(EdgeKind kind, PlanLine line) {
        return edge(kind, line, Optional.empty());
    }

    public Decks edge(EdgeKind kind, PlanLine line, Optional<String> guard) {
        edges.add(new Edge(Optional.empty(), line, kind, guard));
        return this;
    }

    public Decks guard(String id, double height) {
        return guard(new Guard(
                id,
                Optional.empty(),
                Optional.of(new Length(height)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    public Decks guard(Guard guard) {
        guards.add(guard);
        return this;
    }

    public Decks stair(Stair stair) {
        stairs.add(stair);
        return this;
    }

    /** Of risers of 150 mm and goings of 300 mm. */
    public Decks stair(String id, int risers, PlanLine line) {
        return stair(new Stair(
                id,
                Optional.empty(),
                line,
                risers,
                new Length(150),
                new Length(300),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    public Decks occupancy(Occupancy who) {
        occupancy = who;
        return this;
    }

    public Decks planning(Planning what) {
        planning = Optional.of(what);
        return this;
    }

    public Decks overRoom(boolean yes) {
        overRoom = Optional.of(yes);
        return this;
    }

    public Decks protection(Protection what) {
        protection = what;
        return this;
    }

    public Decks heavyItem(String id, Optional<HeavyItemKind> kind) {
        heavyItems.add(new HeavyItem(
                id,
                Optional.empty(),
                points(0, 0, 1000, 0, 1000, 1000),
                Measure.of(15, MeasureUnit.KILONEWTON),
                LoadNature.PERMANENT,
                kind));
        return this;
    }

    public Decks heavyItem(String id, double kN, double... xy) {
        heavyItems.add(new HeavyItem(
                id,
                Optional.empty(),
                points(xy),
                Measure.of(kN, MeasureUnit.KILONEWTON),
                LoadNature.PERMANENT,
                Optional.empty()));
        return this;
    }

    /** Adds the platform of another deck, whose timbers, ground and heavy items are left behind. */
    public Decks beside(Decks other) {
        others.add(other.platform("p" + (others.size() + 2)));
        return this;
    }

    private Platform platform(String id) {
        return new Platform(
                id,
                Optional.of(label),
                outline,
                level,
                fall,
                Optional.empty(),
                boards,
                joists,
                beams,
                ledger,
                posts,
                footings,
                edges,
                guards,
                List.of(),
                stairs,
                overRoom,
                Optional.empty());
    }

    /** As if the document had been written in inches; this builder's lengths stay in mm. */
    public Decks writtenInInches() {
        units = LengthUnit.INCH;
        return this;
    }

    public Submission submission() {
        List<Platform> platforms = new ArrayList<>(List.of(platform("p1")));
        platforms.addAll(others);
        return new Submission(
                "A-1",
                Optional.empty(),
                units,
                LocalDate.of(2025, 6, 1),
                new RulesetChoice("uk-england", Optional.empty()),
                new Use(occupancy, Optional.empty(), Optional.empty(), Optional.empty(), heavyItems, Optional.empty()),
                new Site(
                        ground,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        planning,
                        Optional.empty()),
                timbers,
                platforms,
                protection,
                Optional.empty());
    }

    public Layout layout() {
        return Layout.derive(submission());
    }

    /** The layout of the platform that is built here. */
    public PlatformLayout platform() {
        return layout().platforms().get(0);
    }
}
