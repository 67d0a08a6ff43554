package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;

import org.deckplanreview.measure.MeasureUnit;
import org.junit.jupiter.api.Test;

/** The site practice that an edition gives to the site schedule. */
class SchedulePracticeTest {

    private static final String CITE = "cite: {source: guarding, clause: A, confirmed: {by: memory, on: 2026-11-25}}";

    private static EditedFiles with(String schedule) {
        return EditedFiles.good().with(EDITION, "\nprovisions:\n", "\nschedule:\n  " + schedule + "\nprovisions:\n");
    }

    @Test
    void an_edition_may_give_no_site_practice() {
        assertThat(EditedFiles.good().edition().schedule()).isEmpty();
    }

    @Test
    void site_practice_is_read_with_its_source() {
        Edition edition = with("with: {sawKerf: {value: 3 mm, " + CITE + "}}").edition();

        assertThat(edition.schedule().orElseThrow().number("sawKerf", MeasureUnit.MILLIMETRE))
                .isEqualTo(3);
        assertThat(edition.schedule().orElseThrow().recalled()).containsExactly("sawKerf");
    }

    @Test
    void the_digest_changes_with_it() {
        String three =
                with("with: {sawKerf: {value: 3 mm, " + CITE + "}}").edition().digest();
        String four =
                with("with: {sawKerf: {value: 4 mm, " + CITE + "}}").edition().digest();

        assertThat(three)
                .isNotEqualTo(four)
                .isNotEqualTo(EditedFiles.good().edition().digest());
    }

    @Test
    void a_value_that_the_schedule_needs_and_does_not_get_is_told() {
        assertThat(with("with: {}").fault().message()).contains("'sawKerf' of the site schedule is not given");
    }

    @Test
    void a_value_without_citation_is_refused() {
        assertThat(with("with: {sawKerf: 3 mm}").faults())
                .extracting(RulesetFault::message)
                .anySatisfy(m -> assertThat(m).contains("no citation"));
    }
}
