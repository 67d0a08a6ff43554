package org.deckplanreview.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureTest {

    @Test
    void a_token_is_a_number_a_blank_and_a_unit() {
        assertThat(Measure.parse("1100 mm")).isEqualTo(Measure.mm(1100));
        assertThat(Measure.parse("1.5 kN/m2")).isEqualTo(Measure.of(1.5, MeasureUnit.KILONEWTON_PER_SQUARE_METRE));
        assertThat(Measure.parse("-0.25 deg")).isEqualTo(Measure.of(-0.25, MeasureUnit.DEGREE));
        assertThat(Measure.parse("15 years")).isEqualTo(Measure.of(15, MeasureUnit.YEAR_));
        assertThat(Measure.parse("9.81 m/s2")).isEqualTo(Measure.of(9.81, MeasureUnit.METRE_PER_SECOND_SQUARED));
    }

    @Test
    void a_number_without_a_unit_is_a_ratio() {
        assertThat(Measure.parse("1.3")).isEqualTo(Measure.of(1.3, MeasureUnit.RATIO));
        assertThat(Measure.parse("0")).isEqualTo(Measure.of(0, MeasureUnit.RATIO));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "mm",
                "1100mm",
                "1100  mm",
                " 1100 mm",
                "1100 mm ",
                "1,100 mm",
                "1.100,5 mm",
                "1e3 mm",
                "+1 mm",
                ".5 mm",
                "1. mm",
                "010 mm",
                "00 mm",
                "0x10 mm",
                "NaN",
                "Infinity",
                "1234567890 mm",
                "1.0123456789 mm",
                "1100 mm\n",
                "\u0661 mm"
            })
    void what_is_no_token_is_refused_with_an_example(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Measure.parse(text))
                .withMessage("'" + text + "' is not a number with a unit, such as '1100 mm'");
    }

    @Test
    void an_unknown_unit_is_named() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Measure.parse("3 yd"))
                .withMessage("'yd' is not a known unit");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void a_measure_is_finite(double value) {
        assertThatIllegalArgumentException().isThrownBy(() -> Measure.mm(value));
    }

    @Test
    void a_measure_can_be_given_in_another_unit_of_its_dimension() {
        assertThat(Measure.parse("1.1 m").in(MeasureUnit.MILLIMETRE)).isEqualTo(1100);
        assertThat(Measure.parse("2 kN").in(MeasureUnit.NEWTON_)).isEqualTo(2000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Measure.parse("2 kN").in(MeasureUnit.MILLIMETRE))
                .withMessage("kN cannot be given in mm");
    }

    @Property(tries = 300)
    void what_is_written_plainly_is_read_back(
            @ForAll @BigRange(min = "-99999", max = "99999") @Scale(1) java.math.BigDecimal number) {
        double value = number.doubleValue();
        assertThat(Measure.parse(Numbers.plain(value) + " mm")).isEqualTo(Measure.mm(value == 0 ? 0 : value));
    }
}
