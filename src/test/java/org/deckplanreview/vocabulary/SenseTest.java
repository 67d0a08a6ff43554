package org.deckplanreview.vocabulary;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SenseTest {

    private static final double LIMIT = 36 * 25.4;

    @ParameterizedTest
    @CsvSource({"AT_LEAST, true", "AT_MOST, true", "OVER, false", "UNDER, false", "EQUAL, true"})
    void a_number_at_the_limit_but_for_noise_in_the_last_digit_is_at_the_limit(Sense sense, boolean complies) {
        assertThat(sense.holds(LIMIT, LIMIT)).isEqualTo(complies);
        assertThat(sense.holds(Math.nextUp(LIMIT), LIMIT)).isEqualTo(complies);
        assertThat(sense.holds(Math.nextDown(LIMIT), LIMIT)).isEqualTo(complies);
    }

    @ParameterizedTest
    @CsvSource({"AT_LEAST, false, true", "AT_MOST, true, false", "OVER, false, true", "UNDER, true, false"})
    void a_thousandth_of_a_millimetre_below_or_above_the_limit_counts(Sense sense, boolean below, boolean above) {
        assertThat(sense.holds(LIMIT - 0.001, LIMIT)).isEqualTo(below);
        assertThat(sense.holds(LIMIT + 0.001, LIMIT)).isEqualTo(above);
    }

    @ParameterizedTest
    @CsvSource({"AT_LEAST, true", "AT_MOST, true", "OVER, false", "UNDER, false"})
    void nought_is_at_the_limit_nought(Sense sense, boolean complies) {
        assertThat(sense.holds(0, 0)).isEqualTo(complies);
    }
}
