package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;

import java.util.List;
import org.deckplanreview.measure.MeasureUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures as people write them in texts, and the loader's refusal of those that repeat a figure of the rule. */
class LiteralFiguresTest {

    /** Columns: a text, the figure in it as written, and what it comes to; fractions and feet by hand. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            at least 1100 mm high | 1100 mm | 1100 | mm
            at most 1.8 m apart | 1.8 m | 1.8 | m
            within 3 km of the sea | 3 km | 3 | km
            at least 36 in wide. | 36 in | 36 | in
            at least 1-1/2 in of bearing | 1-1/2 in | 1.5 | in
            at least 3/4 in above | 3/4 in | 0.75 | in
            keep 6 ft 8 in clear | 6 ft 8 in | 80 | in
            of at least 1,500 lb at | 1,500 lb | 1500 | lbf
            5 kN/m2 and more | 5 kN/m2 | 5 | kN/m2
            at 45 degrees with | 45 degrees | 45 | deg
            for 15 years; 30 | 15 years | 15 | years
            a fall of 1 in 80. | 1 in 80 | 0.0125 | 1
            no more than 1:48, at | 1:48 | 0.0208333333 | 1
            more than 36 risers | 36 | 36 | 1
            are 0.3 times as thick | 0.3 | 0.3 | 1
            """)
    void a_figure_is_read_with_its_unit(String words, String text, double value, String unit) {
        LiteralFigures.Literal literal = LiteralFigures.in(words).get(0);
        assertThat(literal.text()).isEqualTo(text);
        assertThat(literal.value().unit()).isEqualTo(MeasureUnit.ofSymbol(unit).orElseThrow());
        assertThat(literal.value().value()).isCloseTo(value, within(1e-9));
    }

    @Test
    void both_ends_of_a_range_have_its_unit() {
        assertThat(LiteralFigures.in("34 to 38 in above"))
                .extracting(literal -> literal.value().in(MeasureUnit.INCH))
                .containsExactly(34.0, 38.0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a design (R507.1, R301)",
                "stainless steel A4 (1.4401)",
                "posts of 6x6 or larger",
                "treated to UC3.2",
                "No limit at all."
            })
    void names_are_no_figures(String words) {
        assertThat(LiteralFigures.in(words)).isEmpty();
    }

    private static List<RulesetFault> faults(String advice) {
        LoadResult result = EditedFiles.good()
                .with(EDITION, "advice: Raise the guard.", "advice: \"" + advice + "\"")
                .load();
        return result instanceof LoadResult.Faulty faulty ? faulty.faults() : List.of();
    }

    /** The rule allows 1100 mm or 1200 mm at drops of over 600 mm. */
    @ParameterizedTest
    @CsvSource({
        "Raise it to 1100 mm., 1100 mm, {limit}",
        "Raise it to 1.2 m., 1.2 m, {limit}",
        "Make the drop 600 mm or less., 600 mm, {drop}",
        "Make the drop 0.6 m or less., 0.6 m, {drop}",
        "Raise it to 900 to 1100 mm., 900 to 1100 mm, {limit}"
    })
    void a_text_that_repeats_a_figure_of_its_rule_is_refused(String advice, String found, String accepted) {
        assertThat(faults(advice)).singleElement().satisfies(fault -> {
            assertThat(fault.file()).isEqualTo(EDITION);
            assertThat(fault.found()).isEqualTo("'" + found + "'");
            assertThat(fault.detail()).startsWith("The text repeats a figure of its provision");
            assertThat(fault.accepted()).isEqualTo(accepted + " in its place");
        });
    }

    /** 0.2 % is what texts round by. */
    @ParameterizedTest
    @CsvSource({"1102 mm, 1", "1098 mm, 1", "1103 mm, 0", "1097 mm, 0", "1100 N, 0", "1100, 0", "1100 kg, 0"})
    void another_figure_is_not(String figure, int faults) {
        assertThat(faults("Raise it to " + figure + ".")).hasSize(faults);
    }

    @Test
    void a_parameter_is_not_repeated_either() {
        RulesetFault fault = EditedFiles.good()
                .with(EDITION, "advice: Take a deeper joist.", "advice: Bear 30 mm more.")
                .fault();
        assertThat(fault.accepted()).isEqualTo("{contactLength} in its place");
    }
}
