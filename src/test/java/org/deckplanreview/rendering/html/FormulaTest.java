package org.deckplanreview.rendering.html;

import static org.assertj.core.api.Assertions.assertThat;

import org.deckplanreview.formula.Expression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Elements as MathML Core (W3C, 2025) defines them: mfrac over and under, msup base and script, msub, msqrt. */
class FormulaTest {
    private static String mathMl(String expression) {
        return MathMl.of(Expression.parse(expression));
    }

    private static String text(String expression) {
        return FormulaText.of(Expression.parse(expression));
    }

    @Test
    void a_quotient_is_a_fraction_and_a_power_is_raised() {
        assertThat(mathMl("b * h^2 / 6"))
                .isEqualTo(
                        "<mfrac><mrow><mi>b</mi><mo>·</mo><msup><mrow><mi>h</mi></mrow><mrow><mn>2</mn></mrow></msup>"
                                + "</mrow><mrow><mn>6</mn></mrow></mfrac>");
    }

    @Test
    void brackets_that_a_fraction_makes_needless_are_left_out() {
        assertThat(mathMl("q / (k * E_0,mean)"))
                .isEqualTo("<mfrac><mrow><mi>q</mi></mrow><mrow><mi>k</mi><mo>·</mo>"
                        + "<msub><mi>E</mi><mtext>0,mean</mtext></msub></mrow></mfrac>");
    }

    @Test
    void brackets_of_a_factor_stay() {
        assertThat(mathMl("(a + b) * c"))
                .isEqualTo("<mo>(</mo><mi>a</mi><mo>+</mo><mi>b</mi><mo>)</mo><mo>·</mo><mi>c</mi>");
    }

    /** Division and subtraction go from left to right. */
    @Test
    void what_follows_a_quotient_multiplies_the_fraction() {
        assertThat(mathMl("a / b * c"))
                .isEqualTo("<mfrac><mrow><mi>a</mi></mrow><mrow><mi>b</mi></mrow></mfrac><mo>·</mo><mi>c</mi>");
    }

    @Test
    void a_root_has_no_brackets_and_other_functions_have() {
        assertThat(mathMl("sqrt(12)")).isEqualTo("<msqrt><mn>12</mn></msqrt>");
        assertThat(mathMl("max(0, F_d)"))
                .isEqualTo(
                        "<mi>max</mi><mo>(</mo><mn>0</mn><mo>,</mo><msub><mi>F</mi><mtext>d</mtext></msub><mo>)</mo>");
    }

    @Test
    void an_adjusted_value_keeps_its_prime() {
        assertThat(mathMl("F_b'")).isEqualTo("<msubsup><mi>F</mi><mtext>b</mtext><mo>′</mo></msubsup>");
        assertThat(mathMl("E'")).isEqualTo("<msup><mi>E</mi><mo>′</mo></msup>");
    }

    @Test
    void a_negative_number_keeps_its_sign_and_brackets() {
        assertThat(mathMl("2 * (-5.5)")).isEqualTo("<mn>2</mn><mo>·</mo><mo>(</mo><mo>−</mo><mn>5.5</mn><mo>)</mo>");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "q_d * l / 2 | q<sub>d</sub> · l / 2",
                "h^(1 + a) | h<sup>1 + a</sup>",
                "a - (b - c) | a − (b − c)",
                "l / (r + 1) | l / (r + 1)",
                "sqrt(a) | √(a)",
                "min(a, F_b') | min(a, F′<sub>b</sub>)"
            })
    void on_paper_it_is_a_line_that_keeps_its_brackets(String expression, String line) {
        assertThat(text(expression)).isEqualTo(line);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a b", "a +", "(a", "a)", "max a", "a ≤ b", "<script>", "2 & 3", "\"", "max(a,)"})
    void what_is_not_in_the_grammar_is_not_read(String expression) {
        assertThat(Expression.find(expression)).isEmpty();
    }
}
