package org.deckplanreview.method.en1995;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Evaluation.Measured;
import org.junit.jupiter.api.Test;

/** Against EN 338:2016, Table 1: f_m,k is the number in the name of a class, in N/mm2. */
class GradedStrengthTest {

    private static Evaluation evaluate(String strengthClass) {
        return DeckPiece.joist()
                .of(strengthClass)
                .length(3000)
                .support(25, 50)
                .support(2975, 50)
                .evaluate(
                        new GradedStrength(),
                        StandardParameters.ofEurocodes()
                                .with("leastBendingStrength", 16, MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE));
    }

    private static double utilisation(String strengthClass) {
        return ((Measured) evaluate(strengthClass)).utilisation();
    }

    @Test
    void c14_is_weaker_than_c16() {
        assertThat(utilisation("C14")).isCloseTo(16.0 / 14, within(1e-12));
    }

    @Test
    void c16_is_at_the_limit() {
        assertThat(utilisation("C16")).isEqualTo(1);
    }

    @Test
    void hardwood_of_d30_is_stronger() {
        assertThat(utilisation("D30")).isCloseTo(16.0 / 30, within(1e-12));
    }

    @Test
    void a_class_that_the_table_lacks_is_out_of_scope() {
        assertThat(evaluate("C99")).isInstanceOf(Evaluation.OutOfScope.class);
    }
}
