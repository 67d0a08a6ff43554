package org.deckplanreview.method.en1995;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.Deck;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Brace;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.Grade;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.Occupancy;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Protection;
import org.deckplanreview.submission.RulesetChoice;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.Species;
import org.deckplanreview.submission.Stating;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.submission.Use;

/**
 * Posts P1, P2, … in a row under one beam along x, all alike and with stated loads, to put methods to; on a platform of
 * 4000 x 2000 mm without boards, joists or guards.
 */
public final class PostPiece {
    private static final Pointer PLATFORM = Pointer.of("/platforms/0");
    private static final PlanLine LINE = new PlanLine(new PlanPoint(0, 0), new PlanPoint(4000, 0));
    private static final Derived<Double> UNKNOWN = Derived.missing(Pointer.of("/site/groundLevels"), "ground levels");

    private final double breadthMm;
    private final double depthMm;
    private Optional<String> strengthClass = Optional.of("C24");
    private Optional<Species> species = Optional.empty();
    private Optional<Grade> grade = Optional.empty();
    private Optional<Boolean> incised = Optional.empty();
    private int count = 4;
    private Derived<Double> heightMm = Derived.known(2000.0);
    private Optional<FootingKind> foot = Optional.of(FootingKind.PAD);
    private BeamSeating seating = BeamSeating.ON_POST;
    private double beamBreadthMm = 47;
    private double offBeamMm;
    private boolean beam = true;
    private boolean ledger;
    private Derived<ActionForces> forces = Derived.known(new ActionForces(0, 0, 0, 0, 0));
    private double weightN;
    private Derived<String> category = Derived.known("A");
    private Optional<Measure> wind = Optional.empty();
    private Optional<Measure> resistance = Optional.empty();
    private double braceBreadthMm = 47;
    private final List<Brace> braces = new ArrayList<>();

    private PostPiece(double breadthMm, double depthMm) {
        this.breadthMm = breadthMm;
        this.depthMm = depthMm;
    }

    /** @param breadthMm along the beam */
    public static PostPiece post(double breadthMm, double depthMm) {
        return new PostPiece(breadthMm, depthMm);
    }

    /** Visually graded lumber in place of a strength class. */
    public PostPiece of(Species s, Grade g) {
        strengthClass = Optional.empty();
        species = Optional.of(s);
        grade = Optional.of(g);
        return this;
    }

    public PostPiece incised(Boolean yes) {
        incised = Optional.ofNullable(yes);
        return this;
    }

    public PostPiece of(String className) {
        strengthClass = Optional.ofNullable(className);
        return this;
    }

    public PostPiece count(int posts) {
        count = posts;
        return this;
    }

    public PostPiece height(double mm) {
        heightMm = Derived.known(mm);
        return this;
    }

    public PostPiece ofUnknownHeight() {
        heightMm = UNKNOWN;
        return this;
    }

    public PostPiece foot(FootingKind kind) {
        foot = Optional.ofNullable(kind);
        return this;
    }

    public PostPiece offBeam(double mm) {
        offBeamMm = mm;
        return this;
    }

    public PostPiece seated(BeamSeating how, double breadthOfBeamMm) {
        seating = how;
        beamBreadthMm = breadthOfBeamMm;
        return this;
    }

    public PostPiece withoutBeam() {
        beam = false;
        return this;
    }

    public PostPiece onLedger() {
        ledger = true;
        return this;
    }

    /** Characteristic load on each post. */
    public PostPiece loads(double permanentN, double imposedN) {
        forces = Derived.known(new ActionForces(permanentN, imposedN, imposedN, 0, 0));
        return this;
    }

    public PostPiece weight(double newtons) {
        weightN = newtons;
        return this;
    }

    public PostPiece category(String word) {
        category = Derived.known(word);
        return this;
    }

    public PostPiece wind(String pressure) {
        wind = Optional.of(Measure.parse(pressure));
        return this;
    }

    public PostPiece braceBreadth(double mm) {
        braceBreadthMm = mm;
        return this;
    }

    public PostPiece fixingResistance(double kN) {
        resistance = Optional.of(Measure.of(kN, MeasureUnit.KILONEWTON));
        return this;
    }

    public PostPiece brace(String post, double dx, double dy, double belowMm, double reachMm) {
        String id = "K" + (braces.size() + 1);
        braces.add(new Brace(
                id,
                Optional.empty(),
                "brace",
                post,
                new Direction(dx, dy),
                Length.ofMm(belowMm),
                Length.ofMm(reachMm),
                resistance));
        return this;
    }

    /** Puts a method to the first post. */
    public Evaluation evaluate(Method method, StandardParameters parameters) {
        PlatformLayout platform = platform();
        return method.evaluate(platform.posts().get(0), parameters, context(platform));
    }

    public Evaluation evaluatePost(int index, Method method, StandardParameters parameters) {
        PlatformLayout platform = platform();
        return method.evaluate(platform.posts().get(index), parameters, context(platform));
    }

    public Evaluation evaluateBrace(int index, Method method, StandardParameters parameters) {
        PlatformLayout platform = platform();
        return method.evaluate(platform.braces().get(index), parameters, context(platform));
    }

    public LoadPath statedLoads() {
        return new Stated();
    }

    private List<PostPlace> posts() {
        List<PostPlace> posts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String id = "P" + (i + 1);
            posts.add(new PostPlace(
                    0,
                    PLATFORM.child("posts").child(i),
                    "post " + id,
                    id,
                    Stating.a(Post.class)
                            .with("id", id)
                            .with("timber", "post")
                            .with("at", new PlanPoint(i * 1000, offBeamMm))
                            .with("footing", foot.map(f -> "F"))
                            .made(),
                    timber("post", breadthMm, depthMm),
                    beam ? List.of("B") : List.of(),
                    heightMm,
                    Derived.known(0.0),
                    Derived.known(0.0),
                    heightMm,
                    foot.map(this::footing)));
        }
        return posts;
    }

    private FootingPlace footing(FootingKind kind) {
        Footing footing = Stating.a(Footing.class)
                .with("id", "F")
                .with("kind", kind)
                .with("shape", FootingShape.RECTANGULAR)
                .with("breadth", Length.ofMm(500))
                .made();
        return new FootingPlace(
                0, PLATFORM.child("footings").child(0), "footing F", footing, List.of(), 1, UNKNOWN, UNKNOWN);
    }

    private Timber timber(String id, double breadth, double depth) {
        return Stating.a(Timber.class)
                .with("id", id)
                .with("breadth", Length.ofMm(breadth))
                .with("depth", Length.ofMm(depth))
                .with("strengthClass", strengthClass)
                .with("species", species)
                .with("grade", grade)
                .with("incised", incised)
                .made();
    }

    private PlatformLayout platform() {
        Beam drawn = Stating.a(Beam.class)
                .with("id", "B")
                .with("timber", "beam")
                .with("plies", 1)
                .with("line", LINE)
                .with("seating", seating)
                .with("joists", JoistSeating.ON_TOP)
                .made();
        Platform platform = Stating.a(Platform.class)
                .with("id", "p")
                .with(
                        "outline",
                        List.of(
                                new PlanPoint(0, 0),
                                new PlanPoint(4000, 0),
                                new PlanPoint(4000, 2000),
                                new PlanPoint(0, 2000)))
                .with("beams", beam ? List.of(drawn) : List.of())
                .with("braces", braces)
                .made();
        return new PlatformLayout(
                0,
                PLATFORM,
                "platform p",
                platform,
                8e6,
                UNKNOWN,
                Optional.empty(),
                List.of(),
                beam ? List.of(beamLine()) : List.of(),
                ledger ? Optional.of(ledgerLine()) : Optional.empty(),
                posts(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                braceLines(),
                List.of());
    }

    private BeamLine beamLine() {
        return new BeamLine(
                0,
                PLATFORM.child("beams").child(0),
                "beam B",
                "B",
                timber("beam", beamBreadthMm, 195),
                1,
                Optional.empty(),
                LINE,
                4000,
                List.of(),
                List.of(),
                List.of(),
                UNKNOWN);
    }

    private LedgerLine ledgerLine() {
        return new LedgerLine(
                0, PLATFORM.child("ledger"), "the ledger", timber("beam", 47, 195), LINE, 4000, List.of(), UNKNOWN);
    }

    private List<BraceLine> braceLines() {
        List<BraceLine> lines = new ArrayList<>();
        for (int i = 0; i < braces.size(); i++) {
            Brace b = braces.get(i);
            lines.add(new BraceLine(
                    0,
                    PLATFORM.child("braces").child(i),
                    b.displayLabel(),
                    b,
                    timber("brace", braceBreadthMm, 97),
                    StrictMath.hypot(b.below().mm(), b.reach().mm()),
                    StrictMath.toDegrees(
                            StrictMath.atan2(b.below().mm(), b.reach().mm()))));
        }
        return lines;
    }

    private ReviewContext context(PlatformLayout layout) {
        Submission submission = new Submission(
                "ref",
                Optional.empty(),
                LengthUnit.MILLIMETRE,
                LocalDate.of(2026, 1, 1),
                new RulesetChoice("r", Optional.empty()),
                Stating.a(Use.class)
                        .with("occupancy", Occupancy.SINGLE_DWELLING)
                        .made(),
                Stating.a(Site.class).with("windPressure", wind).made(),
                List.of(
                        timber("post", breadthMm, depthMm),
                        timber("beam", beamBreadthMm, 195),
                        timber("brace", braceBreadthMm, 97)),
                List.of(layout.platform()),
                Stating.a(Protection.class).made(),
                Optional.empty());
        return new ReviewContext(
                new Layout(submission, new Deck(), List.of(layout), List.of()), new Stated(), List.of(category));
    }

    private final class Stated implements LoadPath {
        @Override
        public Derived<Sheet> areaLoads(int platformIndex) {
            return Derived.missing(Pointer.of("/platforms/0/boards"), "the boards");
        }

        @Override
        public Derived<ActionForces> post(PostPlace post) {
            return forces;
        }

        @Override
        public Derived<LiftForces> lift(PostPlace post) {
            throw new AssertionError("Not stated");
        }

        @Override
        public Derived<LiftForces> lift(FootingPlace footing) {
            throw new AssertionError("Not stated");
        }

        @Override
        public Derived<Double> postWeightN(PostPlace post) {
            return Derived.known(weightN);
        }

        @Override
        public Derived<MemberAnalysis> member(Member member) {
            throw new AssertionError("Not stated");
        }

        @Override
        public Derived<BoardLoads> boards(BoardField boards) {
            throw new AssertionError("Not stated");
        }

        @Override
        public Derived<ActionForces> footing(FootingPlace footing) {
            throw new AssertionError("Not stated");
        }

        @Override
        public Derived<Double> footingWeightN(FootingPlace footing) {
            throw new AssertionError("Not stated");
        }

        @Override
        public Derived<DeckLoads> deckLoads(int platformIndex) {
            throw new AssertionError("Not stated");
        }

        @Override
        public Derived<Double> imposedKNPerM2(int platformIndex) {
            throw new AssertionError("Not stated");
        }
    }
}
