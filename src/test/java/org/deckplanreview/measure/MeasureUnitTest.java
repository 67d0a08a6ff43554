package org.deckplanreview.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasureUnitTest {

    private static double convert(double value, String from, String to) {
        return MeasureUnit.ofSymbol(from)
                .orElseThrow()
                .convert(value, MeasureUnit.ofSymbol(to).orElseThrow());
    }

    /** The international yard and pound agreement of 1959: 1 yd = 0.9144 m, so 1 in = 25.4 mm exactly. */
    @Test
    void an_inch_is_exactly_25_4_mm() {
        assertThat(convert(1, "in", "mm")).isEqualTo(25.4);
        assertThat(convert(36, "in", "m")).isEqualTo(0.9144);
    }

    /** Decimal prefixes of the International System of Units (SI Brochure, 9th edition 2019, table 7), by hand. */
    @ParameterizedTest
    @CsvSource({
        "1, m, mm, 1000",
        "3, km, m, 3000",
        "1, m2, mm2, 1000000",
        "1, m3, mm3, 1000000000",
        "2, kN, N, 2000",
        "1, kN.m, N.mm, 1000000",
        "1, kN/m, N/mm, 1",
        "1, kN/m2, N/mm2, 0.001",
        "1, N/mm2, kN/m2, 1000",
        "1.5, kN/m2, kN/m2, 1.5",
        "1.25, %, 1, 0.0125"
    })
    void decimal_multiples_convert(double value, String from, String to, double expected) {
        assertThat(convert(value, from, to)).isCloseTo(expected, within(Math.ulp(expected)));
    }

    /** NIST Special Publication 811 (2008), Appendix B.8, factors in bold as exact, the others to seven digits. */
    @ParameterizedTest
    @CsvSource({
        "1, ft, mm, 304.8",
        "1, mi, m, 1609.344",
        "1, ft2, m2, 0.09290304",
        "1, in2, mm2, 645.16",
        "1, lbf, N, 4.448222",
        "1, psi, N/mm2, 0.006894757",
        "1, psf, kN/m2, 0.04788026",
        "1, pcf, kN/m3, 0.1570875",
        "1, lbf/ft, kN/m, 0.01459390",
        "1, lbf.in, N.mm, 112.9848",
        "1, lb/ft3, kg/m3, 16.01846"
    })
    void inch_pound_units_convert(double value, String from, String to, double expected) {
        assertThat(convert(value, from, to)).isCloseTo(expected, within(5e-7 * expected));
    }

    @ParameterizedTest
    @CsvSource({
        "mm, N",
        "mm, mm2",
        "kN, kN/m",
        "kN/m, kN/m2",
        "kN/m3, kg/m3",
        "years, m",
        "m/s2, m",
        "deg, 1",
        "1, deg",
        "%, deg",
        "mm4, mm3"
    })
    void units_that_measure_different_things_do_not_convert(String from, String to) {
        MeasureUnit a = MeasureUnit.ofSymbol(from).orElseThrow();
        MeasureUnit b = MeasureUnit.ofSymbol(to).orElseThrow();
        assertThat(a.sameDimension(b)).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> a.convert(1, b))
                .withMessage(from + " cannot be given in " + to);
    }

    @ParameterizedTest
    @EnumSource(MeasureUnit.class)
    void every_unit_is_found_by_its_symbol_and_is_its_own_alternative(MeasureUnit unit) {
        assertThat(MeasureUnit.ofSymbol(unit.symbol())).contains(unit);
        assertThat(unit.alternatives()).contains(unit.symbol());
        assertThat(MeasureUnit.symbols()).contains(unit.symbol()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(MeasureUnit.class)
    void there_and_back_is_the_same(MeasureUnit unit) {
        for (String symbol : unit.alternatives()) {
            MeasureUnit other = MeasureUnit.ofSymbol(symbol).orElseThrow();
            assertThat(other.convert(unit.convert(12.5, other), unit)).isCloseTo(12.5, within(1e-11));
        }
    }

    @Test
    void symbols_are_found_as_they_are_written_only() {
        assertThat(MeasureUnit.ofSymbol("lbs")).isEmpty();
        assertThat(MeasureUnit.ofSymbol("MM")).isEmpty();
        assertThat(MeasureUnit.ofSymbol("")).isEmpty();
    }

    @Test
    void alternatives_measure_the_same() {
        assertThat(MeasureUnit.MILLIMETRE.alternatives()).containsExactly("mm", "m", "km", "in", "ft", "mi");
        assertThat(MeasureUnit.RATIO.alternatives()).containsExactly("%", "1");
        assertThat(MeasureUnit.DEGREE.alternatives()).containsExactly("deg");
    }
}
