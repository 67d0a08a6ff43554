package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;
import static org.deckplanreview.ruleset.EditedFiles.EN1995;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How many values of Testland were confirmed in each way; counted by hand in its files. */
class ConfirmationCountsTest {

    private static final EditedFiles GOOD = EditedFiles.good();

    private static ConfirmationCounts counts(EditedFiles files) {
        return ConfirmationCounts.of(files.edition());
    }

    /**
     * Page: two imposed loads, guard.height, serviceClass. Secondary page: joist.bending, strengthClasses, kmod. Practice:
     * concentratedShare and two provisions of posts. Computed: shear. Memory: gammaM as set, contactLength. The system
     * factor given in joist.bending has no citation of its own.
     */
    @Test
    void each_value_counts_once() {
        assertThat(counts(GOOD).values())
                .containsExactly(
                        entry(Confirmation.PAGE, 4),
                        entry(Confirmation.SECONDARY_PAGE, 3),
                        entry(Confirmation.PRACTICE, 3),
                        entry(Confirmation.COMPUTED, 1),
                        entry(Confirmation.MEMORY, 2));
    }

    @Test
    void rows_of_tables_are_counted_apart() {
        assertThat(counts(GOOD).tableRows())
                .containsEntry(Confirmation.SECONDARY_PAGE, 4)
                .containsEntry(Confirmation.MEMORY, 0);
    }

    @Test
    void a_value_that_two_provisions_take_counts_once() {
        String text = GOOD.text(EDITION);
        String bending = text.substring(text.indexOf("  - id: joist.bending"));
        EditedFiles twice = GOOD.with(EDITION, text + bending.replace("joist.bending", "joist.again"));
        assertThat(counts(twice).values())
                .as("the provision alone is more")
                .containsEntry(Confirmation.SECONDARY_PAGE, 4)
                .containsEntry(Confirmation.MEMORY, 2);
    }

    @Test
    void a_parameter_with_a_citation_of_its_own_counts() {
        EditedFiles own = GOOD.with(
                EDITION,
                "with: {ksys: 1.05}",
                "with: {ksys: {value: 1.05, cite: {source: na1995, clause: A, confirmed: {by: memory, on: 2026-11-25}}}}");
        assertThat(counts(own).values()).containsEntry(Confirmation.MEMORY, 3);
    }

    /** Two of thirteen are 15.4 %; without them none are; with nothing but page, none. */
    @Test
    void the_share_from_memory_is_rounded_up() {
        assertThat(counts(GOOD).percentFromMemory()).isEqualTo(16);
        EditedFiles read = GOOD.with(EDITION, "Table NA.3, confirmed: {by: memory", "Table NA.3, confirmed: {by: page")
                .with(EN1995, "6.1.5(1), confirmed: {by: memory", "6.1.5(1), confirmed: {by: page");
        assertThat(counts(read).percentFromMemory()).isZero();
    }

    @Test
    void the_canonical_form_tells_them() throws IOException {
        Map<?, ?> canonical = new ObjectMapper().readValue(GOOD.edition().canonical(), Map.class);
        assertThat(((Map<?, ?>) canonical.get("confirmed")).get("values"))
                .isEqualTo(Map.of("page", 4, "secondary page", 3, "practice", 3, "computed", 1, "memory", 2));
    }
}
