package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.deckplanreview.generator.DeckGenerator;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LoadModel;
import org.deckplanreview.loadpath.LoadModel.Material;
import org.deckplanreview.loadpath.LoadModel.OnEdges;
import org.deckplanreview.loadpath.LoadModel.PlatformLoads;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.GuardInfill;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.LoadNature;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;

/**
 * What arrives at the wall and at the soil is the load of the deck, its guards and the heads of its stairs: volumes, areas
 * and lengths against reactions.
 */
class EquilibriumTest {

    private static final double OF_THE_TOTAL = 1e-9;
    /** ISO 80000-3. */
    private static final double GRAVITY = 9.80665;

    private static final double IMPOSED_KN_PER_M2 = 2.5;
    private static final double SNOW_KN_PER_M2 = 0.6;
    private static final double FINISHES_KN_PER_M2 = 0.05;
    private static final double STAIR_KN_PER_M2 = 0.5;
    private static final double STAIR_IMPOSED_KN_PER_M2 = 3;
    private static final TreeMap<GuardInfill, Double> GUARD_KN_PER_M =
            new TreeMap<>(Map.of(GuardInfill.BALUSTERS, 0.25, GuardInfill.HORIZONTAL_RAILS, 0.35));

    /** Mean stiffness and density from EN 338:2016, Table 1. */
    private static final TreeMap<String, Material> MATERIALS = new TreeMap<>(Map.of(
            "C16", new Material(8000, 500, 370),
            "C18", new Material(9000, 560, 380),
            "C24", new Material(11000, 690, 420),
            "D30", new Material(11000, 690, 640)));

    /** The samples that are complete, carried and graded by strength class, the L-shaped one with its planter among them, and drawn decks. */
    @Provide
    Arbitrary<Submission> decks() {
        List<Submission> samples = BuiltIn.samples().stream()
                .filter(s -> !s.endsWith("first-sketch.json"))
                .map(s -> BuiltIn.submission(BuiltIn.read(s)))
                .filter(s ->
                        s.timbers().stream().allMatch(t -> t.strengthClass().isPresent()))
                .filter(s -> {
                    Layout layout = Layout.derive(s);
                    LoadPath path = path(layout);
                    return layout.platforms().stream().allMatch(p -> isCarried(p, path));
                })
                .toList();
        return Arbitraries.oneOf(Arbitraries.of(samples), DrawnDeck.any().map(DrawnDeck::submission));
    }

    /** Invented decks, of one or more platforms, that are complete as far as loads go. */
    @Provide
    Arbitrary<Submission> generated() {
        return Arbitraries.integers()
                .between(0, 100_000)
                .map(number -> BuiltIn.submission(new DeckGenerator(11).deck(number)))
                .filter(EquilibriumTest::isComplete);
    }

    private static boolean isComplete(Submission submission) {
        if (!submission.timbers().stream()
                .allMatch(t -> MATERIALS.containsKey(t.strengthClass().orElse("")))) {
            return false;
        }
        Layout layout = Layout.derive(submission);
        LoadPath path = path(layout);
        return layout.platforms().stream()
                .allMatch(p -> p.boards()
                                .filter(b -> b.boards().gap().isPresent())
                                .isPresent()
                        && p.guards().stream().allMatch(g -> g.guard().infill().isPresent())
                        && isCarried(p, path)
                        && p.posts().stream()
                                .allMatch(post -> p.footings().stream()
                                        .anyMatch(f -> f.posts().contains(post.id())))
                        && p.footings().stream().allMatch(f -> path.footing(f).isKnown()));
    }

    private static boolean isCarried(PlatformLayout platform, LoadPath path) {
        return Stream.concat(platform.joists().stream(), platform.beams().stream())
                .allMatch(m -> path.member(m).isKnown());
    }

    @Property(tries = 20)
    void reactions_of_a_generated_deck_add_up_to_its_load(@ForAll("generated") Submission submission) {
        reactions_of_any_deck_add_up_to_its_load(submission);
    }

    @Property(tries = 60)
    void reactions_of_any_deck_add_up_to_its_load(@ForAll("decks") Submission submission) {
        Layout layout = Layout.derive(submission);
        LoadPath path = path(layout);
        Load arrived = new Load(0, 0, 0);
        Load expected = new Load(0, 0, 0);
        for (PlatformLayout platform : layout.platforms()) {
            arrived = arrived.plus(arrived(platform, path));
            expected = expected.plus(load(submission, platform));
        }
        double rounding = OF_THE_TOTAL * (expected.permanent + expected.imposed + expected.snow);
        assertThat(arrived.permanent).isCloseTo(expected.permanent, within(rounding));
        assertThat(arrived.imposed).isCloseTo(expected.imposed, within(rounding));
        assertThat(arrived.snow).isCloseTo(expected.snow, within(rounding));
    }

    private static LoadPath path(Layout layout) {
        return LoadPath.derive(
                layout,
                new LoadModel(
                        layout.platforms().stream()
                                .map(p -> new PlatformLoads(
                                        Derived.known(IMPOSED_KN_PER_M2),
                                        "",
                                        Derived.known(2000.0),
                                        FINISHES_KN_PER_M2,
                                        SNOW_KN_PER_M2))
                                .toList(),
                        MATERIALS,
                        24,
                        GRAVITY,
                        true,
                        1.2,
                        0.5,
                        OptionalDouble.empty(),
                        new OnEdges(
                                STAIR_KN_PER_M2,
                                Derived.known(STAIR_IMPOSED_KN_PER_M2),
                                Derived.known(2000.0),
                                GUARD_KN_PER_M)));
    }

    /** Characteristic forces, N. */
    private record Load(double permanent, double imposed, double snow) {
        Load plus(Load other) {
            return new Load(permanent + other.permanent, imposed + other.imposed, snow + other.snow);
        }
    }

    private static Load arrived(PlatformLayout platform, LoadPath path) {
        Load sum = new Load(0, 0, 0);
        for (FootingPlace footing : platform.footings()) {
            ActionForces f = path.footing(footing).get();
            sum = sum.plus(new Load(f.permanentN(), f.imposedFullN(), f.snowN()));
        }
        for (JoistLine joist : platform.joists()) {
            for (int i = 0; i < joist.supports().size(); i++) {
                if (joist.supports().get(i).kind() == MemberSupport.Kind.LEDGER) {
                    ActionForces f = path.member(joist).get().forces(i);
                    sum = sum.plus(new Load(f.permanentN(), f.imposedFullN(), f.snowN()));
                }
            }
        }
        return sum;
    }

    private static Load load(Submission submission, PlatformLayout platform) {
        double area = area(platform.platform().outline());
        BoardField boards = platform.boards().orElseThrow();
        double covered = boards.timber().breadth().mm()
                / (boards.timber().breadth().mm()
                        + boards.boards().gap().orElseThrow().mm());
        double permanent = FINISHES_KN_PER_M2 * 1e-3 * area
                + boards.boards()
                        .manufactured()
                        .map(made ->
                                made.weight().orElseThrow().in(MeasureUnit.KILONEWTON_PER_SQUARE_METRE) * 1e-3 * area)
                        .orElseGet(() -> weight(
                                boards.timber(),
                                area * covered * boards.timber().depth().mm()));
        for (JoistLine joist : platform.joists()) {
            permanent += weight(joist.timber(), section(joist.timber()) * joist.lengthMm());
        }
        for (BeamLine beam : platform.beams()) {
            permanent += weight(beam.timber(), beam.plies() * section(beam.timber()) * beam.lengthMm());
        }
        for (PostPlace post : platform.posts()) {
            double length = post.topLevelMm().get() - post.bottomLevelMm().get();
            permanent += weight(post.timber(), section(post.timber()) * length);
        }
        double imposed = IMPOSED_KN_PER_M2 * 1e-3 * area;
        for (HeavyItem item : submission.use().heavyItems()) {
            double n = item.weight().in(MeasureUnit.KILONEWTON) * 1000;
            permanent += item.nature() == LoadNature.PERMANENT ? n : 0;
            imposed += item.nature() == LoadNature.VARIABLE ? n : 0;
        }
        for (GuardRun guard : platform.guards()) {
            double length =
                    guard.edges().stream().mapToDouble(e -> length(e.line())).sum();
            permanent += length * guardNPerMm(guard.guard());
        }
        for (StairRun run : platform.stairs()) {
            Stair stair = run.stair();
            double going = (stair.risers() - 1) * stair.going().mm();
            double rise = stair.rise().mm() / stair.going().mm() * going;
            double plan = length(stair.line()) * going;
            permanent += STAIR_KN_PER_M2 * 1e-3 * plan / 2
                    + run.guard()
                            .map(g -> Math.hypot(going, rise) * guardNPerMm(g))
                            .orElse(0.0);
            imposed += STAIR_IMPOSED_KN_PER_M2 * 1e-3 * plan / 2;
        }
        return new Load(permanent, imposed, SNOW_KN_PER_M2 * 1e-3 * area);
    }

    private static double guardNPerMm(Guard guard) {
        return GUARD_KN_PER_M.get(guard.infill().orElseThrow());
    }

    private static double length(PlanLine line) {
        return Math.hypot(
                line.to().xMm() - line.from().xMm(),
                line.to().yMm() - line.from().yMm());
    }

    private static double section(Timber timber) {
        return timber.breadth().mm() * timber.depth().mm();
    }

    private static double weight(Timber timber, double volumeMm3) {
        double density = MATERIALS.get(timber.strengthClass().orElseThrow()).meanDensityKgPerM3();
        return density * 1e-9 * GRAVITY * volumeMm3;
    }

    /** Half the sum of the corners' cross products. */
    private static double area(List<PlanPoint> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            PlanPoint a = outline.get(i);
            PlanPoint b = outline.get((i + 1) % outline.size());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        return Math.abs(twice) / 2;
    }
}
