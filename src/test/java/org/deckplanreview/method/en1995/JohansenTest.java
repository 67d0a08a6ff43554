package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
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

    private static double of(List<YieldMode> modes, String letter) {
        return modes.stream()
                .filter(m -> m.letter().equals(letter))
                .findFirst()
                .orElseThrow()
                .johansenN();
    }

    @Property(tries = 300)
    void every_mode_is_in_equilibrium(
            @ForAll @DoubleRange(min = 8, max = 40) double fh1,
            @ForAll @DoubleRange(min = 8, max = 40) double fh2,
            @ForAll @DoubleRange(min = 20, max = 200) double t1,
            @ForAll @DoubleRange(min = 20, max = 200) double t2,
            @ForAll @DoubleRange(min = 6, max = 30) double d,
            @ForAll @DoubleRange(min = 5e3, max = 2e6) double my) {
        Johansen j = new Johansen(fh1, t1, fh2, t2, d, my, 1.05, 1.15);
        List<YieldMode> single = j.singleShear();
        assertThat(of(single, "c"))
                .isCloseTo(root(r -> tilting(fh1, d, t1, r) + tilting(fh2, d, t2, r)), relative(single, "c"));
        assertThat(of(single, "d"))
                .isCloseTo(1.05 * root(r -> tilting(fh1, d, t1, r) + hinged(fh2, d, my, r)), relative(single, "d"));
        assertThat(of(single, "e"))
                .isCloseTo(1.05 * root(r -> hinged(fh1, d, my, r) + tilting(fh2, d, t2, r)), relative(single, "e"));
        assertThat(of(single, "f"))
                .isCloseTo(1.15 * root(r -> hinged(fh1, d, my, r) + hinged(fh2, d, my, r)), relative(single, "f"));
        assertThat(of(single, "a")).isCloseTo(fh1 * t1 * d, within(1e-6));
        assertThat(of(single, "b")).isCloseTo(fh2 * t2 * d, within(1e-6));
        List<YieldMode> doubled = j.doubleShear();
        assertThat(of(doubled, "g")).isEqualTo(of(single, "a"));
        assertThat(of(doubled, "h")).isCloseTo(of(single, "b") / 2, within(1e-6));
        assertThat(of(doubled, "j")).isEqualTo(of(single, "d"));
        assertThat(of(doubled, "k")).isEqualTo(of(single, "f"));
    }

    private static org.assertj.core.data.Offset<Double> relative(List<YieldMode> modes, String letter) {
        return within(1e-9 * Math.max(1, of(modes, letter)));
    }

    /** (8.6) f: in thick timbers of one strength 1.15 sqrt(2 M_y f_h d) = 1.15 sqrt(2 * 76745 * 25 * 12) = 7803.6 N. */
    @Test
    void a_fastener_in_thick_timbers_bends_twice() {
        Johansen j = new Johansen(25, 1000, 25, 1000, 12, 76_745, 1.05, 1.15);
        YieldMode single = YieldMode.weakest(j.singleShear(), 0, 0.25);
        assertThat(single.letter()).isEqualTo("f");
        assertThat(single.johansenN()).isCloseTo(7803.6, within(0.1));
        assertThat(YieldMode.weakest(j.doubleShear(), 0, 0.25).letter()).isEqualTo("k");
    }

    /** (8.7) g and h: f_h t d = 25 * 10 * 12 = 3000 N; half of 25 * 10 * 12 for the middle timber. */
    @Test
    void thin_timbers_crush() {
        YieldMode sides =
                YieldMode.weakest(new Johansen(25, 10, 25, 1000, 12, 76_745, 1.05, 1.15).doubleShear(), 0, 0.25);
        assertThat(sides.letter()).isEqualTo("g");
        assertThat(sides.johansenN()).isEqualTo(3000);
        YieldMode middle =
                YieldMode.weakest(new Johansen(25, 1000, 25, 10, 12, 76_745, 1.05, 1.15).doubleShear(), 0, 0.25);
        assertThat(middle.letter()).isEqualTo("h");
        assertThat(middle.johansenN()).isEqualTo(1500);
    }

    /** (8.6) c: with t_1 = t_2 = t and β = 1 it is (sqrt(2) - 1) f_h t d. */
    @Test
    void a_stiff_fastener_in_equal_timbers_tilts() {
        YieldMode tilts = YieldMode.weakest(new Johansen(25, 40, 25, 40, 30, 1e9, 1.05, 1.15).singleShear(), 0, 0.25);
        assertThat(tilts.letter()).isEqualTo("c");
        assertThat(tilts.johansenN()).isCloseTo((Math.sqrt(2) - 1) * 25 * 40 * 30, within(1e-9));
    }

    /** 8.2.2(2): a quarter of the tension, at most 25 % of the Johansen part; none where the timber crushes. */
    @Test
    void the_rope_effect_is_capped() {
        YieldMode bends = new YieldMode("k", "bends", 8000, "", true);
        assertThat(bends.resistanceN(4000, 0.25)).isEqualTo(9000);
        assertThat(bends.resistanceN(8000, 0.25)).isEqualTo(10_000);
        assertThat(bends.resistanceN(80_000, 0.25)).isEqualTo(10_000);
        assertThat(new YieldMode("g", "crushes", 8000, "", false).resistanceN(8000, 0.25))
                .isEqualTo(8000);
    }
}
