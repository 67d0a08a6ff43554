package org.deckplanreview.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.assessment.Determination.COMPLIES;
import static org.deckplanreview.assessment.Determination.DOES_NOT_COMPLY;
import static org.deckplanreview.assessment.Determination.NOT_APPLICABLE;
import static org.deckplanreview.assessment.Determination.UNDETERMINED;

import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.method.Observation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How far a provision reaches, and keys that are multiplied, by invented tables: beams may span 9-11 under
 * joists of 6 ft, 9-0 under 8 ft and 8-0 under 10 ft; half of the joists' span counts without an overhang, all of it with
 * one.
 */
class ReachTest {

    private static final String BEAMS = "beam.span-by-share";
    private static final FoundOnDeck USUAL =
            FoundOnDeck.usual().with("joist span", "12 ft").with("beam span", "119 in");

    @Test
    void within_its_scope_a_provision_decides() {
        assertThat(USUAL.assess(BEAMS).determination()).isEqualTo(COMPLIES);
        assertThat(USUAL.with("beam span", "119.1 in").assess(BEAMS).determination())
                .isEqualTo(DOES_NOT_COMPLY);
    }

    @ParameterizedTest
    @CsvSource({"119 in", "119.1 in"})
    void beyond_it_says_neither_and_names_the_clause(String span) {
        Result result =
                USUAL.with("frost", new Flag(true)).with("beam span", span).assess(BEAMS);
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.sentence())
                .startsWith("Beyond what this provision covers: frost reaches the deck (Handbook")
                .endsWith("9).");
        assertThat(result.needs()).isEmpty();
    }

    @Test
    void at_its_end_a_provision_still_decides() {
        assertThat(USUAL.with("bearing resistance", "1000 psf").assess(BEAMS).determination())
                .isEqualTo(COMPLIES);
        assertThat(USUAL.with("bearing resistance", "999.9 psf").assess(BEAMS).determination())
                .isEqualTo(UNDETERMINED);
    }

    @ParameterizedTest
    @CsvSource({"119 in", "119.1 in"})
    void what_tells_whether_it_reaches_is_asked_for(String span) {
        Result result = USUAL.without("frost").with("beam span", span).assess(BEAMS);
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.needs()).extracting(Need::what).containsExactly("frost");
        assertThat(result.sentence()).endsWith("Whether this provision covers the case is not known.");
    }

    @Test
    void one_case_beyond_decides_whatever_else_is_missing() {
        Result result = USUAL.with("frost", new Flag(true))
                .without("bearing resistance")
                .assess(BEAMS);
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.needs()).isEmpty();
    }

    @Test
    void what_a_deck_does_not_have_stays_not_applicable_while_the_scope_is_not_known() {
        Result result = USUAL.seeing("beam span", new Observation.NotApplicable("the deck has no beams"))
                .without("frost")
                .assess(BEAMS);
        assertThat(result.determination()).isEqualTo(NOT_APPLICABLE);
    }

    /** 0.5 times 12 ft is 6 ft, 0.5 times 12.1 ft more than that; 1.0 times 10 ft is 10 ft. */
    @ParameterizedTest
    @CsvSource({"12 ft,0,119", "12.1 ft,0,108", "10 ft,0.1,96", "10 ft,0.25,96"})
    void a_key_is_multiplied_before_it_enters_the_table(String joists, String ratio, double allowed) {
        Result result =
                USUAL.with("joist span", joists).with("overhang ratio", ratio).assess(BEAMS);
        assertThat(result.allowed()).hasSize(1);
        assertThat(((org.deckplanreview.measure.Measure) result.allowed().get(0)).value())
                .isEqualTo(allowed);
        assertThat(result.rows()).extracting(TakenRow::table).containsExactly("handbook.factors", "handbook.spans");
    }

    @Test
    void without_a_factor_there_is_no_row() {
        Result result = USUAL.with("overhang ratio", "0.3").assess(BEAMS);
        assertThat(result.determination()).isEqualTo(UNDETERMINED);
        assertThat(result.sentence()).contains("There is no factor for the overhang ratio 0.3 in Handbook 7, Table 6");
        assertThat(USUAL.without("overhang ratio").assess(BEAMS).needs())
                .extracting(Need::what)
                .containsExactly("overhang ratio");
    }
}
