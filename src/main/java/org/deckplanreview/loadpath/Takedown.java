package org.deckplanreview.loadpath;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BesideJoists;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.loadpath.BeamActions.Landing;
import org.deckplanreview.loadpath.Frame.Seats;
import org.deckplanreview.loadpath.JoistActions.AreaLoads;
import org.deckplanreview.loadpath.JoistActions.OwnLoads;
import org.deckplanreview.loadpath.LoadModel.PlatformLoads;
import org.deckplanreview.submission.Timber;

/** Takes loads down from joist to beam, post and footing. */
final class Takedown implements LoadPath {

    private static final double N_PER_MM3_OF_KN_PER_M3 = 1e-6;

    private static final Formula AT_LEAST = Formula.of("g_k = max(g_o, g_min - g_j)", KILONEWTON_PER_SQUARE_METRE, "");

    private final Layout layout;
    private final LoadModel model;
    private final Weights weights;
    private final Attachments attachments;
    private final Map<Statics, BeamStatics> shared = new LinkedHashMap<>();
    private final Map<Place, Derived<BeamStatics>> members = new LinkedHashMap<>();

    /** What members must have in common to share their statics. */
    private record Statics(Frame frame, MemberActions actions) {}

    /** A member by its platform and its number among the joists, or its beam's id and its line, which pieces of one beam do not share. */
    private record Place(int platform, String member) {
        static Place of(Member member) {
            String name = member instanceof JoistLine j
                    ? "joist " + j.number()
                    : "beam " + ((BeamLine) member).id() + " " + member.line();
            return new Place(member.platformIndex(), name);
        }
    }

    private Takedown(Layout layout, LoadModel model) {
        this.layout = layout;
        this.model = model;
        this.weights = new Weights(layout.submission(), model);
        this.attachments = Attachments.derive(layout, model.onEdges());
    }

    static LoadPath derive(Layout layout, LoadModel model) {
        Takedown takedown = new Takedown(layout, model);
        for (PlatformLayout platform : layout.platforms()) {
            for (JoistLine joist : platform.joists()) {
                takedown.members.put(Place.of(joist), takedown.joist(platform, joist));
            }
            for (BeamLine beam : platform.beams()) {
                takedown.members.put(Place.of(beam), takedown.beam(platform, beam));
            }
        }
        return takedown;
    }

    @Override
    public Derived<MemberAnalysis> member(Member member) {
        return statics(member).with(weights.ofMember(member), (s, weight) -> new StaticsOfMember(member, s, weight));
    }

    private final class StaticsOfMember implements MemberAnalysis {
        private final Member member;
        private final BeamStatics statics;
        private final Sheet weight;

        StaticsOfMember(Member member, BeamStatics statics, Sheet weight) {
            this.member = member;
            this.statics = statics;
            this.weight = weight;
        }

        @Override
        public Member member() {
            return member;
        }

        @Override
        public Sheet weight() {
            return weight;
        }

        @Override
        public List<ActionForces> carried() {
            if (!(member instanceof BeamLine beam)) {
                return List.of();
            }
            PlatformLayout platform = layout.platformOf(beam);
            return beam.joists().stream()
                    .map(b -> statics(platform.joists().get(b.joist())).map(j -> j.forces(b.joistSupport())))
                    .flatMap(forces -> forces.optional().stream())
                    .toList();
        }

        @Override
        public double attachedWeightN() {
            return attachments.on(member).get().weightN();
        }

        @Override
        public double attachedImposedN() {
            return attachments.on(member).get().imposedN();
        }

        @Override
        public Effects effects(ActionFactors factors) {
            return statics.effects(factors);
        }

        @Override
        public LiftForces lift(int support) {
            return statics.lift(support);
        }

        @Override
        public double totalN(Action action) {
            return statics.totalN(action);
        }

        @Override
        public ActionForces forces(int support) {
            return statics.forces(support);
        }

        @Override
        public MemberDiagrams diagrams(List<ActionFactors> alternatives) {
            return statics.diagrams(alternatives);
        }
    }

    @Override
    public Derived<BoardLoads> boards(BoardField field) {
        PlatformLoads loads = model.platforms().get(field.platformIndex());
        double pitchMm = Weights.pitchMm(field);
        return areaLoads(field)
                .with(
                        loads.concentratedN(),
                        (area, n) -> new BoardLoads(
                                area.permanentNPerMm2() * pitchMm,
                                area.imposedNPerMm2() * pitchMm,
                                area.snowNPerMm2() * pitchMm,
                                n));
    }

    @Override
    public Derived<ActionForces> post(PostPlace post) {
        return all(reactions(post, BeamStatics::forces)).map(Takedown::together);
    }

    @Override
    public Derived<LiftForces> lift(PostPlace post) {
        return all(reactions(post, BeamStatics::lift)).map(Takedown::allLifts);
    }

    @Override
    public Derived<LiftForces> lift(FootingPlace footing) {
        if (footing.isBlock()) {
            return all(onBlock(footing, BeamStatics::lift)).map(Takedown::allLifts);
        }
        return all(layout.platformOf(footing).posts().stream()
                        .filter(p -> footing.posts().contains(p.id()))
                        .map(p -> lift(p).with(postWeightN(p), LiftForces::withWeight))
                        .toList())
                .map(Takedown::allLifts);
    }

    private static LiftForces allLifts(List<LiftForces> lifts) {
        return lifts.stream().reduce(LiftForces.NONE, LiftForces::and);
    }

    /** One force of each beam on the post. */
    /** Whether a piece of the beam rests on the post. */
    private boolean reaches(String beam, PostPlace post) {
        return layout.platformOf(post).beams().stream()
                .filter(b -> b.id().equals(beam))
                .anyMatch(b -> b.restsOn(post));
    }

    private <T> List<Derived<T>> reactions(PostPlace post, BiFunction<BeamStatics, Integer, T> force) {
        List<Derived<T>> reactions = new ArrayList<>();
        for (BeamLine beam : layout.platformOf(post).beams()) {
            if (post.beams().contains(beam.id()) && !reaches(beam.id(), post)) {
                reactions.add(Derived.missing(
                        beam.pointer().child("line"),
                        "a line of " + beam.label() + " that reaches over " + post.label()));
            }
            for (int i = 0; i < beam.supports().size(); i++) {
                MemberSupport s = beam.supports().get(i);
                if (s.kind() == MemberSupport.Kind.POST && s.id().equals(post.id())) {
                    int support = i;
                    reactions.add(statics(beam).map(b -> force.apply(b, support)));
                }
            }
        }
        return reactions;
    }

    /** One force of each joist on the block; what is missing where none lies on it. */
    private <T> List<Derived<T>> onBlock(FootingPlace block, BiFunction<BeamStatics, Integer, T> force) {
        List<Derived<T>> reactions = new ArrayList<>();
        for (JoistLine joist : layout.platformOf(block).joists()) {
            for (int i = 0; i < joist.supports().size(); i++) {
                if (block.carries(joist.supports().get(i))) {
                    int support = i;
                    reactions.add(statics(joist).map(j -> force.apply(j, support)));
                }
            }
        }
        if (reactions.isEmpty()) {
            reactions.add(
                    Derived.missing(block.pointer().child("at"), "a place of " + block.label() + " under a joist"));
        }
        return reactions;
    }

    @Override
    public Derived<Double> postWeightN(PostPlace post) {
        return weights.ofPostN(post);
    }

    @Override
    public Derived<ActionForces> footing(FootingPlace footing) {
        if (footing.isBlock()) {
            return all(onBlock(footing, BeamStatics::forces)).map(Takedown::together);
        }
        return all(layout.platformOf(footing).posts().stream()
                        .filter(p -> footing.posts().contains(p.id()))
                        .map(p -> post(p).with(postWeightN(p), Takedown::withWeight))
                        .toList())
                .map(Takedown::together);
    }

    @Override
    public Derived<Double> footingWeightN(FootingPlace footing) {
        return footing.concreteVolumeMm3().map(mm3 -> mm3 * model.concreteWeightKNPerM3() * N_PER_MM3_OF_KN_PER_M3);
    }

    @Override
    public Derived<Double> imposedKNPerM2(int platformIndex) {
        return model.platforms().get(platformIndex).uniformKNPerM2();
    }

    @Override
    public Derived<DeckLoads> deckLoads(int platformIndex) {
        PlatformLayout platform = layout.platforms().get(platformIndex);
        PlatformLoads loads = model.platforms().get(platformIndex);
        Derived<Double> joists = joistsNPerMm2(platform);
        Derived<BoardField> boards = boards(platform);
        Derived<Double> taken = boards.flatMap(b -> permanent(b, loads))
                .map(s -> Weights.nPerMm2(s.value("g_k")))
                .with(joists, Double::sum);
        Derived<Double> own = boards.flatMap(b -> onJoists(b, loads, OnJoists.OWN))
                .map(s -> Weights.nPerMm2(s.value(OnJoists.OWN.symbol)))
                .with(joists, Double::sum);
        return taken.with(own, (t, o) -> new double[] {Weights.kNPerM2(t), Weights.kNPerM2(o)})
                .with(loads.uniformKNPerM2(), (p, q) -> new DeckLoads(p[0], p[1], q, loads.snowKNPerM2()));
    }

    private static Derived<BoardField> boards(PlatformLayout platform) {
        return platform.boards()
                .map(Derived::known)
                .orElseGet(
                        () -> Derived.missing(platform.pointer().child("boards"), "the boards of " + platform.label()));
    }

    private Derived<BeamStatics> joist(PlatformLayout platform, JoistLine joist) {
        Derived<AreaLoads> area = boards(platform).flatMap(this::areaLoads);
        Derived<Seats> seats = seats(
                joist,
                () -> Derived.missing(
                        platform.pointer().child("beams"),
                        "supports for " + joist.label() + ": it "
                                + counted(joist, "crosses", "beam or ledger", "beams or ledgers")));
        return analysed(
                joist,
                seats,
                attachments
                        .on(joist)
                        .flatMap(attached -> area.with(
                                ownLoads(joist),
                                (a, own) -> JoistActions.of(
                                        joist,
                                        a,
                                        own,
                                        layout.submission().use().heavyItems(),
                                        attached,
                                        sharing(platform, joist)))));
    }

    /** None where boards lie along the joists, are manufactured or their stiffness is not known. */
    private Sharing sharing(PlatformLayout platform, JoistLine joist) {
        return platform.boards()
                .filter(BoardField::isSawn)
                .flatMap(b -> weights.material(b.timber())
                        .with(b.spanMm(), (material, span) -> {
                            Timber t = b.timber();
                            double inertia = t.breadth().mm() * cube(t.depth().mm()) / 12;
                            return new Sharing(
                                    6 * material.e0MeanNPerMm2() * inertia / cube(span),
                                    model.concentratedShareOnJoist(),
                                    BesideJoists.spansBetweenNeighbours(joist, platform.joists()));
                        })
                        .optional())
                .orElse(Sharing.NONE);
    }

    private static double cube(double x) {
        return x * x * x;
    }

    private Derived<BeamStatics> beam(PlatformLayout platform, BeamLine beam) {
        Derived<List<Landing>> landings = platform.platform().joists().isPresent()
                ? all(beam.joists().stream()
                        .map(b -> landing(platform, beam, b))
                        .toList())
                : Derived.missing(
                        platform.pointer().child("joists"), "the joists: their timber, direction and spacing");
        Derived<Seats> seats = seats(
                beam,
                () -> Derived.missing(
                        beam.pointer().child("posts"),
                        "posts for " + beam.label() + ": it " + counted(beam, "rests on", "post", "posts")));
        return analysed(
                beam,
                seats,
                attachments
                        .on(beam)
                        .flatMap(attached -> landings.with(
                                ownLoads(beam), (joists, own) -> BeamActions.of(beam, joists, own, attached))));
    }

    private Derived<Landing> landing(PlatformLayout platform, BeamLine beam, JoistBearing bearing) {
        int support = bearing.joistSupport();
        return statics(platform.joists().get(bearing.joist()))
                .map(joist -> new Landing(
                        Frame.onMember(bearing.atMm(), beam),
                        joist.passedOn(support),
                        joist.permanentUpN(support),
                        joist.attachedFullN(support),
                        joist.forces(support).imposedFullN()));
    }

    private Derived<BeamStatics> statics(Member member) {
        return members.get(Place.of(member));
    }

    private Derived<BeamStatics> analysed(Member member, Derived<Seats> seats, Derived<MemberActions> actions) {
        return weights.material(member.timber())
                .with(seats, (material, s) -> Frame.of(member, s, material, model))
                .with(
                        actions,
                        (frame, a) -> shared.computeIfAbsent(
                                new Statics(frame, a), s -> new BeamStatics(s.frame(), s.actions())));
    }

    private static Derived<Seats> seats(Member member, Supplier<Derived<Seats>> missing) {
        Seats seats = Seats.of(member);
        return seats.suffice() ? Derived.known(seats) : missing.get();
    }

    private static String counted(Member member, String verb, String one, String many) {
        int n = member.supports().size();
        String found =
                switch (n) {
                    case 0 -> "no " + one;
                    case 1 -> "1 " + one;
                    default -> n + " " + many + " at one place";
                };
        return verb + " " + found + " and needs at least " + Seats.FEWEST + " apart from each other";
    }

    private Derived<AreaLoads> areaLoads(BoardField boards) {
        return areaSheet(boards)
                .map(sheet -> new AreaLoads(
                        Weights.nPerMm2(sheet.value("g_k")),
                        Weights.nPerMm2(sheet.value("q_k")),
                        Weights.nPerMm2(
                                model.platforms().get(boards.platformIndex()).snowKNPerM2())));
    }

    @Override
    public Derived<Sheet> areaLoads(int platformIndex) {
        return boards(layout.platforms().get(platformIndex)).flatMap(this::areaSheet);
    }

    private Derived<Sheet> areaSheet(BoardField boards) {
        PlatformLoads loads = model.platforms().get(boards.platformIndex());
        return permanent(boards, loads).with(loads.uniformKNPerM2(), (permanent, uniform) -> {
            Sheet sheet = Sheet.on(permanent);
            sheet.given(
                    "q_k",
                    uniform,
                    KILONEWTON_PER_SQUARE_METRE,
                    "imposed load on the boards",
                    loads.imposedSource(),
                    Pointer.of("/use"));
            if (loads.snowKNPerM2() != 0) {
                sheet.given(
                        "s_k",
                        loads.snowKNPerM2(),
                        KILONEWTON_PER_SQUARE_METRE,
                        "snow on the boards",
                        "",
                        Pointer.of("/site"));
            }
            return sheet;
        });
    }

    /** g_k of boards and finishes; what the joists lack of the least permanent load counts as if it lay on them. */
    private Derived<Sheet> permanent(BoardField boards, PlatformLoads loads) {
        if (model.leastDeadKNPerM2().isEmpty()) {
            return onJoists(boards, loads, OnJoists.ALL);
        }
        double least = model.leastDeadKNPerM2().getAsDouble();
        return onJoists(boards, loads, OnJoists.OWN)
                .with(joistsNPerMm2(layout.platforms().get(boards.platformIndex())), (above, joists) -> {
                    Sheet sheet = Sheet.on(above);
                    sheet.given("g_min", least, KILONEWTON_PER_SQUARE_METRE, "minimum permanent load of a deck", "");
                    sheet.given(
                            "g_j", Weights.kNPerM2(joists), KILONEWTON_PER_SQUARE_METRE, "weight of the joists", "");
                    return calculated(sheet, AT_LEAST);
                });
    }

    /** What boards and finishes come to: the whole permanent load on the joists, or what it is before a minimum counts. */
    private enum OnJoists {
        ALL("g_k"),
        OWN("g_o");

        private final String symbol;
        private final Formula ofBoards;
        private final Formula withFinishes;

        OnJoists(String symbol) {
            this.symbol = symbol;
            ofBoards = Formula.of(symbol + " = g_b", KILONEWTON_PER_SQUARE_METRE, "");
            withFinishes = Formula.of(symbol + " = g_b + g_f", KILONEWTON_PER_SQUARE_METRE, "");
        }
    }

    private Derived<Sheet> onJoists(BoardField boards, PlatformLoads loads, OnJoists sum) {
        return weights.ofBoards(boards).map(own -> {
            Sheet sheet = Sheet.on(own);
            if (loads.finishesKNPerM2() == 0) {
                return calculated(sheet, sum.ofBoards);
            }
            sheet.given(
                    "g_f",
                    loads.finishesKNPerM2(),
                    KILONEWTON_PER_SQUARE_METRE,
                    "finishes",
                    "",
                    layout.platforms().get(boards.platformIndex()).pointer().child("finishes"));
            return calculated(sheet, sum.withFinishes);
        });
    }

    private static Sheet calculated(Sheet sheet, Formula formula) {
        sheet.calculate(formula);
        return sheet;
    }

    private Derived<Double> joistsNPerMm2(PlatformLayout platform) {
        return platform.joists().stream()
                .findFirst()
                .map(joist -> weights.ofMemberNPerMm(joist)
                        .map(w -> w
                                / platform.platform()
                                        .joists()
                                        .orElseThrow()
                                        .spacing()
                                        .mm()))
                .orElse(Derived.known(0.0));
    }

    private Derived<OwnLoads> ownLoads(Member member) {
        PlatformLoads loads = model.platforms().get(member.platformIndex());
        return weights.ofMemberNPerMm(member).with(loads.concentratedN(), OwnLoads::new);
    }

    private static ActionForces withWeight(ActionForces f, double weightN) {
        return new ActionForces(
                f.permanentN() + weightN, f.imposedLargestN(), f.imposedFullN(), f.concentratedN(), f.snowN());
    }

    /** The forces of several at once; the concentrated load stands once, where it is worst. */
    private static ActionForces together(List<ActionForces> forces) {
        ActionForces sum = new ActionForces(0, 0, 0, 0, 0);
        for (ActionForces f : forces) {
            sum = new ActionForces(
                    sum.permanentN() + f.permanentN(),
                    sum.imposedLargestN() + f.imposedLargestN(),
                    sum.imposedFullN() + f.imposedFullN(),
                    Math.max(sum.concentratedN(), f.concentratedN()),
                    sum.snowN() + f.snowN());
        }
        return sum;
    }

    private static <T> Derived<List<T>> all(List<Derived<T>> each) {
        List<Need> needs = each.stream().flatMap(d -> d.needs().stream()).toList();
        return needs.isEmpty() ? Derived.known(each.stream().map(Derived::get).toList()) : Derived.missing(needs);
    }
}
