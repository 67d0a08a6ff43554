package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.en1995.LinearAnalysis.Share;
import org.deckplanreview.submission.BeamSeating;
import org.junit.jupiter.api.Test;

/**
 * Joints of beams and posts, EN 1995-1-1:2004, 8.1.4, 8.2.2, 8.5 and 8.7, coefficients from memory. By hand for bolts M12 of
 * steel 400 N/mm2, beams of 47 mm at both sides of a post of 100 mm, all C24 (350 kg/m3), service class 3, medium-term:
 * f_h,2,k = 0.082 * 0.88 * 350 = 25.256; k_90 = 1.35 + 0.18 = 1.53; f_h,1,k = 16.507 N/mm2; M_y,Rk = 0.3 * 400 * 12^2.6 =
 * 76745 N mm; g 9310, h 15154, j 5165, k 6970 N, each for one of two planes.
 */
class JointTest {

    private static final Method SHEAR = new JointShear();
    private static final Method SPLITTING = new JointSplitting();
    private static final Method DISTANCE = new JointDistance();
    private static final Method HANGER = new HangerForce();

    private static StandardParameters parameters() {
        return StandardParameters.ofEurocodes();
    }

    private static DeckPiece beam(BeamSeating seating, Joints joint) {
        return beam(2, seating, joint);
    }

    private static DeckPiece beam(int plies, BeamSeating seating, Joints joint) {
        return DeckPiece.beam(plies)
                .section(47, 220)
                .length(3000)
                .support(300, 100)
                .support(2700, 100)
                .stretch(Span.Kind.CANTILEVER_AT_START, 0, 300)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 300, 2700)
                .stretch(Span.Kind.CANTILEVER_AT_END, 2700, 3000)
                .postDepth(100)
                .fixed(seating, joint.make());
    }

    /** Reaction and shear of 1.5 Q at both posts, by imposed load. */
    private static DeckPiece forced(DeckPiece piece, double designN) {
        double q = designN / 1.5;
        double[] span = new double[4];
        double[] support = {q, q, q};
        return piece.under(
                a -> a.with(Action.IMPOSED, new Share(List.of(span, span, span), List.of(support, support), 2 * q)));
    }

    private static Evaluation.Measured measured(DeckPiece piece, Method method) {
        return (Evaluation.Measured) piece.evaluate(method, parameters());
    }

    private static double allowed(BeamSeating seating, Joints joint) {
        return ((Measure) measured(forced(beam(seating, joint), 1000), SHEAR).allowed()).value();
    }

    private static double value(Evaluation.Measured m, String symbol) {
        return m.working().stream()
                .filter(s -> s.symbol().equals(symbol))
                .mapToDouble(WorkingStep::value)
                .findFirst()
                .orElseThrow();
    }

    /** One bolt, two planes: F_v,Rd = 0.65 * 2 * 5165 / 1.3 = 5165 N. */
    @Test
    void a_bolt_in_double_shear_by_hand() {
        Evaluation.Measured m = measured(
                forced(beam(BeamSeating.BOTH_SIDES, Joints.bolts(12, 1, 1).steel(400)), 5000), SHEAR);
        assertThat(value(m, "f_h,2,k")).isCloseTo(25.256, within(1e-3));
        assertThat(value(m, "k_90")).isCloseTo(1.53, within(1e-12));
        assertThat(value(m, "f_h,1,k")).isCloseTo(16.507, within(1e-3));
        assertThat(value(m, "M_y,Rk")).isCloseTo(76_745, within(1.0));
        assertThat(value(m, "F_g")).isCloseTo(9310, within(2.0));
        assertThat(value(m, "F_h")).isCloseTo(15_154, within(2.0));
        assertThat(value(m, "F_j")).isCloseTo(5165, within(5.0));
        assertThat(value(m, "F_k")).isCloseTo(6970, within(5.0));
        assertThat(m.remark()).contains("mode j: the fasteners tilt in the beam and bend in the post");
        assertThat(m.utilisation()).isLessThan(1).isCloseTo(5000 / 5165.0, within(2e-3));
        assertThat(m.assumptions()).contains("Bolts whose washers are not given are taken without rope effect.");
    }

    @Test
    void the_joint_complies_up_to_its_resistance() {
        Joints joint = Joints.bolts(12, 4, 2).steel(400);
        double limit = allowed(BeamSeating.BOTH_SIDES, joint);
        assertThat(measured(forced(beam(BeamSeating.BOTH_SIDES, joint), limit), SHEAR)
                        .utilisation())
                .isCloseTo(1, within(1e-12));
        assertThat(measured(forced(beam(BeamSeating.BOTH_SIDES, joint), limit * 1.001), SHEAR)
                        .utilisation())
                .isGreaterThan(1);
    }

    /** (8.34): two in a row at 5 d count 2^0.9 * (5 / 13)^0.25 = 1.4696; across the grain, side by side, two. */
    @Test
    void a_row_up_the_post_counts_less_than_its_number() {
        double one = allowed(BeamSeating.BOTH_SIDES, Joints.bolts(12, 1, 1).steel(400));
        assertThat(allowed(BeamSeating.BOTH_SIDES, Joints.bolts(12, 2, 1).steel(400)))
                .isCloseTo(1.4696 * one, within(1e-4 * one));
        assertThat(allowed(BeamSeating.BOTH_SIDES, Joints.bolts(12, 2, 2).steel(400)))
                .isCloseTo(2 * one, within(1e-9 * one));
        assertThat(allowed(BeamSeating.BOTH_SIDES, Joints.bolts(12, 3, 2).steel(400)))
                .isCloseTo(2.4696 * one, within(1e-4 * one));
    }

    /** 8.5.2(2): 3 * 2.5 * π / 4 * (40^2 - 13^2) = 8429 N, so that a quarter, 2107 N, is capped at 25 % of 5165 N. */
    @Test
    void washers_give_a_rope_effect() {
        Evaluation.Measured m = measured(
                forced(
                        beam(
                                BeamSeating.BOTH_SIDES,
                                Joints.bolts(12, 1, 1).steel(400).washers(40)),
                        1000),
                SHEAR);
        assertThat(value(m, "F_ax,Rk")).isCloseTo(8429, within(1.0));
        assertThat(value(m, "F_j")).isCloseTo(1.25 * 5165, within(7.0));
    }

    /** One side: t_1 = 94 mm of two plies, one plane, (8.6). */
    @Test
    void a_beam_at_one_side_is_in_single_shear() {
        Evaluation.Measured m = measured(
                forced(beam(BeamSeating.ONE_SIDE, Joints.bolts(12, 1, 1).steel(400)), 1000), SHEAR);
        assertThat(value(m, "t_1")).isEqualTo(94);
        assertThat(value(m, "F_a")).isCloseTo(16.507 * 94 * 12, within(2.0));
        assertThat(value(m, "F_f")).isCloseTo(6970, within(5.0));
        assertThat(m.remark()).contains("mode f");
        assertThat(((Measure) m.allowed()).value()).isCloseTo(0.65 / 1.3 * 6970, within(5.0));
    }

    /** 8.7.1(3): d = 1.1 * 0.6 * 12 = 7.92 mm; of 8 mm 5.28 mm, which is not over 6 mm, 8.7.1(4) and (5). */
    @Test
    void screws_count_with_their_effective_diameter() {
        Joints screws = Joints.screws(12, 4, 2).steel(600).penetration(80);
        Evaluation.Measured m = measured(forced(beam(BeamSeating.BOTH_SIDES, screws), 1000), SHEAR);
        assertThat(value(m, "d")).isCloseTo(7.92, within(1e-9));
        assertThat(value(m, "t_2")).isEqualTo(80);
        assertThat(value(m, "N_ef")).isEqualTo(4);
        Joints thin = Joints.screws(8, 4, 2).steel(600).penetration(80);
        assertThat(forced(beam(BeamSeating.BOTH_SIDES, thin), 1000).evaluate(SHEAR, parameters()))
                .isInstanceOf(Evaluation.OutOfScope.class);
    }

    @Test
    void bolts_over_30_mm_are_out_of_scope() {
        assertThat(forced(beam(BeamSeating.BOTH_SIDES, Joints.bolts(30, 1, 1).steel(400)), 1000)
                        .evaluate(SHEAR, parameters()))
                .isInstanceOf(Evaluation.Measured.class);
        assertThat(forced(beam(BeamSeating.BOTH_SIDES, Joints.bolts(31, 1, 1).steel(400)), 1000)
                        .evaluate(SHEAR, parameters()))
                .isInstanceOf(Evaluation.OutOfScope.class);
    }

    @Test
    void uneven_plies_at_both_sides_are_out_of_scope() {
        assertThat(forced(beam(3, BeamSeating.BOTH_SIDES, Joints.bolts(12, 4, 2).steel(400)), 1000)
                        .evaluate(SHEAR, parameters()))
                .isInstanceOf(Evaluation.OutOfScope.class);
    }

    @Test
    void one_screw_cannot_hold_both_sides() {
        DeckPiece piece = forced(
                beam(BeamSeating.BOTH_SIDES, Joints.screws(12, 1, 1).steel(600).penetration(80)), 1000);
        assertThat(piece.evaluate(SHEAR, parameters())).isInstanceOf(Evaluation.OutOfScope.class);
        assertThat(piece.evaluate(SPLITTING, parameters())).isInstanceOf(Evaluation.OutOfScope.class);
        assertThat(piece.evaluate(DISTANCE, parameters().with("place", "beam-lower-edge")))
                .isInstanceOf(Evaluation.Measured.class);
    }

    @Test
    void a_beam_on_its_posts_is_not_carried_by_its_joint() {
        DeckPiece piece = forced(beam(BeamSeating.ON_POST, Joints.bolts(12, 1, 1)), 1000);
        for (Method method : List.of(SHEAR, SPLITTING, DISTANCE)) {
            assertThat(piece.evaluate(method, parameters())).isInstanceOf(Evaluation.NotApplicable.class);
        }
    }

    @Test
    void what_the_joint_lacks_is_asked_for_at_once() {
        DeckPiece bare =
                forced(beam(BeamSeating.BOTH_SIDES, Joints.screws(12, 4, 1).withoutDistances()), 1000);
        assertThat(needs(bare.evaluate(SHEAR, parameters())))
                .containsExactly(
                        "/platforms/0/beams/0/joint/penetration",
                        "/platforms/0/beams/0/joint/spacing",
                        "/platforms/0/beams/0/joint/tensileStrength");
        assertThat(needs(bare.evaluate(SPLITTING, parameters())))
                .containsExactly("/platforms/0/beams/0/joint/edgeDistance", "/platforms/0/beams/0/joint/spacing");
        DeckPiece none =
                forced(beam(BeamSeating.BOTH_SIDES, Joints.bolts(12, 1, 1)).fixed(BeamSeating.ONE_SIDE, null), 1000);
        assertThat(needs(none.evaluate(SHEAR, parameters()))).containsExactly("/platforms/0/beams/0/joint");
    }

    private static List<String> needs(Evaluation e) {
        return ((Evaluation.Missing) e)
                .needs().stream().map(Need::pointer).map(Object::toString).toList();
    }

    /** (8.4): 14 * 94 * sqrt(110 / (1 - 110 / 220)) = 19519.4 N, F_90,Rd = 0.65 / 1.3 of it = 9759.7 N. */
    @Test
    void splitting_at_the_limit_of_a_hand_calculation() {
        Joints joint = Joints.bolts(12, 2, 1).edge(50).spacing(60);
        assertThat(measured(forced(beam(BeamSeating.BOTH_SIDES, joint), 9759.7), SPLITTING)
                        .utilisation())
                .isCloseTo(1, within(1e-5));
        assertThat(measured(forced(beam(BeamSeating.BOTH_SIDES, joint), 9750), SPLITTING)
                        .utilisation())
                .isLessThan(1);
        assertThat(measured(forced(beam(BeamSeating.BOTH_SIDES, joint), 9770), SPLITTING)
                        .utilisation())
                .isGreaterThan(1);
    }

    @Test
    void splitting_by_a_bolt_beyond_the_beam_is_out_of_scope() {
        Joints joint = Joints.bolts(12, 2, 1).edge(160).spacing(60);
        assertThat(forced(beam(BeamSeating.BOTH_SIDES, joint), 1000).evaluate(SPLITTING, parameters()))
                .isInstanceOf(Evaluation.OutOfScope.class);
    }

    /** Table 8.4 for bolts of 12 mm, along the grain of the post and across that of the beam. */
    @Test
    void distances_of_table_8_4() {
        assertThat(leastMm("in-row")).isEqualTo(60);
        assertThat(leastMm("between-rows")).isEqualTo(48);
        assertThat(leastMm("post-end")).isEqualTo(48);
        assertThat(leastMm("post-end-holding-down")).isEqualTo(84);
        assertThat(leastMm("post-side")).isEqualTo(36);
        assertThat(leastMm("beam-upper-edge")).isEqualTo(48);
        assertThat(leastMm("beam-lower-edge")).isEqualTo(36);
        assertThat(leastMm("beam-end")).isEqualTo(84);
    }

    /** Post of 100 mm, rows 48 mm apart: 26 mm; beam of 220 mm, first bolt at 60 mm, two 60 mm apart: 100 mm; end 276 mm. */
    @Test
    void distances_that_follow_from_the_drawing() {
        assertThat(foundMm("post-side")).isEqualTo(26);
        assertThat(foundMm("beam-lower-edge")).isEqualTo(100);
        assertThat(foundMm("beam-end")).isEqualTo(276);
    }

    private static double leastMm(String place) {
        return ((Measure) distance(place).allowed()).value();
    }

    private static double foundMm(String place) {
        Evaluation.Measured m = distance(place);
        assertThat(m.utilisation() > 1).isEqualTo(((Measure) m.found()).value() < ((Measure) m.allowed()).value());
        return ((Measure) m.found()).value();
    }

    private static Evaluation.Measured distance(String place) {
        return (Evaluation.Measured) forced(beam(BeamSeating.BOTH_SIDES, Joints.bolts(12, 4, 2)), 1000)
                .evaluate(DISTANCE, parameters().with("place", place));
    }

    private static DeckPiece hung(double designN, Double resistanceN) {
        double q = designN / 1.5;
        double[] support = {q, q, q};
        DeckPiece piece = DeckPiece.joist()
                .length(3600)
                .hanger(0, MemberSupport.Kind.LEDGER)
                .hanger(3600, MemberSupport.Kind.BEAM)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 0, 3600)
                .under(a ->
                        a.with(Action.IMPOSED, new Share(List.of(new double[4]), List.of(support, support), 2 * q)));
        return resistanceN == null ? piece : piece.hangersOf(Measure.of(resistanceN, MeasureUnit.NEWTON_));
    }

    /** (2.17): 0.65 * 6000 / 1.3 = 3000 N. */
    @Test
    void a_hanger_at_the_limit_of_a_hand_calculation() {
        assertThat(measured(hung(3000, 6000.0), HANGER).utilisation()).isCloseTo(1, within(1e-12));
        assertThat(measured(hung(2990, 6000.0), HANGER).utilisation()).isLessThan(1);
        assertThat(measured(hung(3010, 6000.0), HANGER).utilisation()).isGreaterThan(1);
    }

    @Test
    void a_hanger_without_resistance_is_no_hanger() {
        assertThat(hung(3000, 0.0).evaluate(HANGER, parameters())).isInstanceOf(Evaluation.OutOfScope.class);
    }

    /** The beam under the other end carries more and has no part in it; 1.5 * 2000 N against 0.65 * 6000 / 1.3 = 3000 N. */
    @Test
    void of_a_joist_on_one_hanger_the_hanger_alone_counts() {
        double[] support = {2000, 2000, 2000};
        DeckPiece piece = DeckPiece.joist()
                .length(3600)
                .hanger(0, MemberSupport.Kind.LEDGER)
                .support(3600, 50)
                .stretch(Span.Kind.BETWEEN_SUPPORTS, 0, 3600)
                .under(a -> a.with(
                        Action.IMPOSED,
                        new Share(List.of(new double[4]), List.of(support, new double[] {9000, 9000, 9000}), 11_000)))
                .hangersOf(Measure.of(6000, MeasureUnit.NEWTON_));
        assertThat(measured(piece, HANGER).utilisation()).isCloseTo(1, within(1e-12));
    }

    @Test
    void a_hanger_of_unknown_resistance_is_told_what_would_do() {
        Evaluation.Missing m = (Evaluation.Missing) hung(3001, null).evaluate(HANGER, parameters());
        assertThat(m.needs()).singleElement().satisfies(n -> {
            assertThat(n.pointer().value()).isEqualTo("/platforms/0/joists/hangerResistance");
            assertThat(n.what()).endsWith("; 6.01 kN would do");
        });
        assertThat(measured(hung(3001, 6010.0), HANGER).utilisation()).isLessThanOrEqualTo(1);
    }

    @Test
    void a_joist_on_a_beam_has_no_hanger() {
        assertThat(DeckPiece.joist().span(3600, 50).evaluate(HANGER, parameters()))
                .isInstanceOf(Evaluation.NotApplicable.class);
    }

    @Property(tries = 100)
    void more_fasteners_never_carry_less(
            @ForAll @IntRange(min = 2, max = 12) int count,
            @ForAll @IntRange(min = 1, max = 3) int rows,
            @ForAll @DoubleRange(min = 10, max = 24) double diameter) {
        for (BeamSeating seating : List.of(BeamSeating.BOTH_SIDES, BeamSeating.ONE_SIDE)) {
            assertThat(allowed(seating, Joints.bolts(diameter, count + 1, rows).steel(400)))
                    .isGreaterThanOrEqualTo(
                            allowed(seating, Joints.bolts(diameter, count, rows).steel(400)));
            assertThat(allowed(
                            seating,
                            Joints.screws(diameter, count + 1, rows).steel(400).penetration(70)))
                    .isGreaterThanOrEqualTo(allowed(
                            seating,
                            Joints.screws(diameter, count, rows).steel(400).penetration(70)));
        }
    }

    @Property(tries = 100)
    void more_load_never_lowers_the_utilisation(
            @ForAll @DoubleRange(min = 0, max = 1e5) double load,
            @ForAll @DoubleRange(min = 0, max = 1e4) double more) {
        Joints joint = Joints.bolts(12, 4, 2).steel(400);
        for (Method method : List.of(SHEAR, SPLITTING)) {
            assertThat(measured(forced(beam(BeamSeating.BOTH_SIDES, joint), load + more), method)
                            .utilisation())
                    .isGreaterThanOrEqualTo(measured(forced(beam(BeamSeating.BOTH_SIDES, joint), load), method)
                            .utilisation());
        }
    }
}
