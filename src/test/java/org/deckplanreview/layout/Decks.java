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
import org.deckplanreview.submission.Stating;
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
    private Protection protection = Stating.a(Protection.class).made();
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
        return Stating.a(Timber.class)
                .with("id", id)
                .with("breadth", new Length(breadth))
                .with("depth", new Length(depth))
                .with("strengthClass", "C24")
                .made();
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
        joists = Optional.of(Stating.a(JoistField.class)
                .with("timber", "joist")
                .with("direction", new Direction(dx, dy))
                .with("spacing", new Length(spacing))
                .made());
        return this;
    }

    /** Joists in hangers on a ledger at the wall {@code house}. */
    public Decks ledger(PlanLine line, Optional<Double> bearing) {
        ledger = Optional.of(Stating.a(Ledger.class)
                .with("timber", "ledger")
                .with("wall", "house")
                .with("line", line)
                .with("joists", JoistSeating.HANGERS)
                .with("bearingLength", bearing.map(Length::new))
                .made());
        return this;
    }

    /** On its posts, with joists on top. */
    public Decks beam(String id, int plies, PlanLine line, String... on) {
        return beam(id, plies, line, BeamSeating.ON_POST, JoistSeating.ON_TOP, on);
    }

    public Decks beam(
            String id, int plies, PlanLine line, BeamSeating seating, JoistSeating joistSeating, String... on) {
        beams.add(Stating.a(Beam.class)
                .with("id", id)
                .with("timber", "beam")
                .with("plies", plies)
                .with("line", line)
                .with("posts", List.of(on))
                .with("seating", seating)
                .with("joists", joistSeating)
                .made());
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
        posts.add(Stating.a(Post.class)
                .with("id", id)
                .with("timber", "post")
                .with("at", new PlanPoint(x, y))
                .with("footing", footing)
                .made());
        return this;
    }

    public Decks footing(Footing footing) {
        footings.add(footing);
        return this;
    }

    /** Square, with its top above the ground. */
    public Decks pad(String id, double side, double thickness, double topAboveGround) {
        return footing(Stating.a(Footing.class)
                .with("id", id)
                .with("kind", FootingKind.PAD)
                .with("shape", FootingShape.RECTANGULAR)
                .with("breadth", new Length(side))
                .with("depth", new Length(thickness - topAboveGround))
                .with("thickness", new Length(thickness))
                .with("topAboveGround", new Length(topAboveGround))
                .made());
    }

    public Decks edge(EdgeKind kind, PlanLine line) {
        return edge(kind, line, Optional.empty());
    }

    public Decks edge(EdgeKind kind, PlanLine line, Optional<String> guard) {
        edges.add(new Edge(Optional.empty(), line, kind, guard));
        return this;
    }

    public Decks guard(String id, double height) {
        return guard(Stating.a(Guard.class)
                .with("id", id)
                .with("height", new Length(height))
                .made());
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
        return stair(Stating.a(Stair.class)
                .with("id", id)
                .with("line", line)
                .with("risers", risers)
                .with("rise", new Length(150))
                .with("going", new Length(300))
                .made());
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
        return Stating.a(Platform.class)
                .with("id", id)
                .with("label", label)
                .with("outline", outline)
                .with("level", level)
                .with("fall", fall)
                .with("boards", boards)
                .with("joists", joists)
                .with("beams", beams)
                .with("ledger", ledger)
                .with("posts", posts)
                .with("footings", footings)
                .with("edges", edges)
                .with("guards", guards)
                .with("stairs", stairs)
                .with("overRoom", overRoom)
                .made();
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
                Stating.a(Use.class)
                        .with("occupancy", occupancy)
                        .with("heavyItems", heavyItems)
                        .made(),
                Stating.a(Site.class)
                        .with("groundLevels", ground)
                        .with("planning", planning)
                        .made(),
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
