package org.deckplanreview.method;

import static org.assertj.core.api.Assertions.assertThat;

import org.deckplanreview.measure.MeasureUnit;
import org.junit.jupiter.api.Test;

class WorkingSymbolsTest {

    @Test
    void a_comma_after_a_symbol_is_no_part_of_its_subscript() {
        Working working = new Working();
        working.given("f_m,k", 24, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, "bending strength", "");
        working.given("f_min", 20, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, "least strength", "");
        working.step("f", "max(f_min, f_m,k)", 24, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, "");
        assertThat(working.steps().get(2).substituted().orElseThrow().text()).isEqualTo("max(20, 24)");
    }
}
