package org.deckplanreview.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.report.FindingBuilder.finding;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.ruleset.Provision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of several calculations is told where a table does not reach, and in which words. */
class CalculatedTest {

    private static Calculated.By by(String title, Determination determination, double utilisation, Need... needs) {
        Provision provision = finding(title).title(title).build().provision();
        return new Calculated.By(
                provision,
                new Result(
                        finding(title).build().subject(),
                        determination,
                        "stress",
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        utilisation > 0 ? OptionalDouble.of(utilisation) : OptionalDouble.empty(),
                        "The notch is deep.",
                        List.of(),
                        List.of(needs),
                        List.of(),
                        List.of()));
    }

    private static Calculated.By carries(String title, double utilisation) {
        return by(title, Determination.COMPLIES, utilisation);
    }

    private static Calculated.By fails(String title, double utilisation) {
        return by(title, Determination.DOES_NOT_COMPLY, utilisation);
    }

    private static Calculated governing(Calculated.By... all) {
        return Calculated.governing(List.of(all)).orElseThrow();
    }

    /** Rounded away from compliance: 0.8304 is told as 0.831. */
    @Test
    void the_largest_utilisation_governs_and_an_engineer_must_confirm_it() {
        Calculated worst = governing(carries("shear", 0.2), carries("bending", 0.8304), carries("deflection", 0.7));

        assertThat(worst.by().title()).isEqualTo("bending");
        assertThat(worst.utilisation()).hasValue(0.8304);
        assertThat(worst.sentence())
                .isEqualTo("Calculated instead: 0.831 (bending), where 1 is the limit; an engineer must confirm it.");
    }

    @ParameterizedTest
    @CsvSource({"1.0, COMPLIES, an engineer must confirm it", "1.0001, DOES_NOT_COMPLY, it would not pass"})
    void at_the_limit_it_still_carries(double utilisation, Determination determination, String words) {
        Calculated worst = governing(by("bending", determination, utilisation));

        assertThat(worst.determination()).isEqualTo(determination);
        assertThat(worst.sentence()).contains(words);
    }

    @Test
    void one_that_fails_governs_whatever_else_cannot_be_told() {
        Calculated worst = governing(
                by("shear", Determination.UNDETERMINED, 0), fails("bending", 1.12), fails("deflection", 1.05));

        assertThat(worst.determination()).isEqualTo(Determination.DOES_NOT_COMPLY);
        assertThat(worst.sentence()).isEqualTo("Calculated instead: 1.120 (bending), over 1: it would not pass.");
    }

    @Test
    void a_utilisation_without_bound_is_told_in_words() {
        assertThat(governing(fails("bending", Double.POSITIVE_INFINITY)).sentence())
                .contains("more than can be counted (bending)");
    }

    @Test
    void what_cannot_be_calculated_is_told_beside_what_can() {
        Calculated worst = governing(carries("bending", 0.5), by("shear", Determination.UNDETERMINED, 0));

        assertThat(worst.determination()).isEqualTo(Determination.UNDETERMINED);
        assertThat(worst.utilisation()).isEmpty();
        assertThat(worst.sentence())
                .isEqualTo("The calculation does not tell either (shear): The notch is deep. What is calculated"
                        + " otherwise comes to 0.500 (bending), where 1 is the limit. An engineer must design it.");
    }

    @Test
    void what_a_calculation_needs_is_named() {
        Need grade = new Need(Pointer.of("/timbers/0"), "the grade of the lumber");

        assertThat(governing(by("bending", Determination.UNDETERMINED, 0, grade))
                        .sentence())
                .contains("give the grade of the lumber.");
    }

    @Test
    void calculations_that_do_not_apply_say_nothing() {
        assertThat(Calculated.governing(List.of())).isEmpty();
        assertThat(Calculated.governing(List.of(by("tip", Determination.NOT_APPLICABLE, 0))))
                .isEmpty();
        assertThat(governing(by("tip", Determination.NOT_APPLICABLE, 0), carries("bending", 0.5))
                        .by()
                        .title())
                .isEqualTo("bending");
    }

    @Test
    void of_two_alike_the_worse_calculation_is_told() {
        Calculated carrying = governing(carries("bending", 0.5));
        Calculated open = governing(by("shear", Determination.UNDETERMINED, 0));
        Calculated failing = governing(fails("bending", 1.1));

        assertThat(open.isWorseThan(carrying)).isTrue();
        assertThat(failing.isWorseThan(open)).isTrue();
        assertThat(open.isWorseThan(failing)).isFalse();
        assertThat(governing(carries("bending", 0.6)).isWorseThan(carrying)).isTrue();
        assertThat(carrying.isWorseThan(carrying)).isFalse();
    }
}
