package org.deckplanreview.method.en1995;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Deck;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.BoardProfile;
import org.deckplanreview.submission.Boards;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.submission.Grade;
import org.deckplanreview.submission.Joint;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.NotchSide;
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
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.submission.Use;
import org.deckplanreview.vocabulary.Parameters;

/** One joist, beam or field of boards with stated statics, to put methods to. */
public final class DeckPiece {
    private static final PlanLine LINE = new PlanLine(new PlanPoint(0, 0), new PlanPoint(1, 0));
    private static final Derived<Double> UNKNOWN = Derived.missing(Pointer.of("/site/groundLevels"), "ground levels");

    private double breadthMm = 47;
    private double depthMm = 195;
    private Optional<String> strengthClass = Optional.of("C24");
    private Optional<Species> species = Optional.empty();
    private Optional<Grade> grade = Optional.empty();
    private Optional<Boolean> incised = Optional.empty();
    private Optional<Boolean> installedWet = Optional.of(false);
    private int plies = 1;
    private boolean beam;
    private String carriersClass = "C24";
    private double spacingMm = 400;
    private int fieldSize = 10;
    private double lengthMm;
    private final List<Span> spans = new ArrayList<>();
    private final List<MemberSupport> supports = new ArrayList<>();
    private final List<JoistBearing> joists = new ArrayList<>();
    private Optional<EndNotch> notch = Optional.empty();
    private Derived<String> category = Derived.known("A");
    private Function<Member, Derived<MemberAnalysis>> analysis =
            m -> Derived.missing(Pointer.of("/platforms/0/boards"), "the boards");
    private Optional<Double> postDepthMm = Optional.empty();
    private double postsOffMm;
    private Derived<LoadPath.BoardLoads> boardLoads = Derived.missing(Pointer.of("/platforms/0/boards"), "the boards");
    private Optional<BoardProfile> profile = Optional.of(BoardProfile.SMOOTH);
    private double overhangMm;
    private BeamSeating seating = BeamSeating.ON_POST;
    private Optional<Joint> joint = Optional.empty();
    private Optional<Measure> hangerResistance = Optional.empty();

    public static DeckPiece joist() {
        return new DeckPiece();
    }

    public static DeckPiece beam(int plies) {
        DeckPiece b = new DeckPiece();
        b.beam = true;
        b.plies = plies;
        return b;
    }

    public DeckPiece section(double breadth, double depth) {
        breadthMm = breadth;
        depthMm = depth;
        return this;
    }

    /** Visually graded lumber in place of a strength class. */
    public DeckPiece of(Species s, Grade g) {
        strengthClass = Optional.empty();
        species = Optional.of(s);
        grade = Optional.of(g);
        return this;
    }

    public DeckPiece incised(Boolean yes) {
        incised = Optional.ofNullable(yes);
        return this;
    }

    public DeckPiece of(String className) {
        strengthClass = Optional.ofNullable(className);
        return this;
    }

    public DeckPiece ofUnknownClass() {
        strengthClass = Optional.empty();
        return this;
    }

    public DeckPiece wet(Boolean wet) {
        installedWet = Optional.ofNullable(wet);
        return this;
    }

    public DeckPiece category(String word) {
        category = Derived.known(word);
        return this;
    }

    public DeckPiece side(double spacing, int size) {
        spacingMm = spacing;
        fieldSize = size;
        return this;
    }

    public DeckPiece notched(double depth, double distance, double slope, NotchSide side) {
        notch = Optional.of(new EndNotch(Length.ofMm(depth), Length.ofMm(distance), slope, side));
        return this;
    }

    /** Beams of another strength class under a joist. */
    public DeckPiece onBeamsOf(String className) {
        carriersClass = className;
        return this;
    }

    /** A single span whose ends are flush with contacts of this length. */
    public DeckPiece span(double spanMm, double contactMm) {
        lengthMm = spanMm + contactMm;
        spans.clear();
        supports.clear();
        spans.add(new Span(Span.Kind.BETWEEN_SUPPORTS, contactMm / 2, spanMm + contactMm / 2));
        return support(contactMm / 2, contactMm).support(spanMm + contactMm / 2, contactMm);
    }

    public DeckPiece length(double mm) {
        lengthMm = mm;
        return this;
    }

    public DeckPiece stretch(Span.Kind kind, double fromMm, double toMm) {
        spans.add(new Span(kind, fromMm, toMm));
        return this;
    }

    public DeckPiece support(double atMm, double contactMm) {
        return support(atMm, OptionalDouble.of(contactMm), beam ? MemberSupport.Kind.POST : MemberSupport.Kind.BEAM);
    }

    public DeckPiece hanger(double atMm, MemberSupport.Kind kind) {
        return support(atMm, OptionalDouble.empty(), kind);
    }

    private DeckPiece support(double atMm, OptionalDouble contactMm, MemberSupport.Kind kind) {
        String id = "S" + (supports.size() + 1);
        supports.add(new MemberSupport(
                atMm,
                kind,
                id,
                Pointer.of("/platforms/0/beams/0"),
                "support " + id,
                contactMm,
                contactMm.isPresent() ? JoistSeating.ON_TOP : JoistSeating.HANGERS));
        return this;
    }

    public DeckPiece joistsEvery(double mm) {
        for (double at = 0; at <= lengthMm; at += mm) {
            joists.add(new JoistBearing(joists.size(), 0, at));
        }
        return this;
    }

    public DeckPiece postsOff(double mm) {
        postsOffMm = mm;
        return this;
    }

    public DeckPiece postDepth(double mm) {
        postDepthMm = Optional.of(mm);
        return this;
    }

    /** Bolted or screwed to the sides of its posts. */
    public DeckPiece fixed(BeamSeating to, Joint by) {
        seating = to;
        joint = Optional.ofNullable(by);
        return this;
    }

    public DeckPiece hangersOf(Measure resistance) {
        hangerResistance = Optional.of(resistance);
        return this;
    }

    public DeckPiece under(Function<LinearAnalysis, LinearAnalysis> loads) {
        analysis = m -> Derived.known(loads.apply(LinearAnalysis.of(m)));
        return this;
    }

    public DeckPiece boardLoads(double permanent, double imposed, double concentratedN) {
        boardLoads = Derived.known(new LoadPath.BoardLoads(permanent, imposed, 0, concentratedN));
        return this;
    }

    public DeckPiece profile(BoardProfile p) {
        profile = Optional.ofNullable(p);
        return this;
    }

    public DeckPiece overhang(double mm) {
        overhangMm = mm;
        return this;
    }

    public SubjectKind kind() {
        return beam ? SubjectKind.BEAMS : SubjectKind.JOISTS;
    }

    public Evaluation evaluate(Method method, Parameters parameters) {
        Member member = member();
        return method.evaluate(member, parameters, context(member));
    }

    public Evaluation evaluateBoards(Method method, Parameters parameters) {
        BoardField field = new BoardField(
                0,
                Pointer.of("/platforms/0/boards"),
                "boards",
                new Boards("t", new Direction(1, 0), Optional.empty(), profile, Optional.empty()),
                timber("t", breadthMm, depthMm),
                Derived.known(spacingMm),
                Derived.known(overhangMm),
                UNKNOWN,
                UNKNOWN);
        return method.evaluate(field, parameters, context(member()));
    }

    private Member member() {
        Timber timber = timber("t", breadthMm, depthMm);
        return beam
                ? new BeamLine(
                        0,
                        Pointer.of("/platforms/0/beams/0"),
                        "beam B",
                        "B",
                        timber,
                        plies,
                        notch,
                        LINE,
                        lengthMm,
                        supports,
                        spans,
                        joists,
                        UNKNOWN)
                : new JoistLine(
                        0,
                        Pointer.of("/platforms/0/joists"),
                        "joist 1",
                        1,
                        timber,
                        notch,
                        LINE,
                        lengthMm,
                        supports,
                        spans,
                        List.of(),
                        spacingMm,
                        fieldSize,
                        UNKNOWN);
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
                .with("installedWet", installedWet)
                .made();
    }

    private ReviewContext context(Member member) {
        Platform platform = Stating.a(Platform.class)
                .with("id", "p")
                .with("joists", beam ? Optional.empty() : Optional.of(joistField()))
                .with("beams", beam ? List.of(submitted()) : List.of())
                .made();
        Submission submission = new Submission(
                "ref",
                Optional.empty(),
                LengthUnit.MILLIMETRE,
                LocalDate.of(2026, 1, 1),
                new RulesetChoice("r", Optional.empty()),
                Stating.a(Use.class)
                        .with("occupancy", Occupancy.SINGLE_DWELLING)
                        .made(),
                Stating.a(Site.class).made(),
                List.of(member.timber(), timber("post", 100, 100), carrierTimber()),
                List.of(platform),
                Stating.a(Protection.class).made(),
                Optional.empty());
        PlatformLayout layout = new PlatformLayout(
                0,
                Pointer.of("/platforms/0"),
                "platform p",
                platform,
                1,
                UNKNOWN,
                Optional.empty(),
                member instanceof JoistLine j ? List.of(j) : List.of(),
                member instanceof BeamLine b ? List.of(b) : carriers(),
                Optional.empty(),
                posts(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return new ReviewContext(
                new Layout(submission, new Deck(), List.of(layout), List.of()), new Stated(), List.of(category));
    }

    /** Beams on which the joist lies, 1000 mm from either end. */
    private List<BeamLine> carriers() {
        List<BeamLine> all = new ArrayList<>();
        for (int i = 0; i < supports.size(); i++) {
            MemberSupport s = supports.get(i);
            if (s.kind() == MemberSupport.Kind.BEAM) {
                all.add(new BeamLine(
                        0,
                        s.pointer(),
                        "beam " + s.id(),
                        s.id(),
                        carrierTimber(),
                        1,
                        Optional.empty(),
                        LINE,
                        2000,
                        List.of(),
                        List.of(),
                        List.of(new JoistBearing(0, i, 1000)),
                        UNKNOWN));
            }
        }
        return all;
    }

    private Timber carrierTimber() {
        return Stating.a(Timber.class)
                .with("id", "carrier")
                .with("breadth", Length.ofMm(94))
                .with("depth", Length.ofMm(195))
                .with("strengthClass", carriersClass)
                .with("installedWet", false)
                .made();
    }

    private JoistField joistField() {
        return Stating.a(JoistField.class)
                .with("timber", "t")
                .with("direction", new Direction(1, 0))
                .with("spacing", Length.ofMm(spacingMm))
                .with("hangerResistance", hangerResistance)
                .made();
    }

    private Beam submitted() {
        return Stating.a(Beam.class)
                .with("id", "B")
                .with("timber", "t")
                .with("plies", plies)
                .with("line", LINE)
                .with("seating", seating)
                .with("joists", JoistSeating.ON_TOP)
                .with("endNotch", notch)
                .with("joint", joint)
                .made();
    }

    private List<PostPlace> posts() {
        return postDepthMm.stream()
                .flatMap(depth -> supports.stream().map(s -> post(s.id(), depth)))
                .toList();
    }

    private PostPlace post(String id, double depth) {
        return new PostPlace(
                0,
                Pointer.of("/platforms/0/posts/0"),
                "post " + id,
                id,
                Stating.a(Post.class)
                        .with("id", id)
                        .with("timber", "post")
                        .with("at", new PlanPoint(0, postsOffMm))
                        .made(),
                timber("post", 100, depth),
                List.of("B"),
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                Optional.empty());
    }

    private final class Stated implements LoadPath {
        @Override
        public Derived<Sheet> areaLoads(int platformIndex) {
            return Derived.missing(Pointer.of("/platforms/0/boards"), "the boards");
        }

        @Override
        public Derived<MemberAnalysis> member(Member member) {
            return analysis.apply(member);
        }

        @Override
        public Derived<BoardLoads> boards(BoardField boards) {
            return boardLoads;
        }

        @Override
        public Derived<ActionForces> post(PostPlace post) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Derived<LiftForces> lift(PostPlace post) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Derived<LiftForces> lift(FootingPlace footing) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Derived<Double> postWeightN(PostPlace post) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Derived<ActionForces> footing(FootingPlace footing) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Derived<Double> footingWeightN(FootingPlace footing) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Derived<DeckLoads> deckLoads(int platformIndex) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Derived<Double> imposedKNPerM2(int platformIndex) {
            throw new UnsupportedOperationException();
        }
    }
}
