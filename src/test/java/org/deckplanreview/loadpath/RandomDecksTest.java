package org.deckplanreview.loadpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.loadpath.Effects.SpanEffects;
import org.deckplanreview.loadpath.Effects.SupportEffects;
import org.deckplanreview.submission.LoadNature;

/** Decks on a wall or free, of one to five rows of beams, with cantilevers, heavy items and snow. */
class RandomDecksTest {

    private static final double SPACING = 400;

    /**
     * @param spans of the joists, mm
     * @param posts under each beam
     * @param heavy kN, or 0
     */
    record Shape(
            int joists,
            double before,
            List<Integer> spans,
            double behind,
            boolean onWall,
            int posts,
            double overhang,
            double heavy,
            LoadNature nature,
            boolean shear) {

        double length(double scale) {
            return scale * (start() + spans.stream().mapToInt(i -> i).sum() + behind);
        }

        private double start() {
            return onWall ? 0 : before;
        }

        DeckFixture deck(double scale, double uniform) {
            DeckFixture deck = DeckFixture.deck()
                    .joists(joists, SPACING, length(scale))
                    .uniform(Derived.known(uniform))
                    .snow(0.6)
                    .finishes(0.05);
            double at = start();
            for (int i = 0; i <= spans.size(); i++) {
                if (i == 0 && onWall) {
                    deck.ledgerAt(0);
                } else {
                    deck.beamAt("B" + i, at * scale, postsAt());
                }
                at += i < spans.size() ? spans.get(i) : 0;
            }
            if (heavy > 0) {
                deck.heavyItem(heavy, nature, 0.2 * length(scale), 0.35 * length(scale));
            }
            return shear ? deck.shearDeformation() : deck;
        }

        private double[] postsAt() {
            double width = joists * SPACING;
            double first = overhang * width;
            double[] at = new double[posts];
            for (int i = 0; i < posts; i++) {
                at[i] = first + (width - 2 * first) * i / (posts - 1);
            }
            return at;
        }
    }

    @Provide
    Arbitrary<Shape> shapes() {
        Arbitrary<List<Integer>> spans =
                Arbitraries.integers().between(500, 5000).list().ofMinSize(1).ofMaxSize(4);
        Arbitrary<Double> cantilever = Arbitraries.integers().between(0, 1500).map(i -> (double) i);
        Arbitrary<double[]> numbers = Arbitraries.integers()
                .between(0, 1000)
                .array(Integer[].class)
                .ofSize(5)
                .map(a -> Arrays.stream(a).mapToDouble(i -> i / 1000.0).toArray());
        return Combinators.combine(Arbitraries.integers().between(2, 8), cantilever, spans, cantilever, numbers)
                .as((joists, before, between, behind, n) -> new Shape(
                        joists,
                        before,
                        between,
                        behind,
                        n[0] < 0.5,
                        2 + (int) (2.99 * n[1]),
                        0.3 * n[2],
                        n[3] < 0.3 ? 0 : 10 * n[3],
                        n[4] < 0.5 ? LoadNature.PERMANENT : LoadNature.VARIABLE,
                        n[4] < 0.25 || n[4] > 0.75));
    }

    /** Weights from volumes and areas, against what arrives at the wall and under the posts. */
    @Property(tries = 200)
    void what_arrives_at_soil_and_wall_is_the_load_of_the_deck(@ForAll("shapes") Shape shape) {
        DeckFixture deck = shape.deck(1, 2.5);
        Layout layout = deck.layout();
        LoadPath path = deck.loadPath(layout);
        PlatformLayout p = layout.platforms().get(0);
        double permanent = 0;
        double imposed = 0;
        double snow = 0;
        for (FootingPlace f : p.footings()) {
            ActionForces forces = path.footing(f).get();
            permanent += forces.permanentN();
            imposed += forces.imposedFullN();
            snow += forces.snowN();
        }
        if (shape.onWall) {
            for (JoistLine j : p.joists()) {
                permanent +=
                        wallReaction(path, j, new ActionFactors(1, 0, 0, 0)).largestReactionN();
                SupportEffects parts = wallReaction(path, j, new ActionFactors(0, 1, 0, 0));
                // every part is adverse to one of the two, so that they add up to the full load
                imposed += parts.largestReactionN() + parts.smallestReactionN();
                SupportEffects snowOnly = wallReaction(path, j, new ActionFactors(0, 0, 0, 1));
                snow += snowOnly.largestReactionN() + snowOnly.smallestReactionN();
            }
        }
        double area = deck.areaMm2();
        double item = shape.heavy * 1000;
        double expectedPermanent = deck.permanentNPerMm2() * area
                + deck.joistWeightNPerMm() * shape.length(1) * shape.joists
                + deck.beamWeightNPerMm() * deck.widthMm() * p.beams().size()
                + DeckFixture.weightN(95.0 * 95 * DeckFixture.POST_LENGTH)
                        * p.posts().size()
                + (shape.nature == LoadNature.PERMANENT ? item : 0);
        double expectedImposed = 2.5e-3 * area + (shape.nature == LoadNature.VARIABLE ? item : 0);
        double all = expectedPermanent + expectedImposed;
        assertThat(permanent).isCloseTo(expectedPermanent, within(1e-9 * all));
        assertThat(imposed).isCloseTo(expectedImposed, within(1e-9 * all));
        assertThat(snow).isCloseTo(0.6e-3 * area, within(1e-9 * all));
    }

    private static SupportEffects wallReaction(LoadPath path, JoistLine joist, ActionFactors f) {
        return path.member(joist).get().effects(f).supports().get(0);
    }

    @Property(tries = 100)
    void loads_that_may_be_anywhere_are_never_milder_than_all_of_them_at_once(@ForAll("shapes") Shape shape) {
        DeckFixture deck = shape.deck(1, 2.5);
        Layout layout = deck.layout();
        LoadPath path = deck.loadPath(layout);
        for (PostPlace post : layout.platforms().get(0).posts()) {
            ActionForces f = path.post(post).get();
            assertThat(f.imposedLargestN()).isGreaterThanOrEqualTo(f.imposedFullN() * (1 - 1e-12) - 1e-9);
        }
        // the same loads as snow lie everywhere at once
        Effects parts = shape.deck(1, 0.6).joist().effects(new ActionFactors(0, 1, 0, 0));
        Effects full = shape.deck(1, 0.6).joist().effects(new ActionFactors(0, 0, 0, 1));
        for (int k = 0; k < full.spans().size(); k++) {
            assertAtLeast(parts.spans().get(k), full.spans().get(k));
        }
    }

    private static void assertAtLeast(SpanEffects larger, SpanEffects smaller) {
        assertThat(larger.sagging().value())
                .isGreaterThanOrEqualTo(smaller.sagging().value() * (1 - 1e-9));
        assertThat(larger.hogging().value())
                .isGreaterThanOrEqualTo(smaller.hogging().value() * (1 - 1e-9));
        assertThat(larger.down().value()).isGreaterThanOrEqualTo(smaller.down().value() * (1 - 1e-9));
        assertThat(larger.up().value()).isGreaterThanOrEqualTo(smaller.up().value() * (1 - 1e-9));
    }

    @Property(tries = 100)
    void more_load_or_longer_spans_never_lower_an_effect(@ForAll("shapes") Shape shape) {
        ActionFactors imposed = new ActionFactors(0, 1, 0, 0);
        ActionFactors concentrated = new ActionFactors(0, 0, 1, 0);
        MemberAnalysis base = shape.deck(1, 2.5).joist();
        MemberAnalysis more = shape.deck(1, 2.6).joist();
        MemberAnalysis longer = shape.deck(1.01, 2.5).joist();
        for (int k = 0; k < base.effects(imposed).spans().size(); k++) {
            assertAtLeast(
                    more.effects(imposed).spans().get(k),
                    base.effects(imposed).spans().get(k));
            if (!shape.shear) {
                assertAtLeast(
                        longer.effects(imposed).spans().get(k),
                        base.effects(imposed).spans().get(k));
                assertAtLeast(
                        longer.effects(concentrated).spans().get(k),
                        base.effects(concentrated).spans().get(k));
            }
        }
    }

    @Property(tries = 100)
    void turned_end_for_end_a_joist_has_the_same_effects(@ForAll("shapes") Shape shape) {
        Shape free = new Shape(
                shape.joists, shape.before, shape.spans, shape.behind, false, 2, 0, 0, shape.nature, shape.shear);
        List<Integer> turned = new ArrayList<>(shape.spans);
        Collections.reverse(turned);
        Shape mirror =
                new Shape(shape.joists, shape.behind, turned, shape.before, false, 2, 0, 0, shape.nature, shape.shear);
        for (ActionFactors f : List.of(new ActionFactors(1.35, 1.5, 0, 0.75), new ActionFactors(1, 0, 1.5, 0))) {
            Effects a = free.deck(1, 2.5).joist().effects(f);
            Effects b = mirror.deck(1, 2.5).joist().effects(f);
            int n = a.spans().size();
            for (int k = 0; k < n; k++) {
                assertClose(a.spans().get(k), b.spans().get(n - 1 - k));
            }
            int m = a.supports().size();
            for (int i = 0; i < m; i++) {
                SupportEffects s = a.supports().get(i);
                SupportEffects t = b.supports().get(m - 1 - i);
                assertThat(t.shear().value()).isCloseTo(s.shear().value(), within(1e-6));
                assertThat(t.largestReactionN()).isCloseTo(s.largestReactionN(), within(1e-6));
                assertThat(t.smallestReactionN()).isCloseTo(s.smallestReactionN(), within(1e-6));
            }
        }
    }

    private static void assertClose(SpanEffects a, SpanEffects b) {
        assertThat(b.sagging().value())
                .isCloseTo(a.sagging().value(), within(1e-9 * a.sagging().value() + 1e-3));
        assertThat(b.hogging().value())
                .isCloseTo(a.hogging().value(), within(1e-9 * a.hogging().value() + 1e-3));
        assertThat(b.down().value())
                .isCloseTo(a.down().value(), within(1e-9 * a.down().value() + 1e-9));
        assertThat(b.up().value()).isCloseTo(a.up().value(), within(1e-9 * a.up().value() + 1e-9));
    }
}
