package org.deckplanreview.loadpath;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.AreaStrip;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.Deck;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.LoadModel.Material;
import org.deckplanreview.loadpath.LoadModel.PlatformLoads;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.Boards;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.LoadNature;
import org.deckplanreview.submission.Occupancy;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Protection;
import org.deckplanreview.submission.RulesetChoice;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.Stating;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.submission.Use;

/**
 * A rectangular deck: joists run along y from 0, beams along x from 0, posts under the beams. Mean stiffness and density
 * of C24: EN 338:2016, Table 1, from memory.
 */
final class DeckFixture {

    static final double E_C24 = 11000;
    static final double G_C24 = 690;
    static final double DENSITY_C24 = 420;
    static final double GRAVITY = 9.81;
    static final double KAPPA = 1.2;
    static final double POST_LENGTH = 1100;
    static final double CONCRETE_MM3 = 0.06e9;

    private record BeamAt(String id, double yMm, double[] postsAtMm) {}

    private record Item(double weightKN, LoadNature nature, double fromY, double toY) {}

    private int joistCount = 5;
    private double spacing = 400;
    private double joistLength = 3000;
    private final List<Double> ledgers = new ArrayList<>();
    private final List<BeamAt> beams = new ArrayList<>();
    private final List<Item> items = new ArrayList<>();
    private List<AreaStrip> strips = List.of();
    private Optional<String> joistClass = Optional.of("C24");
    private Optional<String> boardClass = Optional.of("C24");
    private Optional<String> beamClass = Optional.of("C24");
    private Optional<String> postClass = Optional.of("C24");
    private Optional<Double> gap = Optional.of(5.0);
    private boolean boardsGiven = true;
    private boolean joistsGiven = true;
    private Derived<Double> postTop = Derived.known(POST_LENGTH);
    private Derived<Double> uniform = Derived.known(2.5);
    private Derived<Double> concentrated = Derived.known(2000.0);
    private double finishes;
    private double snow;
    private boolean shear;
    private double share = 0.5;
    private OptionalDouble leastDead = OptionalDouble.empty();

    static DeckFixture deck() {
        return new DeckFixture();
    }

    DeckFixture joists(int count, double spacingMm, double lengthMm) {
        joistCount = count;
        spacing = spacingMm;
        joistLength = lengthMm;
        return this;
    }

    DeckFixture ledgerAt(double yMm) {
        ledgers.add(yMm);
        return this;
    }

    DeckFixture beamAt(String id, double yMm, double... postsAtMm) {
        beams.add(new BeamAt(id, yMm, postsAtMm));
        return this;
    }

    /** A heavy item as wide as the deck. */
    DeckFixture heavyItem(double weightKN, LoadNature nature, double fromY, double toY) {
        items.add(new Item(weightKN, nature, fromY, toY));
        return this;
    }

    /** In place of the even tributary width. */
    DeckFixture strips(AreaStrip... ofEachJoist) {
        strips = List.of(ofEachJoist);
        return this;
    }

    DeckFixture strengthClasses(String joists, String boards, String beamsAndPosts) {
        joistClass = Optional.ofNullable(joists);
        boardClass = Optional.ofNullable(boards);
        beamClass = Optional.ofNullable(beamsAndPosts);
        postClass = Optional.ofNullable(beamsAndPosts);
        return this;
    }

    DeckFixture gap(Optional<Double> mm) {
        gap = mm;
        return this;
    }

    DeckFixture withoutBoards() {
        boardsGiven = false;
        return this;
    }

    DeckFixture withoutJoists() {
        joistsGiven = false;
        joistCount = 0;
        return this;
    }

    DeckFixture postTop(Derived<Double> level) {
        postTop = level;
        return this;
    }

    DeckFixture uniform(Derived<Double> kNPerM2) {
        uniform = kNPerM2;
        return this;
    }

    DeckFixture concentrated(Derived<Double> n) {
        concentrated = n;
        return this;
    }

    DeckFixture finishes(double kNPerM2) {
        finishes = kNPerM2;
        return this;
    }

    DeckFixture snow(double kNPerM2) {
        snow = kNPerM2;
        return this;
    }

    DeckFixture shearDeformation() {
        shear = true;
        return this;
    }

    DeckFixture shareOnJoist(double of) {
        share = of;
        return this;
    }

    double widthMm() {
        return joistCount * spacing;
    }

    double areaMm2() {
        return widthMm() * joistLength;
    }

    Timber joistTimber() {
        return timber("joist", 47, 145, joistClass);
    }

    Timber boardTimber() {
        return timber("board", 145, 28, boardClass);
    }

    Timber beamTimber() {
        return timber("beam", 47, 195, beamClass);
    }

    Timber postTimber() {
        return timber("post", 95, 95, postClass);
    }

    private static Timber timber(String id, double breadth, double depth, Optional<String> strengthClass) {
        return Stating.a(Timber.class)
                .with("id", id)
                .with("breadth", Length.ofMm(breadth))
                .with("depth", Length.ofMm(depth))
                .with("strengthClass", strengthClass)
                .made();
    }

    LoadPath loadPath() {
        return loadPath(layout());
    }

    LoadPath loadPath(Layout layout) {
        SortedMap<String, Material> materials = new TreeMap<>();
        materials.put("C24", new Material(E_C24, G_C24, DENSITY_C24));
        return LoadPath.derive(
                layout,
                new LoadModel(
                        List.of(new PlatformLoads(uniform, "", concentrated, finishes, snow)),
                        materials,
                        24,
                        GRAVITY,
                        shear,
                        KAPPA,
                        share,
                        leastDead,
                        new LoadModel.OnEdges(0, Derived.known(0.0), Derived.known(0.0), new TreeMap<>())));
    }

    DeckFixture leastDead(double kNPerM2) {
        leastDead = OptionalDouble.of(kNPerM2);
        return this;
    }

    /** The analysis of the first joist. */
    MemberAnalysis joist() {
        Layout layout = layout();
        return loadPath(layout)
                .member(layout.platforms().get(0).joists().get(0))
                .get();
    }

    MemberAnalysis beam() {
        Layout layout = layout();
        return loadPath(layout).member(layout.platforms().get(0).beams().get(0)).get();
    }

    Layout layout() {
        Pointer at = Pointer.of("/platforms/0");
        Boards boards =
                new Boards("board", new Direction(1, 0), gap.map(Length::ofMm), Optional.empty(), Optional.empty());
        Optional<JoistField> field = joistsGiven
                ? Optional.of(Stating.a(JoistField.class)
                        .with("timber", "joist")
                        .with("direction", new Direction(0, 1))
                        .with("spacing", Length.ofMm(spacing))
                        .made())
                : Optional.empty();
        Platform platform = Stating.a(Platform.class)
                .with("id", "p")
                .with("outline", rectangle(0, joistLength))
                .with("boards", boards)
                .with("joists", field)
                .made();
        List<HeavyItem> heavy = new ArrayList<>();
        for (Item i : items) {
            heavy.add(new HeavyItem(
                    "h" + heavy.size(),
                    Optional.empty(),
                    rectangle(i.fromY(), i.toY()),
                    new Measure(i.weightKN(), MeasureUnit.KILONEWTON),
                    i.nature(),
                    Optional.empty()));
        }
        Submission submission = new Submission(
                "fixture",
                Optional.empty(),
                LengthUnit.MILLIMETRE,
                LocalDate.of(2026, 1, 1),
                new RulesetChoice("nowhere", Optional.empty()),
                Stating.a(Use.class)
                        .with("occupancy", Occupancy.SINGLE_DWELLING)
                        .with("heavyItems", heavy)
                        .made(),
                Stating.a(Site.class).made(),
                List.of(boardTimber(), joistTimber(), beamTimber(), postTimber()),
                List.of(platform),
                Stating.a(Protection.class).made(),
                Optional.empty());
        PlatformLayout drawn = new PlatformLayout(
                0,
                at,
                "the terrace",
                platform,
                areaMm2(),
                Derived.known(0.0),
                boardsGiven ? Optional.of(boardField(boards)) : Optional.empty(),
                joistLines(),
                beamLines(),
                Optional.empty(),
                posts(),
                footings(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return new Layout(submission, new Deck(), List.of(drawn), List.of());
    }

    private List<PlanPoint> rectangle(double fromY, double toY) {
        return List.of(
                new PlanPoint(0, fromY),
                new PlanPoint(widthMm(), fromY),
                new PlanPoint(widthMm(), toY),
                new PlanPoint(0, toY));
    }

    private BoardField boardField(Boards boards) {
        return new BoardField(
                0,
                Pointer.of("/platforms/0/boards"),
                "boards of the terrace",
                boards,
                boardTimber(),
                Derived.known(spacing),
                Derived.known(0.0),
                Derived.known(0.0),
                Derived.known(0.0));
    }

    private List<MemberSupport> joistSupports() {
        List<MemberSupport> all = new ArrayList<>();
        ledgers.forEach(y -> all.add(support(y, MemberSupport.Kind.LEDGER, "wall")));
        beams.forEach(b -> all.add(support(b.yMm(), MemberSupport.Kind.BEAM, b.id())));
        all.sort((a, b) -> Double.compare(a.atMm(), b.atMm()));
        return all;
    }

    private static MemberSupport support(double at, MemberSupport.Kind kind, String id) {
        return new MemberSupport(
                at, kind, id, Pointer.of("/platforms/0"), id, OptionalDouble.empty(), JoistSeating.ON_TOP);
    }

    private static List<Span> spans(double length, List<MemberSupport> supports) {
        List<Span> all = new ArrayList<>();
        if (supports.isEmpty()) {
            return all;
        }
        double first = supports.get(0).atMm();
        double last = supports.get(supports.size() - 1).atMm();
        if (first > 0) {
            all.add(new Span(Span.Kind.CANTILEVER_AT_START, 0, first));
        }
        for (int i = 1; i < supports.size(); i++) {
            all.add(new Span(
                    Span.Kind.BETWEEN_SUPPORTS,
                    supports.get(i - 1).atMm(),
                    supports.get(i).atMm()));
        }
        if (last < length) {
            all.add(new Span(Span.Kind.CANTILEVER_AT_END, last, length));
        }
        return all;
    }

    private List<AreaStrip> stripsOfJoist() {
        List<AreaStrip> all = new ArrayList<>();
        if (strips.isEmpty()) {
            all.add(new AreaStrip(0, joistLength, spacing, spacing, spacing * joistLength, Optional.empty()));
        }
        all.addAll(strips);
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            double length = item.toY() - item.fromY();
            all.add(new AreaStrip(item.fromY(), item.toY(), spacing, spacing, spacing * length, Optional.of(i)));
        }
        return all;
    }

    private double joistX(int i) {
        return (i + 0.5) * spacing;
    }

    private List<JoistLine> joistLines() {
        List<JoistLine> all = new ArrayList<>();
        for (int i = 0; i < joistCount; i++) {
            all.add(new JoistLine(
                    0,
                    Pointer.of("/platforms/0/joists"),
                    "joist " + (i + 1) + " of the terrace",
                    i + 1,
                    joistTimber(),
                    Optional.empty(),
                    new PlanLine(new PlanPoint(joistX(i), 0), new PlanPoint(joistX(i), joistLength)),
                    joistLength,
                    joistSupports(),
                    spans(joistLength, joistSupports()),
                    stripsOfJoist(),
                    spacing,
                    joistCount,
                    Derived.known(0.0)));
        }
        return all;
    }

    private List<BeamLine> beamLines() {
        List<BeamLine> all = new ArrayList<>();
        for (int b = 0; b < beams.size(); b++) {
            BeamAt beam = beams.get(b);
            List<MemberSupport> supports = new ArrayList<>();
            for (int i = 0; i < beam.postsAtMm().length; i++) {
                supports.add(support(beam.postsAtMm()[i], MemberSupport.Kind.POST, beam.id() + "-" + i));
            }
            List<JoistBearing> bearings = new ArrayList<>();
            for (int i = 0; i < joistCount; i++) {
                bearings.add(new JoistBearing(i, supportIndex(beam.id()), joistX(i)));
            }
            all.add(new BeamLine(
                    0,
                    Pointer.of("/platforms/0/beams/" + b),
                    "beam " + beam.id(),
                    beam.id(),
                    beamTimber(),
                    2,
                    Optional.empty(),
                    new PlanLine(new PlanPoint(0, beam.yMm()), new PlanPoint(widthMm(), beam.yMm())),
                    widthMm(),
                    supports,
                    spans(widthMm(), supports),
                    bearings,
                    Derived.known(0.0)));
        }
        return all;
    }

    private int supportIndex(String beam) {
        List<MemberSupport> all = joistSupports();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).id().equals(beam)) {
                return i;
            }
        }
        throw new IllegalArgumentException(beam);
    }

    private List<PostPlace> posts() {
        List<PostPlace> all = new ArrayList<>();
        for (BeamAt beam : beams) {
            for (int i = 0; i < beam.postsAtMm().length; i++) {
                String id = beam.id() + "-" + i;
                all.add(new PostPlace(
                        0,
                        Pointer.of("/platforms/0/posts/" + all.size()),
                        "post " + id,
                        id,
                        Stating.a(Post.class)
                                .with("id", id)
                                .with("timber", "post")
                                .with("at", new PlanPoint(beam.postsAtMm()[i], beam.yMm()))
                                .with("footing", "f")
                                .made(),
                        postTimber(),
                        List.of(beam.id()),
                        postTop,
                        Derived.known(300.0),
                        Derived.known(0.0),
                        Derived.known(800.0),
                        Optional.empty()));
            }
        }
        return all;
    }

    /** Each post has its own footing, in the posts' order. */
    private List<FootingPlace> footings() {
        List<FootingPlace> all = new ArrayList<>();
        for (PostPlace p : posts()) {
            all.add(footing(List.of(p.id())));
        }
        return all;
    }

    static FootingPlace footing(List<String> posts) {
        return new FootingPlace(
                0,
                Pointer.of("/platforms/0/footings/0"),
                "footing f",
                Stating.a(Footing.class)
                        .with("id", "f")
                        .with("kind", FootingKind.PAD)
                        .with("shape", FootingShape.RECTANGULAR)
                        .with("breadth", Length.ofMm(500))
                        .made(),
                posts,
                500.0 * 500,
                Derived.known(CONCRETE_MM3),
                Derived.known(0.0));
    }

    /** Weight of timber, N, from its volume in mm3. */
    static double weightN(double volumeMm3) {
        return volumeMm3 * DENSITY_C24 * 1e-9 * GRAVITY;
    }

    /** Boards and finishes, N/mm2. */
    double permanentNPerMm2() {
        return weightN(28) * 145 / (145 + gap.orElse(0.0)) + finishes * 1e-3;
    }

    double joistWeightNPerMm() {
        return weightN(47.0 * 145);
    }

    double beamWeightNPerMm() {
        return weightN(2 * 47.0 * 195);
    }
}
