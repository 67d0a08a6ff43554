package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.type;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RulesetsInForceTest {

    private static final String LATER = "testland/2026.yaml";
    private static final LocalDate FIRST_OF_2024 = LocalDate.of(2024, 10, 1);
    private static final LocalDate FIRST_OF_2026 = LocalDate.of(2026, 4, 1);

    /** The edition of 2024 and one from 1 April 2026 on. */
    private static EditedFiles two() {
        EditedFiles good = EditedFiles.good();
        return good.with(LATER, good.text(EDITION))
                .with(LATER, "edition: \"2024\"", "edition: \"2026\"")
                .with(LATER, "from: 2024-10-01", "from: 2026-04-01");
    }

    private static EditedFiles twoWithTheFirstUntil(String day) {
        return two().with(EDITION, "{from: 2024-10-01}", "{from: 2024-10-01, until: " + day + "}");
    }

    private static String edition(Rulesets rulesets, LocalDate day) {
        InForce inForce = rulesets.inForce("testland", day);
        assertThat(inForce).isInstanceOf(InForce.Found.class);
        return ((InForce.Found) inForce).edition();
    }

    @Test
    void an_edition_holds_from_its_first_day_to_the_day_before_the_next() {
        Rulesets rulesets = two().loaded();
        assertThat(edition(rulesets, FIRST_OF_2024)).isEqualTo("2024");
        assertThat(edition(rulesets, FIRST_OF_2026.minusDays(1))).isEqualTo("2024");
        assertThat(edition(rulesets, FIRST_OF_2026)).isEqualTo("2026");
        assertThat(edition(rulesets, FIRST_OF_2026.plusYears(100))).isEqualTo("2026");
    }

    @Test
    void before_the_first_edition_none_is_in_force_and_all_are_listed() {
        assertThat(two().loaded().inForce("testland", FIRST_OF_2024.minusDays(1)))
                .asInstanceOf(type(InForce.NoneThatDay.class))
                .satisfies(none -> {
                    assertThat(none.region()).isEqualTo("testland");
                    assertThat(none.editions())
                            .containsExactly(
                                    new InForce.Period("2024", FIRST_OF_2024, Optional.of(FIRST_OF_2026.minusDays(1))),
                                    new InForce.Period("2026", FIRST_OF_2026, Optional.empty()));
                });
    }

    @Test
    void a_last_day_declares_a_gap() {
        Rulesets rulesets = twoWithTheFirstUntil("2026-02-28").loaded();
        assertThat(edition(rulesets, LocalDate.of(2026, 2, 28))).isEqualTo("2024");
        assertThat(rulesets.inForce("testland", LocalDate.of(2026, 3, 1))).isInstanceOf(InForce.NoneThatDay.class);
        assertThat(rulesets.inForce("testland", LocalDate.of(2026, 3, 31))).isInstanceOf(InForce.NoneThatDay.class);
        assertThat(edition(rulesets, FIRST_OF_2026)).isEqualTo("2026");
    }

    @Test
    void a_last_day_right_before_the_next_first_one_is_no_gap() {
        Rulesets rulesets = twoWithTheFirstUntil("2026-03-31").loaded();
        assertThat(edition(rulesets, LocalDate.of(2026, 3, 31))).isEqualTo("2024");
        assertThat(edition(rulesets, FIRST_OF_2026)).isEqualTo("2026");
    }

    @Test
    void two_editions_on_one_day_are_a_fault() {
        RulesetFault fault = twoWithTheFirstUntil("2026-04-01").fault();
        assertThat(fault.file()).isEqualTo(LATER);
        assertThat(fault.found()).isEqualTo("in force from 2026-04-01");
        assertThat(fault.detail()).isEqualTo("The edition 2024 is in force that day as well");
        assertThat(fault.accepted()).isEqualTo("a day after 2026-04-01");
    }

    @Test
    void two_editions_with_the_same_first_day_are_a_fault() {
        RulesetFault fault =
                two().with(LATER, "from: 2026-04-01", "from: 2024-10-01").fault();
        assertThat(fault.file()).isEqualTo(LATER);
        assertThat(fault.accepted()).isEqualTo("a day after 2024-10-01");
    }

    @Test
    void editions_of_a_region_give_it_one_title() {
        RulesetFault fault = two().with(LATER, "regionTitle: Testland", "regionTitle: Testia")
                .fault();
        assertThat(fault.file()).isEqualTo(LATER);
        assertThat(fault.accepted()).isEqualTo("'Testland'");
    }

    @Test
    void an_unknown_region_is_told_with_the_nearest() {
        assertThat(two().loaded().inForce("testlnad", FIRST_OF_2024))
                .asInstanceOf(type(InForce.UnknownRegion.class))
                .satisfies(unknown -> {
                    assertThat(unknown.known()).containsExactly("testland");
                    assertThat(unknown.nearest()).contains("testland");
                });
        assertThat(two().loaded().inForce("xyz", FIRST_OF_2024))
                .asInstanceOf(type(InForce.UnknownRegion.class))
                .satisfies(unknown -> assertThat(unknown.nearest()).isEmpty());
    }

    @Test
    void editions_are_found_by_region_and_name() {
        Rulesets rulesets = two().loaded();
        assertThat(rulesets.regions()).containsExactly("testland");
        assertThat(rulesets.editions("testland")).extracting(Edition::name).containsExactly("2024", "2026");
        assertThat(rulesets.all()).isEqualTo(rulesets.editions("testland"));
        assertThat(rulesets.editions("wonderland")).isEmpty();
        assertThat(rulesets.edition("testland", "2026")).isPresent();
        assertThat(rulesets.edition("testland", "2025")).isEmpty();
    }
}
