package org.deckplanreview.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.Deck;
import org.deckplanreview.layout.Drop;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.FixingPlace;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.Brace;
import org.deckplanreview.submission.Edge;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Submission;

/**
 * {@link SampleDeck} with a layout and loads written down by hand: drop 900 mm, clearance 600 mm, boards square to the fall,
 * posts from 50 mm to 650 mm, stairs 1000 mm wide that climb 900 mm at 35 degrees, guards of 12 m, and 12 kN permanent, 20 kN imposed, 3 kN concentrated and 4 kN snow on each footing of 1 kN.
 */
public final class PaperDeck {

    private static final Pointer PLATFORM = Pointer.of("/platforms/0");
    private static final Derived<Double> UNSURVEYED =
            Derived.missing(Pointer.of("/site/groundLevels"), "the levels of the ground");

    private final SampleDeck document = SampleDeck.complete();
    private Derived<Double> dropMm = Derived.known(900.0);
    private Derived<Double> clearanceMm = Derived.known(600.0);
    private Derived<Double> angleDegrees = Derived.known(90.0);
    private Derived<Double> climbMm = Derived.known(900.0);
    private Derived<Double> postTopMm = Derived.known(650.0);
    private Derived<Double> postBottomMm = Derived.known(50.0);
    private Derived<ActionForces> footingForces = Derived.known(new ActionForces(12_000, 20_000, 18_000, 3_000, 4_000));
    private boolean edgesDescribed = true;
    private List<Span> joistSpans = List.of();

    /** With more parts than the sample has: a stair, braces, a joint … */
    public PaperDeck having(UnaryOperator<SampleDeck> more) {
        more.apply(document);
        return this;
    }

    public PaperDeck with(String pointer, Object value) {
        document.with(pointer, value);
        return this;
    }

    public PaperDeck withJson(String pointer, String json) {
        document.withJson(pointer, json);
        return this;
    }

    public PaperDeck without(String pointer) {
        document.without(pointer);
        return this;
    }

    /** Spans of the joists from support to support. */
    public PaperDeck joistSpans(double... mm) {
        List<Span> spans = new ArrayList<>();
        double at = 0;
        for (double length : mm) {
            spans.add(new Span(Span.Kind.BETWEEN_SUPPORTS, at, at + length));
            at += length;
        }
        joistSpans = spans;
        return this;
    }

    public PaperDeck drop(double mm) {
        dropMm = Derived.known(mm);
        return this;
    }

    public PaperDeck boardsToFall(double degrees) {
        angleDegrees = Derived.known(degrees);
        return this;
    }

    /** From the level of its lower end to the level of its upper end; the ground lies at 0. */
    public PaperDeck postLevels(double bottomMm, double topMm) {
        postBottomMm = Derived.known(bottomMm);
        postTopMm = Derived.known(topMm);
        return this;
    }

    public PaperDeck footingForces(double permanentN, double imposedN, double concentratedN, double snowN) {
        footingForces = Derived.known(new ActionForces(permanentN, imposedN, imposedN, concentratedN, snowN));
        return this;
    }

    public PaperDeck loadsMissing() {
        footingForces = Derived.missing(Pointer.of("/platforms/0/joists"), "the joists");
        return this;
    }

    public PaperDeck unsurveyed() {
        dropMm = UNSURVEYED;
        clearanceMm = UNSURVEYED;
        angleDegrees = UNSURVEYED;
        climbMm = UNSURVEYED;
        postTopMm = UNSURVEYED;
        postBottomMm = UNSURVEYED;
        return this;
    }

    /** With another platform along the first edge. */
    public PaperDeck besidePlatform() {
        return with("/platforms/0/edges/0/kind", "platform")
                .withJson(
                        "/platforms/-",
                        "{\"id\": \"low\", \"outline\": [[0, 0], [4800, 0], [4800, -1000], [0, -1000]]}");
    }

    /** As if the submission described none of the outline's edges. */
    public PaperDeck edgesUndescribed() {
        edgesDescribed = false;
        return this;
    }

    public Subject subject(SubjectKind kind) {
        return layout().subjects(kind).get(0);
    }

    public ReviewContext context() {
        return new ReviewContext(layout(), new PaperLoads(), List.of(Derived.known("A")));
    }

    private Layout layout() {
        Submission submission = document.submission();
        List<FixingPlace> fixings = new ArrayList<>();
        for (int i = 0; i < submission.protection().fixings().size(); i++) {
            fixings.add(new FixingPlace(
                    Pointer.of("/protection/fixings").child(i),
                    submission.protection().fixings().get(i).displayLabel(),
                    submission.protection().fixings().get(i)));
        }
        return new Layout(submission, new Deck(), List.of(platform(submission)), fixings);
    }

    private PlatformLayout platform(Submission submission) {
        Platform platform = submission.platforms().get(0);
        return new PlatformLayout(
                0,
                PLATFORM,
                platform.displayLabel(),
                platform,
                4800 * 3600,
                dropMm,
                platform.boards()
                        .map(b -> new BoardField(
                                0,
                                PLATFORM.child("boards"),
                                "the boards",
                                b,
                                submission.timber(b.timber()),
                                Derived.known(400.0),
                                Derived.known(0.0),
                                angleDegrees,
                                clearanceMm)),
                joists(submission, platform),
                platform.beams().stream().map(b -> beam(submission, b)).toList(),
                platform.ledger().map(l -> ledger(submission, l)),
                posts(submission, platform),
                footings(platform),
                edges(platform),
                guards(platform),
                stairs(platform),
                braces(submission, platform),
                List.of());
    }

    private List<JoistLine> joists(Submission submission, Platform platform) {
        MemberSupport onLedger = new MemberSupport(
                3600,
                MemberSupport.Kind.LEDGER,
                "W1",
                PLATFORM.child("ledger"),
                "the ledger",
                OptionalDouble.of(45),
                JoistSeating.HANGERS);
        return platform.joists().stream()
                .map(j -> new JoistLine(
                        0,
                        PLATFORM.child("joists"),
                        "joist 1",
                        1,
                        submission.timber(j.timber()),
                        j.endNotch(),
                        new PlanLine(new PlanPoint(400, 0), new PlanPoint(400, 3600)),
                        3600,
                        List.of(onLedger),
                        joistSpans,
                        List.of(),
                        400,
                        13,
                        clearanceMm))
                .toList();
    }

    private BeamLine beam(Submission submission, Beam beam) {
        return new BeamLine(
                0,
                PLATFORM.child("beams").child(0),
                beam.displayLabel(),
                beam.id(),
                submission.timber(beam.timber()),
                beam.plies(),
                beam.endNotch(),
                beam.line(),
                4800,
                List.of(),
                List.of(),
                List.of(),
                clearanceMm);
    }

    private List<BraceLine> braces(Submission submission, Platform platform) {
        List<BraceLine> lines = new ArrayList<>();
        for (int i = 0; i < platform.braces().size(); i++) {
            Brace brace = platform.braces().get(i);
            lines.add(new BraceLine(
                    0,
                    PLATFORM.child("braces").child(i),
                    brace.displayLabel(),
                    brace,
                    submission.timber(brace.timber()),
                    StrictMath.hypot(brace.below().mm(), brace.reach().mm()),
                    45));
        }
        return lines;
    }

    private LedgerLine ledger(Submission submission, Ledger ledger) {
        return new LedgerLine(
                0,
                PLATFORM.child("ledger"),
                "the ledger",
                submission.timber(ledger.timber()),
                ledger.line(),
                4800,
                List.of(new JoistBearing(0, 0, 400)),
                clearanceMm);
    }

    private List<FootingPlace> footings(Platform platform) {
        List<FootingPlace> places = new ArrayList<>();
        for (int i = 0; i < platform.footings().size(); i++) {
            Footing footing = platform.footings().get(i);
            double side = footing.breadth().mm();
            places.add(new FootingPlace(
                    0,
                    PLATFORM.child("footings").child(i),
                    footing.displayLabel(),
                    footing,
                    List.of(platform.posts().get(i).id()),
                    side * side,
                    Derived.known(side * side * 300),
                    Derived.known(0.0)));
        }
        return places;
    }

    private List<PostPlace> posts(Submission submission, Platform platform) {
        List<PostPlace> places = new ArrayList<>();
        for (int i = 0; i < platform.posts().size(); i++) {
            Post post = platform.posts().get(i);
            Optional<FootingPlace> footing = post.footing()
                    .flatMap(id -> footings(platform).stream()
                            .filter(f -> f.footing().id().equals(id))
                            .findFirst());
            places.add(new PostPlace(
                    0,
                    PLATFORM.child("posts").child(i),
                    post.displayLabel(),
                    post.id(),
                    post,
                    submission.timber(post.timber()),
                    List.of("B1"),
                    postTopMm,
                    Derived.known(0.0),
                    postBottomMm,
                    postTopMm.map(top -> top - 50),
                    footing));
        }
        return places;
    }

    private List<EdgeRun> edges(Platform platform) {
        Derived<Drop> drop = dropMm.map(mm -> new Drop(mm, new PlanPoint(0, 0)));
        if (!edgesDescribed) {
            PlanLine whole = platform.edges().get(0).line();
            return List.of(new EdgeRun(
                    0,
                    PLATFORM.child("edges"),
                    "an edge that is not described",
                    whole,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    drop));
        }
        List<EdgeRun> runs = new ArrayList<>();
        for (int i = 0; i < platform.edges().size(); i++) {
            Edge edge = platform.edges().get(i);
            Optional<Guard> guard = guard(edge.guard(), platform);
            runs.add(new EdgeRun(
                    0,
                    PLATFORM.child("edges").child(i),
                    "edge " + (i + 1),
                    edge.line(),
                    Optional.of(edge.kind()),
                    guard,
                    guard.map(g ->
                            PLATFORM.child("guards").child(platform.guards().indexOf(g))),
                    drop));
        }
        return runs;
    }

    private List<GuardRun> guards(Platform platform) {
        List<GuardRun> runs = new ArrayList<>();
        for (int i = 0; i < platform.guards().size(); i++) {
            Guard guard = platform.guards().get(i);
            List<EdgeRun> along = edges(platform).stream()
                    .filter(e -> e.guard().equals(Optional.of(guard)))
                    .toList();
            runs.add(new GuardRun(0, PLATFORM.child("guards").child(i), guard.displayLabel(), guard, along, 12_000));
        }
        return runs;
    }

    private List<StairRun> stairs(Platform platform) {
        List<StairRun> runs = new ArrayList<>();
        for (int i = 0; i < platform.stairs().size(); i++) {
            Stair stair = platform.stairs().get(i);
            runs.add(new StairRun(
                    0,
                    PLATFORM.child("stairs").child(i),
                    stair.displayLabel(),
                    stair,
                    1_000,
                    climbMm,
                    climbMm.map(c -> 0.0),
                    35,
                    (stair.risers() - 1) * stair.going().mm(),
                    guard(stair.guard(), platform)));
        }
        return runs;
    }

    private static Optional<Guard> guard(Optional<String> id, Platform platform) {
        return platform.guards().stream()
                .filter(g -> id.equals(Optional.of(g.id())))
                .findFirst();
    }

    private final class PaperLoads implements LoadPath {
        @Override
        public Derived<Sheet> areaLoads(int platformIndex) {
            return Derived.missing(Pointer.of("/platforms/0/boards"), "the boards");
        }

        @Override
        public Derived<ActionForces> footing(FootingPlace footing) {
            return footingForces;
        }

        @Override
        public Derived<Double> footingWeightN(FootingPlace footing) {
            return Derived.known(1_000.0);
        }

        @Override
        public Derived<DeckLoads> deckLoads(int platformIndex) {
            return Derived.known(new DeckLoads(0.4, 0.4, 1.5, 0));
        }

        @Override
        public Derived<Double> imposedKNPerM2(int platformIndex) {
            return Derived.known(1.5);
        }

        @Override
        public Derived<MemberAnalysis> member(Member member) {
            return Derived.missing(member.pointer(), "statics that are written down");
        }

        @Override
        public Derived<BoardLoads> boards(BoardField boards) {
            throw new AssertionError("Not written down");
        }

        @Override
        public Derived<ActionForces> post(PostPlace post) {
            throw new AssertionError("Not written down");
        }

        @Override
        public Derived<LiftForces> lift(PostPlace post) {
            throw new AssertionError("Not written down");
        }

        @Override
        public Derived<LiftForces> lift(FootingPlace footing) {
            throw new AssertionError("Not written down");
        }

        @Override
        public Derived<Double> postWeightN(PostPlace post) {
            throw new AssertionError("Not written down");
        }
    }
}
