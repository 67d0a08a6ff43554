package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.Effects.SupportEffects;
import org.deckplanreview.loadpath.LoadModel;
import org.deckplanreview.loadpath.LoadModel.Material;
import org.deckplanreview.loadpath.LoadModel.PlatformLoads;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.LoadNature;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Timber;

/** What arrives at the wall and at the soil is the load of the deck: volumes and areas against reactions. */
class EquilibriumTest {

    private static final double OF_THE_TOTAL = 1e-9;
    /** ISO 80000-3. */
    private static final double GRAVITY = 9.80665;

    private static final double IMPOSED_KN_PER_M2 = 2.5;
    private static final double SNOW_KN_PER_M2 = 0.6;
    private static final double FINISHES_KN_PER_M2 = 0.05;

    /** Mean stiffness and density from EN 338:2016, Table 1. */
    private static final TreeMap<String, Material> MATERIALS = new TreeMap<>(Map.of(
            "C16", new Material(8000, 500, 370),
            "C18", new Material(9000, 560, 380),
            "C24", new Material(11000, 690, 420),
            "D30", new Material(11000, 690, 640)));

    /** The samples that are complete and graded by strength class, the L-shaped one with its planter among them, and drawn decks. */
    @Provide
    Arbitrary<Submission> decks() {
        List<Submission> samples = BuiltIn.samples().stream()
                .filter(s -> !s.endsWith("first-sketch.json"))
                .map(s -> BuiltIn.submission(BuiltIn.read(s)))
                .filter(s ->
                        s.timbers().stream().allMatch(t -> t.strengthClass().isPresent()))
                .toList();
        return Arbitraries.oneOf(Arbitraries.of(samples), DrawnDeck.any().map(DrawnDeck::submission));
    }

    @Property(tries = 60)
    void reactions_of_any_deck_add_up_to_its_load(@ForAll("decks") Submission submission) {
        Layout layout = Layout.derive(submission);
        PlatformLayout platform = layout.platforms().get(0);
        assertThat(layout.platforms()).hasSize(1);
        LoadPath path = LoadPath.derive(
                layout,
                new LoadModel(
                        List.of(new PlatformLoads(
                                Derived.known(IMPOSED_KN_PER_M2),
                                Derived.known(2000.0),
                                FINISHES_KN_PER_M2,
                                SNOW_KN_PER_M2)),
                        MATERIALS,
                        24,
                        GRAVITY,
                        true,
                        1.2,
                        0.5,
                        OptionalDouble.empty()));
        Load arrived = arrived(platform, path);
        Load expected = load(submission, platform);
        double rounding = OF_THE_TOTAL * (expected.permanent + expected.imposed + expected.snow);
        assertThat(arrived.permanent).isCloseTo(expected.permanent, within(rounding));
        assertThat(arrived.imposed).isCloseTo(expected.imposed, within(rounding));
        assertThat(arrived.snow).isCloseTo(expected.snow, within(rounding));
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
                    sum = sum.plus(new Load(
                            whole(path, joist, i, new ActionFactors(1, 0, 0, 0)),
                            whole(path, joist, i, new ActionFactors(0, 1, 0, 0)),
                            whole(path, joist, i, new ActionFactors(0, 0, 0, 1))));
                }
            }
        }
        return sum;
    }

    /** Of a load that may stand in parts, each part is adverse to the largest or to the smallest reaction: they add up to all. */
    private static double whole(LoadPath path, Member member, int support, ActionFactors one) {
        SupportEffects s = path.member(member).get().effects(one).supports().get(support);
        boolean isPermanent = one.permanent() == 1;
        return isPermanent ? s.largestReactionN() : s.largestReactionN() + s.smallestReactionN();
    }

    private static Load load(Submission submission, PlatformLayout platform) {
        double area = area(platform.platform().outline());
        BoardField boards = platform.boards().orElseThrow();
        double covered = boards.timber().breadth().mm()
                / (boards.timber().breadth().mm()
                        + boards.boards().gap().orElseThrow().mm());
        double permanent = FINISHES_KN_PER_M2 * 1e-3 * area
                + weight(
                        boards.timber(),
                        area * covered * boards.timber().depth().mm());
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
        return new Load(permanent, imposed, SNOW_KN_PER_M2 * 1e-3 * area);
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
