package org.deckplanreview.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.RoundingMode;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rounding by hand: six significant digits, halves to the even digit (ISO 80000-1:2009, annex B, rule A; clause from memory). */
class NumbersTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "1, 1",
        "1100, 1100",
        "1234567, 1234570",
        "1000000, 1000000",
        "0.1, 0.1",
        "0.30000000000000004, 0.3",
        "0.333333333333, 0.333333",
        "0.666666666666, 0.666667",
        "2.0000004, 2",
        "-12.345678, -12.3457",
        "0.000001234567, 0.00000123457",
        "1e20, 100000000000000000000",
        "1.0000005, 1",
        "100000.5, 100000",
        "100001.5, 100002"
    })
    void six_digits_are_shown_without_exponent(double value, String shown) {
        assertThat(Numbers.plain(value)).isEqualTo(shown);
        assertThat(Numbers.rounded(value)).isEqualByComparingTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 1.000",
        "1.00000001, 1.001",
        "1.0000000000002, 1.000",
        "0.9994, 1.000",
        "0.5, 0.500",
        "0.12345, 0.124",
        "0, 0.000"
    })
    void a_utilisation_is_rounded_away_from_compliance(double value, String shown) {
        assertThat(Numbers.utilisation(value).toPlainString()).isEqualTo(shown);
    }

    @Test
    void the_locale_does_not_matter() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Numbers.plain(1234.5)).isEqualTo("1234.5");
            assertThat(Measure.parse("1234.5 mm")).isEqualTo(Measure.mm(1234.5));
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Columns: a number, the way, and what is shown. */
    @ParameterizedTest
    @CsvSource({
        "155.529, CEILING, 156",
        "155.529, FLOOR, 155",
        "156.00000000001, CEILING, 156",
        "914.4, CEILING, 915",
        "914.4, FLOOR, 914",
        "10.01, CEILING, 11",
        "9.525, FLOOR, 9.52",
        "3.2512, CEILING, 3.26",
        "0.04167, FLOOR, 0.0416",
        "-12.5, FLOOR, -13",
        "0, CEILING, 0",
        "6600, HALF_UP, 6600"
    })
    void a_figure_to_work_to_is_whole_from_ten_on(double value, RoundingMode way, String shown) {
        assertThat(Numbers.workable(value, way).toPlainString()).isEqualTo(shown);
    }
}
