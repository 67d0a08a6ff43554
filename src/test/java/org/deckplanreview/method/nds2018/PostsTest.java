package org.deckplanreview.method.nds2018;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.measure.MeasureUnit.INCH;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.POUND_FORCE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.en1995.PostPiece;
import org.deckplanreview.method.en1995.StandardParameters;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Grade;
import org.deckplanreview.submission.Species;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hand calculations of posts outdoors as solid columns, NDS 2018, 3.7.1. */
class PostsTest {

    private static final Percentage HAND = Percentage.withPercentage(0.01);
    private static final StandardParameters PARAMETERS = Values.onFile();
    private static final double C_SAWN = 0.8;

    private static double mm(double in) {
        return INCH.convert(in, MILLIMETRE);
    }

    private static PostPiece post(Species species, double sideIn, double heightIn, double liveLbf) {
        return PostPiece.post(mm(sideIn), mm(sideIn))
                .of(species, Grade.NO_2)
                .height(mm(heightIn))
                .loads(0, POUND_FORCE.convert(liveLbf, NEWTON_));
    }

    private static Evaluation.Measured measured(PostPiece post) {
        return (Evaluation.Measured) post.evaluate(new PostColumn(), PARAMETERS);
    }

    private static double step(Evaluation.Measured m, String symbol) {
        return m.working().stream()
                .filter(s -> s.symbol().equals(symbol))
                .mapToDouble(WorkingStep::value)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Southern pine No. 2, 4x4, 96 in: l_e/d 27.4286; E_min' 510000 * 0.9 = 459000 psi; F_cE 0.822 * 459000 / 752.327 =
     * 501.512 psi; F_c* 1450 * 0.8 = 1160 psi; C_P 0.384346 (3.7-1); F_c' 445.84 psi on 12.25 in2: 5461.6 lbf.
     */
    @ParameterizedTest
    @CsvSource({"5460, true", "5463, false"})
    void a_4x4_of_8_ft_takes_5461_lbf(double load, boolean enough) {
        Evaluation.Measured m = measured(post(Species.SOUTHERN_PINE, 3.5, 96, load));
        assertThat(step(m, "λ")).isCloseTo(27.4286, HAND);
        assertThat(step(m, "F_cE")).isCloseTo(501.512, HAND);
        assertThat(step(m, "F_c,star")).isCloseTo(1160, HAND);
        assertThat(step(m, "C_P")).isCloseTo(0.384346, HAND);
        assertThat(m.utilisation()).isCloseTo(load / 5461.6, HAND);
        assertThat(m.utilisation() <= 1).isEqualTo(enough);
    }

    /** Table 4D, Douglas fir-larch No. 2, 6x6: F_c 700 * C_M 0.91 * C_i 0.80; E_min 470000 * C_M 1.0 * C_i 0.95. */
    @Test
    void a_6x6_is_a_timber_and_loses_less_by_wet_service() {
        Evaluation.Measured m = measured(post(Species.DOUGLAS_FIR_LARCH, 5.5, 96, 1000));
        assertThat(step(m, "F_c,star")).isCloseTo(700 * 0.91 * 0.8, HAND);
        assertThat(step(m, "E_min'")).isCloseTo(470000 * 0.95, HAND);
    }

    /** 3.7.1.4: l_e/d of at most 50 is 175 in of a 4x4. */
    @ParameterizedTest
    @CsvSource({"175, true", "175.1, false"})
    void a_column_may_be_fifty_times_as_long_as_thick(double height, boolean enough) {
        Evaluation.Measured m = measured(post(Species.SOUTHERN_PINE, 3.5, height, 100));
        assertThat(m.sense().holds(m.utilisation(), 1)).isEqualTo(enough);
        assertThat(m.remark().equals("too slender for a column")).isEqualTo(!enough);
    }

    @Test
    void a_posts_own_weight_counts_and_a_duration_factor_of_0_9_on_it_alone() {
        PostPiece heavy = PostPiece.post(mm(3.5), mm(3.5))
                .of(Species.SOUTHERN_PINE, Grade.NO_2)
                .height(mm(96))
                .loads(0, 0)
                .weight(POUND_FORCE.convert(1000, NEWTON_));
        Evaluation.Measured m = measured(heavy);
        assertThat(step(m, "P")).isCloseTo(1000, HAND);
        assertThat(step(m, "C_D")).isEqualTo(0.9);
    }

    @Test
    void a_beam_on_one_side_or_off_the_axis_bends_the_post_and_is_out_of_scope() {
        PostPiece oneSide = post(Species.SOUTHERN_PINE, 5.5, 96, 1000).seated(BeamSeating.ONE_SIDE, mm(1.5));
        PostPiece off = post(Species.SOUTHERN_PINE, 5.5, 96, 1000).offBeam(25);
        PostPiece both = post(Species.SOUTHERN_PINE, 5.5, 96, 1000).seated(BeamSeating.BOTH_SIDES, mm(1.5));
        assertThat(oneSide.evaluate(new PostColumn(), PARAMETERS)).isInstanceOf(Evaluation.OutOfScope.class);
        assertThat(off.evaluate(new PostColumn(), PARAMETERS)).isInstanceOf(Evaluation.OutOfScope.class);
        assertThat(both.evaluate(new PostColumn(), PARAMETERS)).isInstanceOf(Evaluation.Measured.class);
    }

    @Test
    void a_post_of_unknown_height_is_asked_for() {
        PostPiece post = post(Species.SOUTHERN_PINE, 5.5, 96, 1000).ofUnknownHeight();
        assertThat(post.evaluate(new PostColumn(), PARAMETERS)).isInstanceOf(Evaluation.Missing.class);
    }

    private static double columnStability(double ratio) {
        Sheet sheet = Sheet.blank();
        sheet.given("α", ratio, RATIO, "", "");
        sheet.given("c", C_SAWN, RATIO, "", "");
        return sheet.calculate(PostColumn.STABILITY);
    }

    private static double beamStability(double ratio) {
        Sheet sheet = Sheet.blank();
        sheet.given("α", ratio, RATIO, "", "");
        return sheet.calculate(BeamStability.FACTOR);
    }

    /** C_P tends to 1 for stocky columns and to F_cE/F_c*, Euler's load, for slender ones. */
    @Property
    void the_stability_factor_lies_below_both_its_limits(@ForAll @DoubleRange(min = 0.01, max = 1000) double ratio) {
        double cp = columnStability(ratio);
        assertThat(cp).isPositive().isLessThan(Math.min(1, ratio) * (1 + 1e-9));
    }

    @Test
    void the_stability_factor_reaches_its_limits() {
        assertThat(columnStability(1e4)).isGreaterThan(0.9999);
        assertThat(columnStability(1e-4) / 1e-4).isGreaterThan(0.9999);
    }

    @Property
    void a_longer_post_or_more_load_never_uses_less(
            @ForAll @DoubleRange(min = 12, max = 170) double height,
            @ForAll @DoubleRange(min = 10, max = 8000) double load,
            @ForAll @DoubleRange(min = 1, max = 1.2) double more) {
        double use = measured(post(Species.HEM_FIR, 3.5, height, load)).utilisation();
        assertThat(measured(post(Species.HEM_FIR, 3.5, height * more, load)).utilisation())
                .isGreaterThanOrEqualTo(use);
        assertThat(measured(post(Species.HEM_FIR, 3.5, height, load * more)).utilisation())
                .isGreaterThanOrEqualTo(use);
    }

    /** C_L of (3.3-6) likewise: 1 for an edge that cannot buckle, less for a slender one. */
    @Property
    void the_beam_stability_factor_rises_with_the_critical_stress(
            @ForAll @DoubleRange(min = 0.01, max = 100) double ratio,
            @ForAll @DoubleRange(min = 1, max = 2) double more) {
        double cl = beamStability(ratio);
        assertThat(cl).isBetween(0.0, 1.0);
        assertThat(beamStability(ratio * more)).isGreaterThanOrEqualTo(cl - 1e-12);
    }
}
