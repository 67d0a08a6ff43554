package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.LinearAnalysis.Share;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.api.Test;

/**
 * Fixings of a ledger of 4800 mm with thirteen joists, twelve of them 400 mm apart and the last 353 mm from its neighbour, each
 * with a design reaction of 3000 N: statics by hand; distances by EN 1995-1-1:2004, Table 8.4, from memory.
 */
class LedgerFixingsTest {

    private static final Method FORCE = new LedgerFixingForce();
    private static final Method DISTANCE = new LedgerFixingDistance();
    private static final String FIXINGS = "/platforms/0/ledger/fixings";
    private static final double REACTION_N = 3000;

    private static SampleDeck deck(String fixings) {
        return SampleDeck.complete().withJson(FIXINGS, fixings);
    }

    private static Evaluation evaluate(SampleDeck deck, Method method, StandardParameters parameters) {
        Layout layout = Layout.derive(deck.submission());
        LedgerLine ledger = layout.platforms().get(0).ledger().orElseThrow();
        return method.evaluate(
                ledger, parameters, new ReviewContext(layout, new Reactions(), List.of(Derived.known("A"))));
    }

    private static Evaluation.Measured force(double spacingMm, String resistance) {
        return (Evaluation.Measured) evaluate(
                deck("{\"base\": \"masonry\", \"spacing\": " + spacingMm + ", \"resistance\": \"" + resistance + "\"}"),
                FORCE,
                StandardParameters.ofEurocodes());
    }

    private static double found(Evaluation.Measured m) {
        return ((Measure) m.found()).value();
    }

    /** Closer than the joists: a fixing behind a joist takes all of it. */
    @Test
    void a_fixing_behind_a_joist_takes_its_whole_reaction() {
        assertThat(found(force(300, "3 kN"))).isCloseTo(3000, within(1e-6));
    }

    /** 600 mm: the lever gives 3000 * (1 + 2 * (1 - 400 / 600)) = 5000 N inside and 5235 N by the narrow bay; evenly 4875 N. */
    @Test
    void joists_between_fixings_go_to_both_by_the_lever() {
        assertThat(found(force(600, "6 kN"))).isCloseTo(3000 * (1 + 1 / 3.0 + (1 - 353 / 600.0)), within(1.0));
    }

    /** 800 mm: evenly 13 * 3000 / 4800 * 800 = 6500 N, more than the lever's. */
    @Test
    void the_load_shared_evenly_governs_where_fixings_are_far_apart() {
        Evaluation.Measured m = force(800, "7 kN");
        assertThat(found(m)).isCloseTo(6500, within(1e-6));
        assertThat(m.working())
                .filteredOn(s -> s.substituted().isPresent())
                .allSatisfy(s ->
                        assertThat(Arithmetic.of(s)).isCloseTo(s.value(), within(1e-5 * Math.max(1, s.value()))));
        assertThat(m.working()).extracting(WorkingStep::symbol).endsWith("utilisation");
    }

    @Test
    void fixings_comply_up_to_their_resistance() {
        assertThat(force(300, "3 kN").utilisation()).isCloseTo(1, within(1e-9));
        assertThat(force(300, "2.99 kN").utilisation()).isGreaterThan(1);
        assertThat(force(300, "3.01 kN").utilisation()).isLessThan(1);
    }

    @Test
    void a_resistance_that_is_not_given_is_told_what_would_do() {
        Evaluation e =
                evaluate(deck("{\"base\": \"masonry\", \"spacing\": 800}"), FORCE, StandardParameters.ofEurocodes());
        assertThat(((Evaluation.Missing) e).needs()).singleElement().satisfies(n -> {
            assertThat(n.pointer().value()).isEqualTo(FIXINGS + "/resistance");
            assertThat(n.what()).endsWith("; 6.5 kN would do");
        });
    }

    @Test
    void fixings_that_are_not_described_are_asked_for() {
        assertThat(needs(evaluate(SampleDeck.complete(), FORCE, StandardParameters.ofEurocodes())))
                .containsExactly(FIXINGS);
        assertThat(needs(evaluate(deck("{\"base\": \"masonry\"}"), FORCE, StandardParameters.ofEurocodes())))
                .containsExactly(FIXINGS + "/resistance", FIXINGS + "/spacing");
        assertThat(needs(evaluate(deck("{\"base\": \"masonry\"}"), DISTANCE, place("ledger-end"))))
                .containsExactly(FIXINGS + "/diameter", FIXINGS + "/endDistance");
    }

    private static List<String> needs(Evaluation e) {
        return ((Evaluation.Missing) e)
                .needs().stream().map(Need::pointer).map(Object::toString).toList();
    }

    private static StandardParameters place(String place) {
        return StandardParameters.ofEurocodes().with("place", place);
    }

    /** Table 8.4: a4,t = (2 + 2 sin 90°) d = 48 mm and a3,t = 7 d = 84 mm of 12 mm, but 80 mm at least. */
    @Test
    void distances_of_table_8_4() {
        assertThat(distance("ledger-edge", 12, 48)).isEqualTo(1);
        assertThat(distance("ledger-edge", 12, 47.9)).isGreaterThan(1);
        assertThat(distance("ledger-end", 12, 84)).isEqualTo(1);
        assertThat(distance("ledger-end", 12, 83.9)).isGreaterThan(1);
        assertThat(distance("ledger-end", 10, 80)).isEqualTo(1);
        assertThat(distance("ledger-end", 10, 79)).isGreaterThan(1);
    }

    private static double distance(String place, double diameterMm, double distanceMm) {
        String member = place.equals("ledger-end") ? "endDistance" : "edgeDistance";
        SampleDeck deck = deck(
                "{\"base\": \"masonry\", \"diameter\": " + diameterMm + ", \"" + member + "\": " + distanceMm + "}");
        return ((Evaluation.Measured) evaluate(deck, DISTANCE, place(place))).utilisation();
    }

    /** Every joist reacts with the same force at every support, under imposed load alone. */
    private static final class Reactions implements LoadPath {
        @Override
        public Derived<Sheet> areaLoads(int platformIndex) {
            return Derived.missing(Pointer.of("/platforms/0/boards"), "the boards");
        }

        @Override
        public Derived<MemberAnalysis> member(Member member) {
            double q = REACTION_N / 1.5;
            return Derived.known(LinearAnalysis.of(member)
                    .with(
                            Action.IMPOSED,
                            new Share(
                                    Collections.nCopies(member.spans().size(), new double[4]),
                                    Collections.nCopies(member.supports().size(), new double[] {q, q, q}),
                                    q)));
        }

        @Override
        public Derived<BoardLoads> boards(BoardField boards) {
            return Derived.missing(Pointer.of("/platforms/0/boards"), "the boards");
        }

        @Override
        public Derived<ActionForces> post(PostPlace post) {
            return Derived.missing(post.pointer(), "the post");
        }

        @Override
        public Derived<LiftForces> lift(PostPlace post) {
            throw new AssertionError("Ledgers ask for reactions");
        }

        @Override
        public Derived<LiftForces> lift(FootingPlace footing) {
            throw new AssertionError("Ledgers ask for reactions");
        }

        @Override
        public Derived<Double> postWeightN(PostPlace post) {
            return Derived.missing(post.pointer(), "the post");
        }

        @Override
        public Derived<ActionForces> footing(FootingPlace footing) {
            return Derived.missing(footing.pointer(), "the footing");
        }

        @Override
        public Derived<Double> footingWeightN(FootingPlace footing) {
            return Derived.missing(footing.pointer(), "the footing");
        }

        @Override
        public Derived<DeckLoads> deckLoads(int platformIndex) {
            throw new AssertionError();
        }

        @Override
        public Derived<Double> imposedKNPerM2(int platformIndex) {
            throw new AssertionError();
        }
    }
}
