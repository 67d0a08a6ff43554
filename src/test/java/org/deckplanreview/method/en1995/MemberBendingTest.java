package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.en1995.LinearAnalysis.Share;
import org.deckplanreview.submission.NotchSide;
import org.junit.jupiter.api.Test;

/** EN 1995-1-1, 6.1.6 and 6.3.3. Strengths by hand: C24, medium-term, f_m,d = 0.65 * 24 / 1.3 = 12 N/mm2. */
class MemberBendingTest {

    private static final MemberBending BENDING = new MemberBending();
    /** W_y of 47 x 195, mm3. */
    private static final double W = 47.0 * 195 * 195 / 6;

    private static Share moments(double sagging, double hogging) {
        double[] support = {0, 0, 0};
        return new Share(List.of(new double[] {sagging, hogging, 0, 0}), List.of(support, support), 0);
    }

    /** The moment of 1.5 Q that gives this stress with no permanent load. */
    private static DeckPiece stressed(DeckPiece piece, double sagging, double hogging) {
        return piece.span(3600, 50).under(a -> a.with(Action.IMPOSED, moments(sagging * W / 1.5, hogging * W / 1.5)));
    }

    private static Evaluation.Measured measured(DeckPiece piece, StandardParameters parameters) {
        return (Evaluation.Measured) piece.evaluate(BENDING, parameters);
    }

    private static StandardParameters parameters() {
        return StandardParameters.ofEurocodes();
    }

    private static double value(Evaluation.Measured m, String symbol) {
        return m.working().stream()
                .filter(s -> s.symbol().equals(symbol))
                .mapToDouble(WorkingStep::value)
                .findFirst()
                .orElseThrow();
    }

    /** f_m,d = 1.1 * 12 = 13.2 N/mm2. */
    @Test
    void a_joist_at_its_design_strength_is_used_fully() {
        Evaluation.Measured m = measured(stressed(DeckPiece.joist(), 13.2, 0), parameters());
        assertThat(m.utilisation()).isCloseTo(1, within(1e-12));
        assertThat(((Measure) m.allowed()).value()).isCloseTo(13.2, within(1e-12));
        assertThat(m.remark()).isEqualTo("sagging in the span, combination 6.10 imposed, medium-term");
    }

    @Test
    void a_joist_below_its_design_strength_complies_and_above_it_does_not() {
        assertThat(measured(stressed(DeckPiece.joist(), 13.19, 0), parameters()).utilisation())
                .isLessThan(1);
        assertThat(measured(stressed(DeckPiece.joist(), 13.21, 0), parameters()).utilisation())
                .isGreaterThan(1);
    }

    /** 0.50 * 24 / 1.3 * 1.1 = 10.154 N/mm2 against 1.35 G. */
    @Test
    void permanent_load_alone_can_govern() {
        Evaluation.Measured m = measured(
                DeckPiece.joist()
                        .span(3600, 50)
                        .under(a -> a.with(Action.PERMANENT, moments(10.154 * W / 1.35, 0))
                                .with(Action.IMPOSED, moments(0.1 * W, 0))),
                parameters());
        assertThat(m.remark()).contains("6.10 permanent, permanent");
        assertThat(m.utilisation()).isCloseTo(1, within(1e-4));
    }

    /** 6.6(2) and the conditions given: at least four joists, at most 610 mm apart. */
    @Test
    void system_strength_needs_four_joists_at_most_610_mm_apart() {
        assertThat(value(measured(stressed(DeckPiece.joist().side(610, 4), 1, 0), parameters()), "k_sys"))
                .isEqualTo(1.1);
        assertThat(value(measured(stressed(DeckPiece.joist().side(610, 3), 1, 0), parameters()), "k_sys"))
                .isEqualTo(1);
        assertThat(value(measured(stressed(DeckPiece.joist().side(611, 4), 1, 0), parameters()), "k_sys"))
                .isEqualTo(1);
        assertThat(value(measured(stressed(DeckPiece.beam(1), 1, 0), parameters()), "k_sys"))
                .isEqualTo(1);
    }

    /** Hogging: l_ef = 3600; (6.32) 0.78*47^2*7400/(195*3600) = 18.163; (6.30) 1.14949; (6.34) 0.69788. */
    @Test
    void the_lower_edge_buckles_under_hogging() {
        Evaluation.Measured m = measured(stressed(DeckPiece.joist(), 10, 9.5), parameters());
        assertThat(m.remark()).startsWith("hogging in the span");
        assertThat(value(m, "k_crit")).isCloseTo(0.69788, within(5e-5));
        assertThat(m.utilisation()).isCloseTo(9.5 / (0.69788 * 13.2), within(1e-4));
    }

    /** 6.5.2: h_ef = 195 - 45 = 150 mm over the inner support, so (195 / 150)^2 times the stress. */
    @Test
    void over_a_notched_inner_support_the_section_that_is_left_bends() {
        double whole = measured(continuous(), parameters()).utilisation();
        Evaluation.Measured m = measured(continuous().notched(45, 60, 0, NotchSide.SUPPORT), parameters());
        assertThat(m.remark()).startsWith("hogging in span");
        assertThat(m.utilisation()).isCloseTo(whole * 1.3 * 1.3, within(1e-12));
    }

    /** 6.5.1(2): tension at a notch counts as that of the section alone only from a slope of 1 in 10 on. */
    @Test
    void a_notch_in_the_upper_edge_over_an_inner_support_is_out_of_scope_unless_it_tapers() {
        assertThat(continuous().notched(45, 60, 9.9, NotchSide.OPPOSITE).evaluate(BENDING, parameters()))
                .isInstanceOf(Evaluation.OutOfScope.class);
        assertThat(continuous().notched(45, 60, 10, NotchSide.OPPOSITE).evaluate(BENDING, parameters()))
                .isInstanceOf(Evaluation.Measured.class);
    }

    @Test
    void a_notch_in_the_upper_edge_at_ends_alone_may_be_square() {
        DeckPiece piece = stressed(DeckPiece.joist(), 1, 0).notched(45, 60, 0, NotchSide.OPPOSITE);
        assertThat(piece.evaluate(BENDING, parameters())).isInstanceOf(Evaluation.Measured.class);
    }

    /** M = V x = 13.2 * 47 * 150^2 / 6 with x = 100 mm: V = 23265 N. */
    @Test
    void at_a_notch_at_the_end_the_section_that_is_left_bends_under_the_shear_force_at_its_distance() {
        assertThat(atNotch(23_265)).isCloseTo(1, within(1e-12));
        assertThat(atNotch(23_260)).isLessThan(1);
        assertThat(atNotch(23_270)).isGreaterThan(1);
    }

    private static double atNotch(double shearN) {
        double[] support = {shearN / 1.5, 0, 0};
        Share share = new Share(List.of(new double[4]), List.of(support, support), 0);
        return measured(
                        DeckPiece.joist()
                                .span(3600, 50)
                                .notched(45, 100, 0, NotchSide.SUPPORT)
                                .under(a -> a.with(Action.IMPOSED, share)),
                        parameters())
                .utilisation();
    }

    private static DeckPiece continuous() {
        double[] moments = {0, 5 * W / 1.5, 0, 0};
        double[] support = {0, 0, 0};
        return DeckPiece.joist()
                .length(4000)
                .support(25, 50)
                .support(2000, 50)
                .support(3975, 50)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 25, 2000)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 2000, 3975)
                .under(a -> a.with(
                        Action.IMPOSED, new Share(List.of(moments, moments), List.of(support, support, support), 0)));
    }

    @Test
    void boards_hold_the_upper_edge_all_along() {
        Evaluation.Measured m = measured(stressed(DeckPiece.joist(), 10, 0), parameters());
        assertThat(value(m, "k_crit")).isEqualTo(1);
        assertThat(m.assumptions()).anyMatch(a -> a.contains("Boards fixed to every joist"));
    }

    /** Table 6.1: 0.9 * 3600 + 2 * 195 = 3630 mm for uniform load at the upper edge. */
    @Test
    void an_upper_edge_that_nothing_holds_buckles_over_the_span() {
        Evaluation.Measured m =
                measured(stressed(DeckPiece.joist(), 10, 0), parameters().with("sideRestraint", "none"));
        assertThat(value(m, "l_ef")).isCloseTo(3630, within(1e-9));
        assertThat(value(m, "k_crit")).isLessThan(1);
    }

    /** Joists at 0, 900, 1800, ... along a beam whose span starts at 25: the largest distance is 900; 900 + 390. */
    @Test
    void joists_hold_the_upper_edge_of_a_beam_where_they_bear() {
        Evaluation.Measured m = measured(
                stressed(DeckPiece.beam(1), 10, 0).joistsEvery(900),
                parameters().with("sideRestraint", "joists"));
        assertThat(value(m, "l")).isEqualTo(900);
        assertThat(value(m, "l_ef")).isCloseTo(900 + 2 * 195, within(1e-9));
    }

    @Test
    void a_beam_without_joists_is_held_at_its_supports_only() {
        Evaluation.Measured m =
                measured(stressed(DeckPiece.beam(1), 10, 0), parameters().with("sideRestraint", "joists"));
        assertThat(value(m, "l")).isEqualTo(3600);
    }

    @Test
    void plies_carry_together_and_buckle_each_for_itself() {
        Evaluation.Measured one = measured(stressed(DeckPiece.beam(1), 0, 8), parameters());
        Evaluation.Measured two = measured(stressed(DeckPiece.beam(2), 0, 8), parameters());
        assertThat(value(two, "k_crit")).isEqualTo(value(one, "k_crit"));
        assertThat(two.utilisation()).isCloseTo(one.utilisation() / 2, within(1e-12));
        assertThat(two.assumptions()).anyMatch(a -> a.contains("plies"));
    }

    /** Table 6.1: 0.5 of a joist's cantilever under uniform load, 0.8 of a beam's, where a joist can stand at the tip. */
    @Test
    void a_cantilever_has_the_effective_length_of_its_loading() {
        assertThat(value(measured(cantilever(DeckPiece.joist()), parameters()), "l_ef"))
                .isEqualTo(300);
        assertThat(value(measured(cantilever(DeckPiece.beam(1)), parameters()), "l_ef"))
                .isEqualTo(480);
    }

    private static DeckPiece cantilever(DeckPiece piece) {
        Share share = new Share(
                List.of(new double[] {0, 0, 0, 0}, new double[] {0, 1e6, 0, 0}),
                List.of(new double[3], new double[3]),
                0);
        return piece.length(3625)
                .support(25, 50)
                .support(3025, 50)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 25, 3025)
                .stretch(Span.Kind.CANTILEVER_AT_END, 3025, 3625)
                .under(a -> a.with(Action.IMPOSED, share));
    }

    @Test
    void the_cantilever_is_named() {
        assertThat(measured(cantilever(DeckPiece.joist()), parameters()).remark())
                .startsWith("hogging in the cantilever at its end");
    }

    /** (6.31) for hardwood: nothing but the species differs in how the stress at buckling is found. */
    @Test
    void hardwood_uses_the_general_critical_stress() {
        Evaluation.Measured m = measured(stressed(DeckPiece.joist().of("D30"), 0, 9), parameters());
        assertThat(m.working()).anyMatch(s -> s.equation().equals("(6.31)"));
        assertThat(m.working()).noneMatch(s -> s.equation().equals("(6.32)"));
    }

    @Test
    void the_concentrated_load_has_its_own_check() {
        DeckPiece piece = DeckPiece.joist()
                .span(3600, 50)
                .under(a -> a.with(Action.IMPOSED, moments(5 * W, 0)).with(Action.CONCENTRATED, moments(2 * W, 0)));
        assertThat(((Measure) measured(piece, parameters()).found()).value()).isCloseTo(7.5, within(1e-9));
        Evaluation.Measured concentrated = measured(piece, parameters().with("loading", "concentrated"));
        assertThat(((Measure) concentrated.found()).value()).isCloseTo(3.0, within(1e-9));
        assertThat(concentrated.remark()).contains("6.10 concentrated");
    }

    @Test
    void a_missing_strength_class_is_named_with_where_to_give_it() {
        Evaluation e = stressed(DeckPiece.joist().ofUnknownClass(), 1, 0).evaluate(BENDING, parameters());
        assertThat(e)
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .singleElement()
                                .satisfies(n -> assertThat(n.pointer().value()).isEqualTo("/timbers/0/strengthClass"))
                                .satisfies(n -> assertThat(n.what()).contains("for example C24")));
    }

    @Test
    void missing_loads_are_passed_on() {
        Evaluation e = DeckPiece.joist().span(3600, 50).evaluate(BENDING, parameters());
        assertThat(e)
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .singleElement()
                                .satisfies(n -> assertThat(n.pointer().value()).isEqualTo("/platforms/0/boards")));
    }

    @Test
    void a_class_that_the_table_lacks_is_out_of_scope() {
        Evaluation e = stressed(DeckPiece.joist().of("GL24h"), 1, 0).evaluate(BENDING, parameters());
        assertThat(e)
                .isInstanceOfSatisfying(
                        Evaluation.OutOfScope.class, o -> assertThat(o.reason()).contains("GL24h"));
    }

    @Test
    void a_category_that_the_table_lacks_is_out_of_scope() {
        Evaluation e = stressed(DeckPiece.joist().category("K"), 1, 0).evaluate(BENDING, parameters());
        assertThat(e)
                .isInstanceOfSatisfying(
                        Evaluation.OutOfScope.class, o -> assertThat(o.reason()).contains("category K"));
    }
}
