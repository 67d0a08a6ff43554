package org.deckplanreview.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitSystemTest {

    /** Factors of NIST Special Publication 811:2008, Appendix B.8, from memory; 1 ft3 = 0.0283168466 m3. */
    @ParameterizedTest
    @CsvSource({
        "914.4, mm, 36, in",
        "1, m, 39.3700787, in",
        "1.609344, km, 1, mi",
        "645.16, mm2, 1, in2",
        "1, m2, 10.7639104, ft2",
        "16387.064, mm3, 1, in3",
        "0.0283168466, m3, 1, ft3",
        "4.44822162, N, 1, lbf",
        "1, kN, 224.808943, lbf",
        "1, kN.m, 737.562149, lbf.ft",
        "1, kN/m, 68.5217659, lbf/ft",
        "1, N/mm2, 145.037738, psi",
        "1, kN/m2, 20.8854342, psf",
        "1, kN/m3, 6.36588035, pcf",
        "16.0184634, kg/m3, 1, lb/ft3"
    })
    void metric_measures_are_shown_in_inch_pound_units_and_back(
            double metric, String unit, double inchPound, String shownUnit) {
        Measure given = Measure.of(metric, MeasureUnit.ofSymbol(unit).orElseThrow());
        Measure shown = UnitSystem.INCH_POUND.measure(given);

        assertThat(shown.unit().symbol()).isEqualTo(shownUnit);
        assertThat(shown.value()).isCloseTo(inchPound, within(1e-7 * inchPound));
        assertThat(UnitSystem.METRIC.measure(shown).in(given.unit())).isCloseTo(metric, within(1e-9 * metric));
    }

    @ParameterizedTest
    @EnumSource(MeasureUnit.class)
    void each_unit_is_foreign_to_one_system_at_most_and_its_counterpart_to_none_of_its_own(MeasureUnit unit) {
        assertThat(UnitSystem.METRIC.isForeign(unit) && UnitSystem.INCH_POUND.isForeign(unit))
                .isFalse();
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(system.isForeign(system.unit(unit))).isFalse();
            assertThat(system.unit(system.unit(unit))).isEqualTo(system.unit(unit));
            assertThat(system.unit(unit).sameDimension(unit)).isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource({"mm, INCH_POUND", "kN/m2, INCH_POUND", "in, METRIC", "ft, METRIC", "psf, METRIC"})
    void a_unit_of_the_other_system_is_foreign(String unit, UnitSystem system) {
        assertThat(system.isForeign(MeasureUnit.ofSymbol(unit).orElseThrow())).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"deg", "%", "1", "years"})
    void what_has_no_counterpart_is_foreign_to_none(String unit) {
        MeasureUnit common = MeasureUnit.ofSymbol(unit).orElseThrow();
        assertThat(UnitSystem.METRIC.isForeign(common)).isFalse();
        assertThat(UnitSystem.INCH_POUND.isForeign(common)).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "36 in | METRIC | 914.4 mm",
                "36 in | INCH_POUND | 3'-0\"",
                "3 ft | INCH_POUND | 3'-0\"",
                "1651 mm | INCH_POUND | 5'-5\"",
                "40 psf | METRIC | 1.91521 kN/m²",
                "40 psf | INCH_POUND | 40 psf",
                "2 kN | INCH_POUND | 449.618 lbf",
                "3 ft2 | METRIC | 0.278709 m²",
                "1.3 | INCH_POUND | 1.3"
            })
    void a_measure_is_written_in_the_units_of_the_report(String token, UnitSystem system, String written) {
        assertThat(Phrases.of(Measure.parse(token), system)).isEqualTo(written);
    }
}
