package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.deckplanreview.formula.Sheet;
import org.junit.jupiter.api.Test;

/**
 * Yield modes of dowel-type fasteners against plastic equilibrium (K. W. Johansen, Theory of timber connections, 1949, from
 * memory): timber crushes at f_h along the fastener, which stays straight between plastic hinges of moment M_y. With e the
 * part of a timber beside the shear plane where the fastener presses one way, its force is f_h d (2 e - t) where it tilts
 * through the whole timber and f_h d e where a hinge ends it; the moments about the shear plane of both timbers and the
 * hinges add up to nothing. EN 1995-1-1:2004 multiplies modes with one hinge by 1.05 and those with two by 1.15.
 */
class JohansenTest {

    /** All that happens in one timber under a force r: the moment about the shear plane, less that of a hinge. */
    private static double tilting(double fh, double d, double t, double r) {
        double e = (r / (fh * d) + t) / 2;
        return fh * d * (e * e - t * t / 2);
    }

    private static double hinged(double fh, double d, double my, double r) {
        double e = r / (fh * d);
        return fh * d * e * e / 2 - my;
    }

    private static double root(DoubleUnaryOperator rising) {
        double low = 0;
        double high = 1e9;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            if (rising.applyAsDouble(middle) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /** A joint of two timbers. */
    private record Joint(double fh1, double t1, double fh2, double t2, double d, double my) {
        Sheet sheet() {
            Sheet sheet = Sheet.blank();
            sheet.given("f_h,1,k", fh1, NEWTON_PER_SQUARE_MILLIMETRE, "", "");
            sheet.given("t_1", t1, MILLIMETRE, "", "");
            sheet.given("f_h,2,k", fh2, NEWTON_PER_SQUARE_MILLIMETRE, "", "");
            sheet.given("t_2", t2, MILLIMETRE, "", "");
            sheet.given("d", d, MILLIMETRE, "", "");
            sheet.given("β", fh2 / fh1, RATIO, "", "");
            sheet.given("M_y,Rk", my, NEWTON_MILLIMETRE, "", "");
            return sheet;
        }

        double of(YieldMode mode) {
            return mode.calculate(sheet(), false);
        }

        /** A part in a thousand million, or of a newton where there is less than one. */
        Offset<Double> near(YieldMode mode) {
            return within(1e-9 * Math.max(1, of(mode)));
        }

        YieldMode weakest(Johansen shear) {
            return shear.calculate(sheet(), false);
        }
    }

    @Property(tries = 300)
    void every_mode_is_in_equilibrium(
            @ForAll @DoubleRange(min = 8, max = 40) double fh1,
            @ForAll @DoubleRange(min = 8, max = 40) double fh2,
            @ForAll @DoubleRange(min = 20, max = 200) double t1,
            @ForAll @DoubleRange(min = 20, max = 200) double t2,
            @ForAll @DoubleRange(min = 6, max = 30) double d,
            @ForAll @DoubleRange(min = 5e3, max = 2e6) double my) {
        Joint joint = new Joint(fh1, t1, fh2, t2, d, my);
        assertThat(joint.of(YieldMode.C))
                .isCloseTo(root(r -> tilting(fh1, d, t1, r) + tilting(fh2, d, t2, r)), joint.near(YieldMode.C));
        assertThat(joint.of(YieldMode.D))
                .isCloseTo(1.05 * root(r -> tilting(fh1, d, t1, r) + hinged(fh2, d, my, r)), joint.near(YieldMode.D));
        assertThat(joint.of(YieldMode.E))
                .isCloseTo(1.05 * root(r -> hinged(fh1, d, my, r) + tilting(fh2, d, t2, r)), joint.near(YieldMode.E));
        assertThat(joint.of(YieldMode.F))
                .isCloseTo(1.15 * root(r -> hinged(fh1, d, my, r) + hinged(fh2, d, my, r)), joint.near(YieldMode.F));
        assertThat(joint.of(YieldMode.A)).isCloseTo(fh1 * t1 * d, within(1e-6));
        assertThat(joint.of(YieldMode.B)).isCloseTo(fh2 * t2 * d, within(1e-6));
        assertThat(joint.of(YieldMode.G)).isEqualTo(joint.of(YieldMode.A));
        assertThat(joint.of(YieldMode.H)).isCloseTo(joint.of(YieldMode.B) / 2, within(1e-6));
        assertThat(joint.of(YieldMode.J)).isEqualTo(joint.of(YieldMode.D));
        assertThat(joint.of(YieldMode.K)).isEqualTo(joint.of(YieldMode.F));
    }

    /** (8.6) f: in thick timbers of one strength 1.15 sqrt(2 M_y f_h d) = 1.15 sqrt(2 * 76745 * 25 * 12) = 7803.6 N. */
    @Test
    void a_fastener_in_thick_timbers_bends_twice() {
        Joint joint = new Joint(25, 1000, 25, 1000, 12, 76_745);
        assertThat(joint.weakest(Johansen.SINGLE_SHEAR)).isEqualTo(YieldMode.F);
        assertThat(joint.weakest(Johansen.DOUBLE_SHEAR)).isEqualTo(YieldMode.K);
        assertThat(joint.of(YieldMode.F)).isCloseTo(7803.6, within(0.1));
    }

    /** (8.7) g and h: f_h t d = 25 * 10 * 12 = 3000 N; half of 25 * 10 * 12 for the middle timber. */
    @Test
    void thin_timbers_crush() {
        Joint sides = new Joint(25, 10, 25, 1000, 12, 76_745);
        assertThat(sides.weakest(Johansen.DOUBLE_SHEAR)).isEqualTo(YieldMode.G);
        assertThat(sides.of(YieldMode.G)).isEqualTo(3000);
        Joint middle = new Joint(25, 1000, 25, 10, 12, 76_745);
        assertThat(middle.weakest(Johansen.DOUBLE_SHEAR)).isEqualTo(YieldMode.H);
        assertThat(middle.of(YieldMode.H)).isEqualTo(1500);
    }

    /** (8.6) c: with t_1 = t_2 = t and β = 1 it is (sqrt(2) - 1) f_h t d. */
    @Test
    void a_stiff_fastener_in_equal_timbers_tilts() {
        Joint joint = new Joint(25, 40, 25, 40, 30, 1e9);
        assertThat(joint.weakest(Johansen.SINGLE_SHEAR)).isEqualTo(YieldMode.C);
        assertThat(joint.of(YieldMode.C)).isCloseTo((Math.sqrt(2) - 1) * 25 * 40 * 30, within(1e-9));
    }

    /** 8.2.2(2): a quarter of the tension, at most 25 % of the Johansen part; none where the timber crushes. */
    @Test
    void the_rope_effect_is_capped() {
        Joint joint = new Joint(25, 1000, 25, 1000, 12, 76_745);
        double bends = joint.of(YieldMode.K);
        assertThat(roped(joint, YieldMode.K, bends)).isCloseTo(1.25 * bends, within(1e-9));
        assertThat(roped(joint, YieldMode.K, bends / 2)).isCloseTo(1.125 * bends, within(1e-9));
        assertThat(roped(joint, YieldMode.K, 10 * bends)).isCloseTo(1.25 * bends, within(1e-9));
        assertThat(roped(joint, YieldMode.G, 8000)).isEqualTo(joint.of(YieldMode.G));
    }

    private static double roped(Joint joint, YieldMode mode, double axialN) {
        Sheet sheet = joint.sheet();
        sheet.given("F_ax,Rk", axialN, NEWTON_, "", "");
        return mode.calculate(sheet, true);
    }
}
