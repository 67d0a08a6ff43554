package org.deckplanreview.loadpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.loadpath.DeckFixture.deck;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.AreaStrip;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.loadpath.LoadPath.BoardLoads;
import org.deckplanreview.submission.LoadNature;
import org.junit.jupiter.api.Test;

/** The takedown of small decks against statics by hand. */
class TakedownTest {

    private static final Percentage EXACT = Percentage.withPercentage(1e-9);
    private static final ActionFactors IMPOSED = new ActionFactors(0, 1, 0, 0);
    private static final ActionFactors PERMANENT = new ActionFactors(1, 0, 0, 0);
    private static final ActionFactors CONCENTRATED = new ActionFactors(0, 0, 1, 0);

    private final DeckFixture onWallAndBeam =
            deck().joists(6, 400, 3000).ledgerAt(0).beamAt("B", 3000, 0, 2400).snow(0.5);

    private static PlatformLayout platform(Layout layout) {
        return layout.platforms().get(0);
    }

    @Test
    void a_beam_takes_half_of_each_joist_and_its_posts_half_of_the_beam() {
        Layout layout = onWallAndBeam.layout();
        LoadPath path = onWallAndBeam.loadPath(layout);
        ActionForces post = path.post(platform(layout).posts().get(0)).get();
        double area = 2400 * 3000;
        double permanent = onWallAndBeam.permanentNPerMm2() * area / 4
                + onWallAndBeam.joistWeightNPerMm() * 6 * 3000 / 4
                + onWallAndBeam.beamWeightNPerMm() * 2400 / 2;
        assertThat(post.permanentN()).isCloseTo(permanent, EXACT);
        assertThat(post.imposedFullN()).isCloseTo(2.5e-3 * area / 4, EXACT);
        assertThat(post.imposedLargestN()).isCloseTo(2.5e-3 * area / 4, EXACT);
        assertThat(post.snowN()).isCloseTo(0.5e-3 * area / 4, EXACT);
        assertThat(post.concentratedN()).isCloseTo(2000, EXACT);
        assertThat(post.largestN(new ActionFactors(1.35, 1.5, 0, 0)))
                .isCloseTo(1.35 * permanent + 1.5 * 2.5e-3 * area / 4, EXACT);
    }

    @Test
    void a_beam_feels_its_joists_where_they_stand() {
        MemberAnalysis beam = onWallAndBeam.beam();
        Effects e = beam.effects(IMPOSED);
        // six equal forces F at 200, 600, ... 2200 on 2400: in the middle 3F x 1200 - F (1000 + 600 + 200)
        double force = 2.5e-3 * 400 * 3000 / 2;
        assertThat(e.spans().get(0).sagging().value()).isCloseTo(force * 1800, EXACT);
        assertThat(e.supports().get(0).shear().value()).isCloseTo(3 * force, EXACT);
        assertThat(beam.totalN(Action.IMPOSED)).isCloseTo(6 * force, EXACT);
    }

    @Test
    void all_plies_of_a_beam_bend_together() {
        Effects e = onWallAndBeam.beam().effects(CONCENTRATED);
        double ei = 11000.0 * 2 * 47 * 195 * 195 * 195 / 12;
        assertThat(e.spans().get(0).down().value()).isCloseTo(2000.0 * 2400 * 2400 * 2400 / 48 / ei, EXACT);
    }

    @Test
    void beams_and_joists_take_the_concentrated_load_as_a_whole() {
        assertThat(onWallAndBeam.joist().totalN(Action.CONCENTRATED)).isEqualTo(2000);
        assertThat(onWallAndBeam.beam().totalN(Action.CONCENTRATED)).isEqualTo(2000);
        assertThat(onWallAndBeam
                        .beam()
                        .effects(CONCENTRATED)
                        .spans()
                        .get(0)
                        .sagging()
                        .value())
                .isCloseTo(2000 * 2400 / 4.0, EXACT);
    }

    @Test
    void a_concentrated_load_at_joists_tips_presses_the_beam_with_its_leverage() {
        DeckFixture deck = deck().joists(6, 400, 4000).ledgerAt(0).beamAt("B", 3000, 200, 2200);
        Layout layout = deck.layout();
        // tip load P (L + c) / L, on the joist that stands over the first post
        assertThat(deck.loadPath(layout)
                        .post(platform(layout).posts().get(0))
                        .get()
                        .concentratedN())
                .isCloseTo(2000 * 4.0 / 3, EXACT);
    }

    @Test
    void a_load_on_the_joists_cantilever_lifts_the_beam_behind_it() {
        DeckFixture deck = deck().joists(6, 400, 4500).beamAt("A", 0, 0, 2400).beamAt("B", 3000, 0, 2400);
        Effects e = deck.beam().effects(IMPOSED);
        double lift = 2.5e-3 * 400 * 1500 * 1500 / (2 * 3000.0);
        double press = 2.5e-3 * 400 * 3000 / 2;
        assertThat(e.supports().get(0).smallestReactionN()).isCloseTo(-3 * lift, EXACT);
        assertThat(e.supports().get(0).largestReactionN()).isCloseTo(3 * press, EXACT);
        Layout layout = deck.layout();
        ActionForces post =
                deck.loadPath(layout).post(platform(layout).posts().get(0)).get();
        assertThat(post.imposedLargestN()).isCloseTo(3 * press, EXACT);
        assertThat(post.imposedFullN()).isCloseTo(3 * (press - lift), EXACT);
    }

    /** By hand: the span presses with w l / 2, the cantilever c lifts with w c2 / (2 l). */
    @Test
    void permanent_load_of_a_cantilever_lifts_the_far_end_apart_from_the_span_that_holds_it_down() {
        DeckFixture overhanging = deck().joists(6, 400, 4000).ledgerAt(0).beamAt("B", 3000, 0, 2400);
        LiftForces far = overhanging.joist().lift(0);
        double w = overhanging.permanentNPerMm2() * 400 + overhanging.joistWeightNPerMm();
        assertThat(far.permanentDownN()).isCloseTo(w * 3000 / 2, EXACT);
        assertThat(far.permanentUpN()).isCloseTo(-w * 1000 * 1000 / 2 / 3000, EXACT);
        assertThat(far.imposedN()).isCloseTo(-2.5e-3 * 400 * 1000 * 1000 / 2 / 3000, EXACT);
    }

    @Test
    void a_permanent_heavy_item_counts_as_permanent_over_its_own_area() {
        double without = onWallAndBeam.joist().totalN(Action.PERMANENT);
        MemberAnalysis with = deck().joists(6, 400, 3000)
                .ledgerAt(0)
                .ledgerAt(3000)
                .heavyItem(6, LoadNature.PERMANENT, 1000, 2000)
                .joist();
        assertThat(with.totalN(Action.PERMANENT)).isCloseTo(without + 1000, EXACT);
        assertThat(with.totalN(Action.IMPOSED)).isCloseTo(2.5e-3 * 400 * 3000, EXACT);
        // handbook: W over the middle stretch c of span L gives W (2L - c) / 8
        double own = without / 3000 * 3000 * 3000 / 8;
        assertThat(with.effects(PERMANENT).spans().get(0).sagging().value())
                .isCloseTo(own + 1000 * (2 * 3000 - 1000) / 8.0, EXACT);
    }

    @Test
    void a_heavy_item_that_may_go_counts_as_imposed_beside_the_uniform_load() {
        MemberAnalysis with = deck().joists(6, 400, 3000)
                .ledgerAt(0)
                .ledgerAt(3000)
                .heavyItem(6, LoadNature.VARIABLE, 1000, 2000)
                .joist();
        assertThat(with.totalN(Action.IMPOSED)).isCloseTo(2.5e-3 * 400 * 3000 + 1000, EXACT);
        assertThat(with.totalN(Action.PERMANENT))
                .isCloseTo(onWallAndBeam.joist().totalN(Action.PERMANENT), EXACT);
    }

    @Test
    void an_area_beyond_the_joists_end_presses_on_its_end() {
        MemberAnalysis joist = deck().joists(6, 400, 3000)
                .ledgerAt(0)
                .ledgerAt(3000)
                .strips(new AreaStrip(3000, 3000, 0, 0, 20_000, Optional.empty()))
                .joist();
        assertThat(joist.effects(IMPOSED).supports().get(1).largestReactionN()).isCloseTo(2.5e-3 * 20_000, EXACT);
        assertThat(joist.totalN(Action.IMPOSED)).isCloseTo(2.5e-3 * 20_000, EXACT);
    }

    @Test
    void a_strip_that_ends_a_hair_beyond_the_joist_is_taken_to_its_end() {
        double beyond = 3000 + 1e-9;
        MemberAnalysis joist = deck().joists(6, 400, 3000)
                .ledgerAt(0)
                .ledgerAt(beyond)
                .strips(new AreaStrip(-1e-9, beyond, 400, 400, 400 * 3000, Optional.empty()))
                .joist();
        assertThat(joist.totalN(Action.IMPOSED)).isCloseTo(2.5e-3 * 400 * 3000, EXACT);
        assertThat(joist.effects(IMPOSED).spans().get(0).sagging().value())
                .isCloseTo(2.5e-3 * 400 * 3000 * 3000 / 8, EXACT);
    }

    @Test
    void a_gap_between_boards_weighs_nothing_and_no_gap_given_weighs_more() {
        double withGap = deck().ledgerAt(0).ledgerAt(3000).joist().totalN(Action.PERMANENT);
        double without =
                deck().gap(Optional.empty()).ledgerAt(0).ledgerAt(3000).joist().totalN(Action.PERMANENT);
        double boards = DeckFixture.weightN(28.0 * 400 * 3000);
        assertThat(without - withGap).isCloseTo(boards * (1 - 145.0 / 150), Percentage.withPercentage(1e-6));
    }

    @Test
    void finishes_are_permanent() {
        double more = deck().finishes(0.2).ledgerAt(0).ledgerAt(3000).joist().totalN(Action.PERMANENT)
                - deck().ledgerAt(0).ledgerAt(3000).joist().totalN(Action.PERMANENT);
        assertThat(more).isCloseTo(0.2e-3 * 400 * 3000, Percentage.withPercentage(1e-6));
    }

    @Test
    void finishes_boards_and_joists_that_weigh_less_than_the_least_count_as_the_least() {
        double least = 0.4788;
        double total =
                deck().leastDead(least).ledgerAt(0).ledgerAt(3000).joist().totalN(Action.PERMANENT);
        assertThat(total).isCloseTo(least * 1e-3 * 400 * 3000, Percentage.withPercentage(1e-6));
    }

    @Test
    void what_weighs_more_than_the_least_counts_as_it_is() {
        assertThat(deck().finishes(0.8)
                        .leastDead(0.4788)
                        .ledgerAt(0)
                        .ledgerAt(3000)
                        .joist()
                        .totalN(Action.PERMANENT))
                .isEqualTo(
                        deck().finishes(0.8).ledgerAt(0).ledgerAt(3000).joist().totalN(Action.PERMANENT));
    }

    @Test
    void one_board_carries_its_width_and_a_gap() {
        DeckFixture deck = deck().ledgerAt(0).ledgerAt(3000).snow(0.6).finishes(0.1);
        Layout layout = deck.layout();
        BoardLoads loads = deck.loadPath(layout)
                .boards(platform(layout).boards().orElseThrow())
                .get();
        assertThat(loads.permanentNPerMm()).isCloseTo(DeckFixture.weightN(28.0 * 145) + 0.1e-3 * 150, EXACT);
        assertThat(loads.imposedNPerMm()).isCloseTo(2.5e-3 * 150, EXACT);
        assertThat(loads.snowNPerMm()).isCloseTo(0.6e-3 * 150, EXACT);
        assertThat(loads.concentratedN()).isEqualTo(2000);
    }

    @Test
    void a_posts_weight_is_that_of_its_whole_length() {
        Layout layout = onWallAndBeam.layout();
        assertThat(onWallAndBeam
                        .loadPath(layout)
                        .postWeightN(platform(layout).posts().get(0))
                        .get())
                .isCloseTo(DeckFixture.weightN(95.0 * 95 * 1100), EXACT);
    }

    @Test
    void a_footing_takes_its_posts_with_their_weight_and_the_concentrated_load_once() {
        Layout layout = onWallAndBeam.layout();
        LoadPath path = onWallAndBeam.loadPath(layout);
        ActionForces post = path.post(platform(layout).posts().get(0)).get();
        ActionForces footing =
                path.footing(DeckFixture.footing(List.of("B-0", "B-1"))).get();
        assertThat(footing.permanentN())
                .isCloseTo(2 * (post.permanentN() + DeckFixture.weightN(95.0 * 95 * 1100)), EXACT);
        assertThat(footing.imposedFullN()).isCloseTo(2 * post.imposedFullN(), EXACT);
        assertThat(footing.snowN()).isCloseTo(2 * post.snowN(), EXACT);
        assertThat(footing.concentratedN()).isCloseTo(post.concentratedN(), EXACT);
        assertThat(path.footingWeightN(DeckFixture.footing(List.of())).get()).isCloseTo(0.06 * 24000, within(1e-6));
    }

    private static List<Need> needsOfJoist(DeckFixture deck) {
        Layout layout = deck.layout();
        return deck.loadPath(layout).member(platform(layout).joists().get(0)).needs();
    }

    private static List<Need> needsOfBeam(DeckFixture deck) {
        Layout layout = deck.layout();
        return deck.loadPath(layout).member(platform(layout).beams().get(0)).needs();
    }

    private static List<Need> needsOfPost(DeckFixture deck) {
        Layout layout = deck.layout();
        return deck.loadPath(layout).post(platform(layout).posts().get(0)).needs();
    }

    private static List<Need> needsOfFooting(DeckFixture deck) {
        Layout layout = deck.layout();
        return deck.loadPath(layout).footing(platform(layout).footings().get(0)).needs();
    }

    @Test
    void a_joist_on_one_support_needs_another() {
        assertThat(needsOfJoist(deck().ledgerAt(0)))
                .containsExactly(new Need(
                        Pointer.of("/platforms/0/beams"),
                        "supports for joist 1 of the terrace: it crosses 1 beam or ledger and needs at least 2 apart"
                                + " from each other"));
    }

    @Test
    void a_joist_on_no_support_needs_two() {
        assertThat(needsOfJoist(deck()))
                .singleElement()
                .satisfies(n -> assertThat(n.what()).contains("crosses no beam or ledger"));
    }

    @Test
    void a_joist_whose_supports_are_all_at_one_place_needs_another() {
        assertThat(needsOfJoist(deck().ledgerAt(500).ledgerAt(500)))
                .singleElement()
                .satisfies(n -> assertThat(n.what()).contains("crosses 2 beams or ledgers at one place"));
    }

    @Test
    void a_beam_on_one_post_needs_another() {
        assertThat(needsOfBeam(deck().ledgerAt(0).beamAt("B", 3000, 1000)))
                .containsExactly(new Need(
                        Pointer.of("/platforms/0/beams/0/posts"),
                        "posts for beam B: it rests on 1 post and needs at least 2 apart from each other"));
    }

    @Test
    void a_missing_strength_class_is_asked_for_at_the_timber() {
        DeckFixture deck = deck().ledgerAt(0).beamAt("B", 3000, 0, 2000).strengthClasses(null, null, null);
        assertThat(needsOfJoist(deck))
                .extracting(n -> n.pointer().value())
                .containsExactly("/timbers/0/strengthClass", "/timbers/1/strengthClass");
        assertThat(needsOfBeam(deck))
                .extracting(n -> n.pointer().value())
                .containsExactly("/timbers/0/strengthClass", "/timbers/1/strengthClass", "/timbers/2/strengthClass");
        assertThat(needsOfPost(deck)).isEqualTo(needsOfBeam(deck));
        assertThat(needsOfFooting(deck))
                .extracting(n -> n.pointer().value())
                .containsExactly(
                        "/timbers/0/strengthClass",
                        "/timbers/1/strengthClass",
                        "/timbers/2/strengthClass",
                        "/timbers/3/strengthClass");
    }

    @Test
    void a_strength_class_that_the_ruleset_lacks_is_named() {
        assertThat(needsOfJoist(deck().ledgerAt(0).ledgerAt(3000).strengthClasses("X99", "C24", "C24")))
                .containsExactly(new Need(
                        Pointer.of("/timbers/1/strengthClass"),
                        "a strength class of joist that the ruleset has: C24; X99 is none of them"));
    }

    @Test
    void loads_that_the_model_lacks_are_asked_for_all_the_way_down() {
        DeckFixture deck = deck().ledgerAt(0)
                .beamAt("B", 3000, 0, 2000)
                .uniform(Derived.missing(Pointer.of("/use/imposedLoad"), "the imposed load"))
                .concentrated(Derived.missing(Pointer.of("/use/concentratedLoad"), "the concentrated load"));
        Layout layout = deck.layout();
        List<Need> needs = List.of(
                new Need(Pointer.of("/use/concentratedLoad"), "the concentrated load"),
                new Need(Pointer.of("/use/imposedLoad"), "the imposed load"));
        assertThat(needsOfJoist(deck)).isEqualTo(needs);
        assertThat(needsOfBeam(deck)).isEqualTo(needs);
        assertThat(needsOfPost(deck)).isEqualTo(needs);
        assertThat(needsOfFooting(deck)).isEqualTo(needs);
        assertThat(deck.loadPath(layout)
                        .boards(platform(layout).boards().orElseThrow())
                        .needs())
                .isEqualTo(needs);
    }

    @Test
    void without_boards_a_joist_asks_for_them_and_without_joists_a_beam_does() {
        assertThat(needsOfJoist(deck().withoutBoards().ledgerAt(0).ledgerAt(3000)))
                .extracting(n -> n.pointer().value())
                .containsExactly("/platforms/0/boards");
        assertThat(needsOfBeam(deck().joists(5, 400, 3000).withoutJoists().beamAt("B", 3000, 0, 0)))
                .extracting(n -> n.pointer().value())
                .contains("/platforms/0/joists");
    }

    @Test
    void a_missing_level_leaves_the_posts_weight_open_but_not_its_force() {
        Derived<Double> unknown = Derived.missing(Pointer.of("/site/groundLevels"), "the ground's level");
        DeckFixture deck = deck().ledgerAt(0).beamAt("B", 3000, 0, 2000).postTop(unknown);
        assertThat(needsOfPost(deck)).isEmpty();
        assertThat(needsOfFooting(deck)).isEqualTo(unknown.needs());
    }
}
