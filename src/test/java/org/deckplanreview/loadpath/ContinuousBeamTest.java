package org.deckplanreview.loadpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.deckplanreview.loadpath.BeamLoad.Distributed;
import org.deckplanreview.loadpath.BeamLoad.Point;
import org.junit.jupiter.api.Test;

/**
 * Against handbook formulas, all from memory: Roark's Formulas for Stress and Strain, 7th edition, Table 8.1 (single
 * spans), and the Steel Designers' Manual, tables of simply supported, cantilever and continuous beams of equal spans.
 */
class ContinuousBeamTest {

    private static final double L = 4000;
    private static final double W = 1.7;
    private static final double P = 2300;
    private static final double EI = 11000.0 * 47 * 145 * 145 * 145 / 12;
    private static final Percentage EXACT = Percentage.withPercentage(1e-9);

    private static ContinuousBeam beam(double length, double... supports) {
        return new ContinuousBeam(length, supports, EI, 0);
    }

    private static BeamLoad uniform(double from, double to) {
        return Distributed.uniform(from, to, W);
    }

    @Test
    void a_uniform_load_on_a_single_span_gives_an_eighth_w_l_squared_and_5_w_l_to_the_4th_over_384_ei() {
        BeamResponse r = beam(L, 0, L).under(List.of(uniform(0, L)));
        assertThat(r.momentNMm(L / 2)).isCloseTo(W * L * L / 8, EXACT);
        assertThat(r.deflectionMm(L / 2)).isCloseTo(5 * W * L * L * L * L / 384 / EI, EXACT);
        assertThat(r.slope(0)).isCloseTo(W * L * L * L / 24 / EI, EXACT);
        assertThat(r.reactionN(0)).isCloseTo(W * L / 2, EXACT);
        assertThat(r.shearBehindN(0)).isCloseTo(W * L / 2, EXACT);
        assertThat(r.shearBeforeN(1)).isCloseTo(-W * L / 2, EXACT);
        assertThat(r.momentNMm(L)).isCloseTo(0, within(1e-6));
        assertThat(r.deflectionMm(L)).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_point_load_at_a_third_gives_p_a_b_over_l_and_p_a2_b2_over_3_e_i_l_under_it() {
        double a = L / 3;
        double b = L - a;
        BeamResponse r = beam(L, 0, L).under(List.of(new Point(a, P)));
        assertThat(r.momentNMm(a)).isCloseTo(P * a * b / L, EXACT);
        assertThat(r.deflectionMm(a)).isCloseTo(P * a * a * b * b / (3 * EI * L), EXACT);
        assertThat(r.shearN(a - 1)).isCloseTo(P * b / L, EXACT);
        assertThat(r.shearN(a)).isCloseTo(-P * a / L, EXACT);
    }

    @Test
    void a_triangular_load_gives_w_l2_over_9_sqrt_3_at_l_over_sqrt_3() {
        BeamResponse r = beam(L, 0, L).under(List.of(new Distributed(0, L, 0, W)));
        double x = L / Math.sqrt(3);
        assertThat(r.momentNMm(x)).isCloseTo(W * L * L / (9 * Math.sqrt(3)), EXACT);
        assertThat(r.shearN(x)).isCloseTo(0, within(1e-9 * W * L));
        assertThat(r.reactionN(0)).isCloseTo(W * L / 6, EXACT);
        assertThat(r.reactionN(1)).isCloseTo(W * L / 3, EXACT);
        // w = wo x (7 L4 - 10 L2 x2 + 3 x4) / (360 E I L)
        assertThat(r.deflectionMm(L / 2))
                .isCloseTo(W * L / 2 * L * L * L * L * (7 - 2.5 + 3.0 / 16) / (360 * EI * L), EXACT);
    }

    @Test
    void a_load_over_part_of_a_span_gives_r_squared_over_2_w() {
        double c = 1500;
        BeamResponse r = beam(L, 0, L).under(List.of(uniform(0, c)));
        double left = W * c * (2 * L - c) / (2 * L);
        assertThat(r.reactionN(0)).isCloseTo(left, EXACT);
        assertThat(r.reactionN(1)).isCloseTo(W * c * c / (2 * L), EXACT);
        assertThat(r.momentNMm(left / W)).isCloseTo(left * left / (2 * W), EXACT);
    }

    @Test
    void an_overhang_adds_the_rotation_of_its_support_to_a_cantilevers_w_l_4_over_8_ei() {
        double c = 1200;
        BeamResponse r = beam(L + c, 0, L).under(List.of(uniform(L, L + c)));
        assertThat(r.momentNMm(L)).isCloseTo(-W * c * c / 2, EXACT);
        assertThat(r.momentNMm(L / 2)).isCloseTo(-W * c * c / 4, EXACT);
        double cantilever = W * c * c * c * c / 8 / EI;
        double rotation = W * c * c / 2 * L / 3 / EI;
        assertThat(r.deflectionMm(L + c)).isCloseTo(cantilever + rotation * c, EXACT);
        // largest uplift of the span M L2 / (9 sqrt 3 E I), at L / sqrt 3 from the far support
        assertThat(r.deflectionMm(L / Math.sqrt(3))).isCloseTo(-W * c * c / 2 * L * L / (9 * Math.sqrt(3) * EI), EXACT);
        assertThat(r.reactionN(0)).isCloseTo(-W * c * c / (2 * L), EXACT);
        assertThat(r.shearBehindN(1)).isCloseTo(W * c, EXACT);
        assertThat(r.slope(0)).isNegative();
    }

    @Test
    void a_point_load_at_the_tip_of_an_overhang_at_the_start_gives_p_a2_l_plus_a_over_3_ei() {
        double a = 900;
        BeamResponse r = beam(a + L, a, a + L).under(List.of(new Point(0, P)));
        assertThat(r.deflectionMm(0)).isCloseTo(P * a * a * (L + a) / (3 * EI), EXACT);
        assertThat(r.momentNMm(a)).isCloseTo(-P * a, EXACT);
        assertThat(r.shearBeforeN(0)).isCloseTo(-P, EXACT);
        assertThat(r.reactionN(0)).isCloseTo(P * (L + a) / L, EXACT);
        assertThat(r.reactionN(1)).isCloseTo(-P * a / L, EXACT);
    }

    @Test
    void two_equal_spans_give_an_eighth_hogging_and_9_128ths_sagging() {
        BeamResponse r = beam(2 * L, 0, L, 2 * L).under(List.of(uniform(0, 2 * L)));
        assertThat(r.momentNMm(L)).isCloseTo(-0.125 * W * L * L, EXACT);
        assertThat(r.momentNMm(3 * L / 8)).isCloseTo(9.0 / 128 * W * L * L, EXACT);
        assertThat(r.reactionN(0)).isCloseTo(0.375 * W * L, EXACT);
        assertThat(r.reactionN(1)).isCloseTo(1.25 * W * L, EXACT);
        assertThat(r.reactionN(2)).isCloseTo(0.375 * W * L, EXACT);
        assertThat(r.shearBeforeN(1)).isCloseTo(-0.625 * W * L, EXACT);
        // a propped cantilever: w L4 / (185 E I) at 0.4215 L, the 185 being rounded in the handbook
        assertThat(r.deflectionMm(0.4215 * L)).isCloseTo(W * L * L * L * L / 185 / EI, Percentage.withPercentage(0.2));
    }

    @Test
    void one_of_two_equal_spans_loaded_gives_a_16th_hogging_and_lifts_the_far_end() {
        BeamResponse r = beam(2 * L, 0, L, 2 * L).under(List.of(uniform(0, L)));
        assertThat(r.momentNMm(L)).isCloseTo(-0.0625 * W * L * L, EXACT);
        assertThat(r.reactionN(0)).isCloseTo(0.4375 * W * L, EXACT);
        assertThat(r.reactionN(1)).isCloseTo(0.625 * W * L, EXACT);
        assertThat(r.reactionN(2)).isCloseTo(-0.0625 * W * L, EXACT);
        assertThat(r.momentNMm(0.4375 * L)).isCloseTo(0.0957 * W * L * L, Percentage.withPercentage(0.1));
    }

    @Test
    void a_point_load_in_the_middle_of_one_of_two_equal_spans_gives_0_203_and_0_094_p_l() {
        BeamResponse r = beam(2 * L, 0, L, 2 * L).under(List.of(new Point(L / 2, P)));
        assertThat(r.momentNMm(L / 2)).isCloseTo(13.0 / 64 * P * L, EXACT);
        assertThat(r.momentNMm(L)).isCloseTo(-3.0 / 32 * P * L, EXACT);
    }

    @Test
    void three_equal_spans_give_a_tenth_hogging_and_0_08_and_0_025_sagging() {
        BeamResponse r = beam(3 * L, 0, L, 2 * L, 3 * L).under(List.of(uniform(0, 3 * L)));
        assertThat(r.momentNMm(L)).isCloseTo(-0.1 * W * L * L, EXACT);
        assertThat(r.momentNMm(0.4 * L)).isCloseTo(0.08 * W * L * L, EXACT);
        assertThat(r.momentNMm(1.5 * L)).isCloseTo(0.025 * W * L * L, EXACT);
        assertThat(r.reactionN(0)).isCloseTo(0.4 * W * L, EXACT);
        assertThat(r.reactionN(1)).isCloseTo(1.1 * W * L, EXACT);
    }

    @Test
    void four_equal_spans_give_3_28ths_and_2_28ths_hogging() {
        BeamResponse r = beam(4 * L, 0, L, 2 * L, 3 * L, 4 * L).under(List.of(uniform(0, 4 * L)));
        assertThat(r.momentNMm(L)).isCloseTo(-3.0 / 28 * W * L * L, EXACT);
        assertThat(r.momentNMm(2 * L)).isCloseTo(-2.0 / 28 * W * L * L, EXACT);
        assertThat(r.reactionN(1)).isCloseTo(32.0 / 28 * W * L, EXACT);
    }

    /** Timoshenko, Strength of Materials, part I, deflection by shear; from memory. */
    @Test
    void shear_adds_w_l_squared_over_8_times_kappa_over_ga_to_a_single_spans_deflection() {
        double flexibility = 1.2 / (690.0 * 47 * 145);
        BeamResponse r = new ContinuousBeam(L, new double[] {0, L}, EI, flexibility).under(List.of(uniform(0, L)));
        assertThat(r.deflectionMm(L / 2))
                .isCloseTo(5 * W * L * L * L * L / 384 / EI + W * L * L / 8 * flexibility, EXACT);
        assertThat(r.slope(0)).isCloseTo(W * L * L * L / 24 / EI + W * L / 2 * flexibility, EXACT);
        assertThat(r.momentNMm(L / 2)).isCloseTo(W * L * L / 8, EXACT);
    }

    /**
     * Both spans bend alike to a fixed section over the middle support: by the force method with bending and shear,
     * {@code R0 (L3/3EI + L kappa/GA) = w (L4/8EI + L2/2 kappa/GA)}.
     */
    @Test
    void shear_takes_hogging_from_the_middle_of_two_equal_spans() {
        double flexibility = 1.2 / (690.0 * 47 * 145);
        BeamResponse r = new ContinuousBeam(2 * L, new double[] {0, L, 2 * L}, EI, flexibility)
                .under(List.of(uniform(0, 2 * L)));
        double end = W * (L * L * L * L / 8 / EI + L * L / 2 * flexibility) / (L * L * L / 3 / EI + L * flexibility);
        assertThat(r.reactionN(0)).isCloseTo(end, EXACT);
        assertThat(r.momentNMm(L)).isCloseTo(end * L - W * L * L / 2, EXACT);
    }

    @Test
    void a_load_over_a_support_bends_nothing() {
        BeamResponse r = beam(2 * L, 0, L, 2 * L).under(List.of(new Point(L, P), new Point(0, P), new Point(2 * L, P)));
        for (int i = 0; i < 3; i++) {
            assertThat(r.reactionN(i)).isEqualTo(P);
            assertThat(r.shearBeforeN(i)).isZero();
            assertThat(r.shearBehindN(i)).isZero();
        }
        assertThat(r.momentNMm(L / 2)).isZero();
    }

    @Test
    void a_beam_on_one_support_is_refused() {
        assertThatThrownBy(() -> beam(L, 100)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void supports_at_one_place_or_beyond_the_beam_are_refused() {
        assertThatThrownBy(() -> beam(L, 100, 100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> beam(L, 0, L + 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> beam(L, -1, L)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_load_or_a_question_beyond_the_beam_is_refused() {
        ContinuousBeam beam = beam(L, 0, L);
        assertThatThrownBy(() -> beam.under(List.of(uniform(0, L + 1)))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> beam.under(List.of(new Point(-1, P)))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> beam.under(List.of()).momentNMm(L + 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Distributed.uniform(5, 5, W)).isInstanceOf(IllegalArgumentException.class);
    }
}
