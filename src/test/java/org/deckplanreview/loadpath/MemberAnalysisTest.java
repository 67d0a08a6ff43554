package org.deckplanreview.loadpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.loadpath.DeckFixture.deck;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.deckplanreview.layout.AreaStrip;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.loadpath.Effects.SpanEffects;
import org.deckplanreview.loadpath.Effects.SupportEffects;
import org.junit.jupiter.api.Test;

/**
 * Effects of combinations. Coefficients from memory: Roark's Formulas for Stress and Strain, 7th edition, Table 8.1, and
 * the Steel Designers' Manual, tables of continuous beams of equal spans with the worst spans loaded.
 */
class MemberAnalysisTest {

    private static final double L = 3000;
    private static final double SPACING = 400;
    private static final double Q = 2.5e-3 * SPACING;
    private static final double EI = 11000.0 * 47 * 145 * 145 * 145 / 12;
    private static final Percentage EXACT = Percentage.withPercentage(1e-7);

    private static final ActionFactors PERMANENT = new ActionFactors(1, 0, 0, 0);
    private static final ActionFactors IMPOSED = new ActionFactors(0, 1, 0, 0);
    private static final ActionFactors CONCENTRATED = new ActionFactors(0, 0, 1, 0);

    private static DeckFixture spans(int count) {
        DeckFixture deck = deck().joists(5, SPACING, count * L);
        for (int i = 0; i <= count; i++) {
            deck.ledgerAt(i * L);
        }
        return deck;
    }

    @Test
    void a_single_span_has_its_largest_moment_and_deflection_exactly_in_the_middle() {
        DeckFixture deck = spans(1);
        double g = deck.permanentNPerMm2() * SPACING + deck.joistWeightNPerMm();
        double w = 1.35 * g + 1.5 * Q;
        Effects e = deck.joist().effects(new ActionFactors(1.35, 1.5, 0, 0));
        SpanEffects span = e.spans().get(0);
        assertThat(span.sagging().value()).isCloseTo(w * L * L / 8, EXACT);
        assertThat(span.sagging().atMm()).isEqualTo(L / 2);
        assertThat(span.hogging().value()).isZero();
        assertThat(span.down().value()).isCloseTo(5 * w * L * L * L * L / 384 / EI, EXACT);
        assertThat(span.down().atMm()).isEqualTo(L / 2);
        assertThat(span.up().value()).isZero();
        SupportEffects support = e.supports().get(1);
        assertThat(support.shear().value()).isCloseTo(w * L / 2, EXACT);
        assertThat(support.shear().atMm()).isEqualTo(L);
        assertThat(support.largestReactionN()).isCloseTo(w * L / 2, EXACT);
        assertThat(support.smallestReactionN()).isCloseTo(1.35 * g * L / 2, EXACT);
    }

    /** Handbook formulas of a simple beam: w L2/8 in the middle, w L/2 at the ends, 5 w L4/384 EI. */
    @Test
    void diagrams_reach_as_far_as_the_handbook_says() {
        MemberDiagrams diagrams = spans(1).joist().diagrams(List.of(IMPOSED));
        MemberDiagrams.Place start = diagrams.places().get(0);
        assertThat(start.atMm()).isZero();
        assertThat(start.shearN().largest()).isCloseTo(Q * L / 2, EXACT);
        assertThat(start.momentNMm().largest()).isZero();
        MemberDiagrams.Place end = diagrams.places().get(diagrams.places().size() - 1);
        assertThat(end.atMm()).isEqualTo(L);
        assertThat(end.shearN().smallest()).isCloseTo(-Q * L / 2, EXACT);
        MemberDiagrams.Place middle = diagrams.places().stream()
                .filter(p -> Math.abs(p.atMm() - L / 2) < 1e-6)
                .findFirst()
                .orElseThrow();
        assertThat(middle.momentNMm().largest()).isCloseTo(Q * L * L / 8, EXACT);
        assertThat(middle.deflectionMm().largest()).isCloseTo(5 * Q * L * L * L * L / 384 / EI, EXACT);
    }

    /** Of alternatives the farthest counts on either side; no place reaches beyond the worst effects. */
    @Test
    void diagrams_of_alternatives_end_at_the_worst_effects() {
        MemberAnalysis joist = spans(2).joist();
        ActionFactors other = new ActionFactors(1, 0, 1, 0);
        MemberDiagrams diagrams = joist.diagrams(List.of(IMPOSED, other));
        double sagging = Math.max(
                joist.effects(IMPOSED).spans().get(0).sagging().value(),
                joist.effects(other).spans().get(0).sagging().value());
        double reached = diagrams.places().stream()
                .mapToDouble(p -> p.momentNMm().largest())
                .max()
                .orElseThrow();
        assertThat(reached).isBetween(0.99 * sagging, sagging * (1 + 1e-9));
        double shear = Math.max(
                joist.effects(IMPOSED).supports().get(1).shear().value(),
                joist.effects(other).supports().get(1).shear().value());
        double farthest = diagrams.places().stream()
                .filter(p -> p.atMm() == L)
                .mapToDouble(p -> Math.max(p.shearN().largest(), -p.shearN().smallest()))
                .max()
                .orElseThrow();
        assertThat(farthest).isCloseTo(shear, within(1e-6 * shear));
    }

    @Test
    void shear_deformation_adds_kappa_w_l_squared_over_8_ga() {
        Effects e = spans(1).shearDeformation().joist().effects(IMPOSED);
        double shear = 1.2 * Q * L * L / (8 * 690.0 * 47 * 145);
        assertThat(e.spans().get(0).down().value()).isCloseTo(5 * Q * L * L * L * L / 384 / EI + shear, EXACT);
    }

    @Test
    void a_triangular_area_has_its_largest_moment_at_l_over_the_root_of_3() {
        Effects e = spans(1).strips(new AreaStrip(0, L, 0, SPACING, SPACING * L / 2, Optional.empty()))
                .joist()
                .effects(IMPOSED);
        assertThat(e.spans().get(0).sagging().value()).isCloseTo(Q * L * L / (9 * Math.sqrt(3)), EXACT);
        assertThat(e.spans().get(0).sagging().atMm()).isCloseTo(L / Math.sqrt(3), within(1e-3));
    }

    @Test
    void two_spans_sag_most_with_one_of_them_loaded_and_hog_most_with_both() {
        Effects e = spans(2).joist().effects(IMPOSED);
        for (SpanEffects span : e.spans()) {
            assertThat(span.sagging().value()).isCloseTo(49.0 / 512 * Q * L * L, EXACT);
            assertThat(span.hogging().value()).isCloseTo(Q * L * L / 8, EXACT);
        }
        assertThat(e.spans().get(0).sagging().atMm()).isCloseTo(0.4375 * L, within(1e-3));
        assertThat(e.spans().get(0).hogging().atMm()).isEqualTo(L);
        assertThat(e.supports().get(0).largestReactionN()).isCloseTo(0.4375 * Q * L, EXACT);
        assertThat(e.supports().get(0).smallestReactionN()).isCloseTo(-0.0625 * Q * L, EXACT);
        assertThat(e.supports().get(1).largestReactionN()).isCloseTo(1.25 * Q * L, EXACT);
        assertThat(e.supports().get(1).shear().value()).isCloseTo(0.625 * Q * L, EXACT);
    }

    @Test
    void three_spans_sag_most_with_every_second_one_loaded_and_hog_most_with_two_neighbours() {
        Effects e = spans(3).joist().effects(IMPOSED);
        assertThat(e.spans().get(0).sagging().value()).isCloseTo(0.10125 * Q * L * L, EXACT);
        assertThat(e.spans().get(1).sagging().value()).isCloseTo(0.075 * Q * L * L, EXACT);
        assertThat(e.spans().get(1).hogging().value()).isCloseTo(7.0 / 60 * Q * L * L, EXACT);
        assertThat(e.supports().get(1).largestReactionN()).isCloseTo(1.2 * Q * L, EXACT);
    }

    @Test
    void permanent_load_lies_on_all_spans_at_once() {
        DeckFixture deck = spans(2);
        double g = deck.permanentNPerMm2() * SPACING + deck.joistWeightNPerMm();
        Effects e = deck.joist().effects(PERMANENT);
        assertThat(e.spans().get(0).sagging().value()).isCloseTo(9.0 / 128 * g * L * L, EXACT);
        assertThat(e.supports().get(0).largestReactionN()).isCloseTo(0.375 * g * L, EXACT);
        assertThat(e.supports().get(0).smallestReactionN()).isCloseTo(0.375 * g * L, EXACT);
    }

    @Test
    void a_cantilever_bends_and_lifts_with_its_own_load_alone() {
        double c = 800;
        Effects e =
                deck().joists(5, SPACING, L + c).ledgerAt(0).ledgerAt(L).joist().effects(IMPOSED);
        assertThat(e.spans().get(1).hogging().value()).isCloseTo(Q * c * c / 2, EXACT);
        assertThat(e.spans().get(1).hogging().atMm()).isEqualTo(L);
        assertThat(e.spans().get(0).sagging().value()).isCloseTo(Q * L * L / 8, EXACT);
        assertThat(e.supports().get(0).smallestReactionN()).isCloseTo(-Q * c * c / (2 * L), EXACT);
        assertThat(e.supports().get(1).largestReactionN()).isCloseTo(Q * (L + c) * (L + c) / (2 * L), EXACT);
        double rotation = Q * c * c / 2 * L / 3 / EI;
        assertThat(e.spans().get(1).down().value()).isCloseTo(Q * c * c * c * c / 8 / EI + rotation * c, EXACT);
        assertThat(e.spans().get(1).down().atMm()).isEqualTo(L + c);
        assertThat(e.spans().get(1).up().value()).isCloseTo(Q * L * L * L / 24 / EI * c, EXACT);
    }

    @Test
    void the_outermost_joist_takes_the_whole_concentrated_load_at_the_worst_place() {
        Effects e = spans(1).joist().effects(CONCENTRATED);
        assertThat(e.spans().get(0).sagging().value()).isCloseTo(2000 * L / 4, EXACT);
        assertThat(e.spans().get(0).sagging().atMm()).isEqualTo(L / 2);
        assertThat(e.spans().get(0).down().value()).isCloseTo(2000 * L * L * L / 48 / EI, EXACT);
        assertThat(e.supports().get(0).shear().value()).isEqualTo(2000);
        assertThat(e.supports().get(0).largestReactionN()).isCloseTo(2000, EXACT);
        assertThat(e.supports().get(0).smallestReactionN()).isCloseTo(0, within(1e-9));
    }

    /** Three springs in a row: the load in the middle, the outer two reached by a board of 145 by 28 mm. */
    @Test
    void between_its_neighbours_a_joist_bends_under_a_part_of_the_load_in_mid_span_and_bears_all_of_it() {
        DeckFixture deck = spans(1);
        Layout layout = deck.layout();
        Effects e = deck.loadPath(layout)
                .member(layout.platforms().get(0).joists().get(2))
                .get()
                .effects(CONCENTRATED);
        double board = 6 * 11000.0 * 145 * 28 * 28 * 28 / 12 / (SPACING * SPACING * SPACING);
        double ratio = board * L * L * L / 48 / EI;
        double part = (2 + ratio) / (2 + 3 * ratio);
        assertThat(part).isBetween(0.5, 0.7);
        assertThat(e.spans().get(0).sagging().value()).isCloseTo(part * 2000 * L / 4, EXACT);
        assertThat(e.supports().get(0).shear().value()).isEqualTo(2000);
        assertThat(e.supports().get(0).largestReactionN()).isCloseTo(2000, EXACT);
    }

    /** Influence lines of two equal spans from the moment over the middle support, {@code P a (L2 - a2) / 4 L2}. */
    @Test
    void a_concentrated_load_finds_its_worst_places_on_two_spans() {
        double worst = 0;
        for (int i = 0; i <= 100_000; i++) {
            double a = L * i / 100_000;
            worst = Math.max(worst, 2000 * (a * (L - a) / L - a / L * a * (L * L - a * a) / (4 * L * L)));
        }
        Effects e = spans(2).joist().effects(CONCENTRATED);
        assertThat(e.spans().get(0).sagging().value()).isCloseTo(worst, EXACT);
        assertThat(e.spans().get(1).sagging().value()).isCloseTo(worst, EXACT);
        assertThat(e.spans().get(0).hogging().value()).isCloseTo(2000 * L / (6 * Math.sqrt(3)), EXACT);
        assertThat(e.supports().get(1).shear().value()).isEqualTo(2000);
    }

    @Test
    void a_concentrated_load_at_the_tip_of_a_cantilever_gives_p_a() {
        double c = 800;
        Effects e = deck().joists(5, SPACING, c + L)
                .ledgerAt(c)
                .ledgerAt(c + L)
                .joist()
                .effects(CONCENTRATED);
        assertThat(e.spans().get(0).hogging().value()).isCloseTo(2000 * c, EXACT);
        assertThat(e.spans().get(0).down().value()).isCloseTo(2000 * c * c * (L + c) / (3 * EI), EXACT);
        assertThat(e.supports().get(1).smallestReactionN()).isCloseTo(-2000 * c / L, EXACT);
    }

    @Test
    void snow_does_not_hold_down_what_imposed_load_lifts() {
        double c = 1500;
        MemberAnalysis joist =
                deck().joists(5, SPACING, L + c).ledgerAt(0).ledgerAt(L).snow(1).joist();
        double without =
                joist.effects(new ActionFactors(1, 1.5, 0, 0)).supports().get(0).smallestReactionN();
        double with = joist.effects(new ActionFactors(1, 1.5, 0, 1.5))
                .supports()
                .get(0)
                .smallestReactionN();
        assertThat(with).isEqualTo(without);
        assertThat(joist.effects(new ActionFactors(0, 0, 0, 1))
                        .supports()
                        .get(0)
                        .largestReactionN())
                .isCloseTo(1e-3 * SPACING * (L * L - c * c) / (2 * L), EXACT);
    }

    @Test
    void two_supports_at_one_place_share_the_reaction() {
        DeckFixture deck =
                deck().joists(5, SPACING, L).ledgerAt(0).ledgerAt(L - 0.5).ledgerAt(L);
        Effects e = deck.joist().effects(IMPOSED);
        assertThat(e.spans()).hasSize(2);
        assertThat(e.supports().get(1).largestReactionN())
                .isCloseTo(e.supports().get(2).largestReactionN(), EXACT)
                .isCloseTo(Q * L / 4, Percentage.withPercentage(0.1));
        assertThat(e.spans().get(0).sagging().value()).isCloseTo(Q * L * L / 8, Percentage.withPercentage(0.1));
    }

    @Test
    void supports_a_few_millimetres_apart_give_finite_effects() {
        Effects e = deck().joists(5, SPACING, L)
                .ledgerAt(0)
                .ledgerAt(L - 3)
                .ledgerAt(L)
                .joist()
                .effects(IMPOSED);
        assertThat(e.spans().get(0).sagging().value()).isBetween(0.07 * Q * L * L, 0.125 * Q * L * L);
        double sum =
                e.supports().get(0).largestReactionN() + e.supports().get(1).largestReactionN();
        assertThat(sum).isFinite();
    }

    @Test
    void the_totals_are_the_loads_on_the_member() {
        DeckFixture deck = spans(2).snow(0.6);
        MemberAnalysis joist = deck.joist();
        assertThat(joist.totalN(Action.IMPOSED)).isCloseTo(Q * 2 * L, EXACT);
        assertThat(joist.totalN(Action.SNOW)).isCloseTo(0.6e-3 * SPACING * 2 * L, EXACT);
        assertThat(joist.totalN(Action.CONCENTRATED)).isEqualTo(2000);
        assertThat(joist.totalN(Action.PERMANENT))
                .isCloseTo((deck.permanentNPerMm2() * SPACING + deck.joistWeightNPerMm()) * 2 * L, EXACT);
    }

    @Test
    void joists_alike_share_their_effects() {
        DeckFixture deck = spans(2);
        Layout layout = deck.layout();
        LoadPath path = deck.loadPath(layout);
        var joists = layout.platforms().get(0).joists();
        Effects first = path.member(joists.get(1)).get().effects(IMPOSED);
        assertThat(path.member(joists.get(3)).get().effects(new ActionFactors(0, 1, 0, 0)))
                .isSameAs(first);
        assertThat(path.member(joists.get(3)).get().member()).isSameAs(joists.get(3));
    }

    /** Influence line of shear in a simple beam: P at the support itself, never more than P/2 either way in the middle. */
    @Test
    void shear_of_a_concentrated_load_is_all_of_it_beside_a_support_and_at_most_half_in_the_middle() {
        List<MemberDiagrams.Place> places =
                spans(1).joist().diagrams(List.of(CONCENTRATED)).places();
        MemberDiagrams.Place start = places.get(0);
        MemberDiagrams.Place end = places.get(places.size() - 1);
        assertThat(start.shearN().largest()).isCloseTo(2000, EXACT);
        assertThat(start.shearN().smallest()).isCloseTo(0, within(1e-9));
        assertThat(end.shearN().largest()).isCloseTo(0, within(1e-9));
        assertThat(end.shearN().smallest()).isCloseTo(-2000, EXACT);
        assertThat(places)
                .filteredOn(place -> Math.abs(place.atMm() - L / 2) < 1e-6)
                .isNotEmpty()
                .allSatisfy(middle -> {
                    assertThat(middle.shearN().largest()).isLessThan(1000 * (1 + 1e-9));
                    assertThat(middle.shearN().smallest()).isGreaterThan(-1000 * (1 + 1e-9));
                });
    }

    /** Roark, Table 8.1, simple beam with a moment at its end: largest deflection M0 L2 / (9 root 3 EI), at L / root 3. */
    @Test
    void a_load_at_the_tip_lifts_the_span_behind_most_at_l_over_the_root_of_3_from_its_far_end() {
        double c = 800;
        SpanEffects span = deck().joists(5, SPACING, c + L)
                .ledgerAt(c)
                .ledgerAt(c + L)
                .joist()
                .effects(CONCENTRATED)
                .spans()
                .get(1);
        assertThat(span.up().value()).isCloseTo(2000 * c * L * L / (9 * Math.sqrt(3) * EI), EXACT);
        assertThat(span.up().atMm()).isCloseTo(c + L - L / Math.sqrt(3), within(1e-2));
    }

    /** Two equal spans, w on the first and v on the second: the end reaction is w L/2 - (w + v) L/16, the moment its square over 2 w. */
    @Test
    void snow_that_makes_it_worse_moves_the_place_of_the_largest_moment() {
        DeckFixture deck = spans(2).snow(1.5);
        double lasting =
                1.35 * (deck.permanentNPerMm2() * SPACING + deck.joistWeightNPerMm()) + 0.75 * 1.5e-3 * SPACING;
        double w = lasting + 1.5 * Q;
        double reaction = w * L / 2 - (w + lasting) * L / 16;
        SpanEffects span = deck.joist()
                .effects(new ActionFactors(1.35, 1.5, 0, 0.75))
                .spans()
                .get(0);
        assertThat(span.sagging().value()).isCloseTo(reaction * reaction / (2 * w), EXACT);
        assertThat(span.sagging().atMm()).isCloseTo(reaction / w, within(1e-2));
    }

    /** The lever over the ledger, P c / L at the joist's far end, and that of the beam, whose first joist is half a spacing from its end. */
    @Test
    void a_load_at_the_tip_of_a_joist_lifts_the_beam_at_its_other_end() {
        double c = 800;
        Effects e = deck().joists(5, SPACING, c + L)
                .ledgerAt(c)
                .beamAt("b", c + L, 0, 5 * SPACING)
                .beam()
                .effects(CONCENTRATED);
        assertThat(e.supports().get(0).smallestReactionN()).isCloseTo(-2000 * c / L * 4.5 / 5, EXACT);
        assertThat(e.supports().get(0).largestReactionN()).isCloseTo(2000, EXACT);
    }
}
