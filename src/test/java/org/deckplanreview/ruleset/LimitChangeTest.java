package org.deckplanreview.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.deckplanreview.ruleset.EditedFiles.EDITION;
import static org.deckplanreview.ruleset.EditedFiles.EN338;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.vocabulary.Stricter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is tighter and what is looser, told by what a limit permits. */
class LimitChangeTest {

    private static final Edition GOOD = EditedFiles.good().edition();
    private static final String FIRST_ROW =
            "- {when: {occupancy: [single-dwelling, public]}, value: 1100 mm}\n        - {value: 1200 mm}";
    private static final String ONE_GUARD = "      atLeast:\n        " + FIRST_ROW;

    private static Provision provision(Edition edition, String id) {
        return edition.provisions().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static LimitChange change(String id, String old, String replacement) {
        return change(id, EditedFiles.good(), EditedFiles.good().with(EDITION, old, replacement));
    }

    private static LimitChange change(String id, EditedFiles was, EditedFiles is) {
        LimitChange there =
                LimitChange.between(provision(was.edition(), id), provision(is.edition(), id), TestVocabulary.SMALL);
        LimitChange back =
                LimitChange.between(provision(is.edition(), id), provision(was.edition(), id), TestVocabulary.SMALL);
        if (there.strictness() != Strictness.UNKNOWN) {
            assertThat(back.strictness()).isEqualTo(there.strictness().reversed());
        }
        return there;
    }

    @Test
    void what_stays_is_as_strict() {
        for (Provision p : GOOD.provisions()) {
            assertThat(LimitChange.between(p, p, TestVocabulary.SMALL))
                    .isEqualTo(new LimitChange(Strictness.SAME, List.of()));
        }
        assertThat(LimitChange.between(GOOD.loads(), GOOD.loads(), TestVocabulary.SMALL)
                        .values())
                .isEmpty();
    }

    @Test
    void other_words_are_as_strict() {
        assertThat(change("guard.height", "advice: Raise the guard.", "advice: Lower the deck.")
                        .strictness())
                .isEqualTo(Strictness.SAME);
    }

    @Test
    void the_same_length_in_another_unit_is_as_strict() {
        assertThat(change("guard.height", "{value: 1200 mm}", "{value: 1.2 m}").strictness())
                .isEqualTo(Strictness.SAME);
    }

    @ParameterizedTest
    @CsvSource({
        "atLeast: 1100 mm, atLeast: 1101 mm, TIGHTER",
        "atLeast: 1100 mm, atLeast: 1099 mm, LOOSER",
        "atLeast: 1100 mm, over: 1100 mm, TIGHTER",
        "atMost: 1100 mm, atMost: 1101 mm, LOOSER",
        "atMost: 1100 mm, under: 1100 mm, TIGHTER",
        "under: 1100 mm, under: 1000 mm, TIGHTER",
        "over: 1100 mm, over: 1000 mm, LOOSER",
        "atLeast: 1100 mm, atMost: 1100 mm, BOTH"
    })
    void a_limit_is_read_by_its_sense(String was, String is, Strictness expected) {
        EditedFiles before = EditedFiles.good().with(EDITION, ONE_GUARD, "      " + was);
        EditedFiles after = EditedFiles.good().with(EDITION, ONE_GUARD, "      " + is);
        assertThat(change("guard.height", before, after).strictness()).isEqualTo(expected);
    }

    @Test
    void a_changed_row_names_its_condition_both_values_and_their_citation() {
        LimitChange change = change("guard.height", "value: 1100 mm", "value: 1150 mm");
        Citation citation = provision(GOOD, "guard.height").citation();
        assertThat(change)
                .isEqualTo(new LimitChange(
                        Strictness.TIGHTER,
                        List.of(new ChangedValue(
                                "guard height, where occupancy is single-dwelling or public",
                                Optional.empty(),
                                Optional.of(new ChangedValue.Side("at least 1100 mm", citation)),
                                Optional.of(new ChangedValue.Side("at least 1150 mm", citation)),
                                Strictness.TIGHTER))));
    }

    @Test
    void rows_that_go_both_ways_are_both() {
        assertThat(change(
                                "guard.height",
                                FIRST_ROW,
                                "- {when: {occupancy: [single-dwelling, public]}, value: 1150 mm}\n        - {value: 1000 mm}")
                        .strictness())
                .isEqualTo(Strictness.BOTH);
    }

    @Test
    void a_new_first_row_is_held_against_the_row_that_counted() {
        LimitChange change = change(
                "guard.height", FIRST_ROW, "- {when: {occupancy: [public]}, value: 1300 mm}\n        " + FIRST_ROW);
        assertThat(change.strictness()).isEqualTo(Strictness.TIGHTER);
        assertThat(change.values()).hasSize(1);
        assertThat(change.values().get(0).was().orElseThrow().text()).isEqualTo("at least 1100 mm");
        assertThat(change.values().get(0).is().orElseThrow().text()).isEqualTo("at least 1300 mm");
    }

    @Test
    void whether_a_case_without_a_value_is_stricter_cannot_be_told() {
        EditedFiles fewer = EditedFiles.good().with(EDITION, "\n        - {value: 1200 mm}", "");
        assertThat(change("guard.height", EditedFiles.good(), fewer).strictness())
                .isEqualTo(Strictness.UNKNOWN);
        assertThat(change("guard.height", fewer, EditedFiles.good()).strictness())
                .isEqualTo(Strictness.UNKNOWN);
    }

    @ParameterizedTest
    @CsvSource({
        "when: {drop: {over: 500 mm}}, TIGHTER",
        "when: {drop: {atLeast: 600 mm}}, TIGHTER",
        "when: {drop: {over: 700 mm}}, LOOSER",
        "when: {occupancy: [public]}, BOTH"
    })
    void a_provision_that_applies_to_more_is_tighter(String when, Strictness expected) {
        assertThat(change("guard.height", "when: {drop: {over: 600 mm}}", when).strictness())
                .isEqualTo(expected);
    }

    @Test
    void words_that_rise_are_held_by_their_order_and_others_by_which_are_permitted() {
        assertThat(change("post.treatment", "atLeast: \"4\"", "atLeast: \"3.2\"")
                        .strictness())
                .isEqualTo(Strictness.LOOSER);
        assertThat(change("post.preservative", "[copper, creosote]", "[copper]").strictness())
                .isEqualTo(Strictness.TIGHTER);
        assertThat(change("post.preservative", "[copper, creosote]", "[copper, none]")
                        .strictness())
                .isEqualTo(Strictness.BOTH);
    }

    @Test
    void a_recommendation_that_becomes_a_requirement_is_tighter() {
        assertThat(change("post.treatment", "obligation: should", "obligation: shall")
                        .strictness())
                .isEqualTo(Strictness.TIGHTER);
    }

    @Test
    void a_parameter_tells_its_direction_only_where_it_has_one() {
        LimitChange change = change("joist.bending", "ksys: 1.05", "ksys: 1.1");
        assertThat(change.strictness()).isEqualTo(Strictness.UNKNOWN);
        assertThat(change.values())
                .extracting(ChangedValue::what, ChangedValue::standard)
                .containsExactly(tuple("ksys", Optional.empty()));
        assertThat(TestVocabulary.SMALL
                        .method("test.bending")
                        .orElseThrow()
                        .parameters()
                        .get(0)
                        .higherIsStricter()
                        .stricter())
                .isEqualTo(Stricter.HIGHER);
    }

    @ParameterizedTest
    @CsvSource({"2, 3, TIGHTER", "3, 2, LOOSER", "1, 3, TIGHTER", "2, 2, SAME"})
    void a_word_that_rises_tells_its_direction(String was, String is, Strictness expected) {
        assertThat(change("joist.bending", serviceClass(was), serviceClass(is)).strictness())
                .isEqualTo(expected);
    }

    private static EditedFiles serviceClass(String word) {
        return EditedFiles.good()
                .with(EditedFiles.EN1995, "serviceClass: {value: \"3\"", "serviceClass: {value: \"" + word + "\"");
    }

    @ParameterizedTest
    @CsvSource({
        "'[copper, creosote]', '[copper]', TIGHTER",
        "'[copper]', '[copper, creosote]', LOOSER",
        "'[copper, creosote]', '[copper, none]', BOTH",
        "'[copper, creosote]', '[creosote, copper]', SAME"
    })
    void fewer_words_to_choose_from_are_tighter(String was, String is, Strictness expected) {
        String choice = "oneOf: [{values: ";
        assertThat(change(
                                "post.preservative",
                                EditedFiles.good().with(EDITION, choice + "[copper, creosote]", choice + was),
                                EditedFiles.good().with(EDITION, choice + "[copper, creosote]", choice + is))
                        .strictness())
                .isEqualTo(expected);
    }

    @Test
    void a_value_of_a_standard_names_the_standard() {
        LimitChange change = change("joist.bending", "gammaM: {value: 1.35", "gammaM: {value: 1.4");
        assertThat(change.values()).extracting(ChangedValue::standard).containsExactly(Optional.of("en1995"));
        assertThat(change.values().get(0).was().orElseThrow().citation().clause())
                .isEqualTo("Table NA.3");
    }

    @Test
    void a_row_of_a_table_shows_the_cells_that_differ() {
        String text = EditedFiles.good().text(EN338);
        String row = text.lines().filter(l -> l.contains("- [C24")).findFirst().orElseThrow();
        LimitChange change = change(
                "joist.bending",
                EditedFiles.good(),
                EditedFiles.good().with(EN338, row, row.replace(", 24,", ", 25,")));
        assertThat(change.values()).hasSize(1);
        assertThat(change.values().get(0).what()).isEqualTo("strengthClasses, row C24");
        assertThat(change.values().get(0).was().orElseThrow().text()).isEqualTo("fmk 24 N/mm²");
        assertThat(change.values().get(0).is().orElseThrow().text()).isEqualTo("fmk 25 N/mm²");
    }

    @ParameterizedTest
    @CsvSource({
        "uniform: 1.5 kN/m2, uniform: 2 kN/m2, TIGHTER",
        "uniform: 1.5 kN/m2, uniform: 1.4 kN/m2, LOOSER",
        "concentrated: 2 kN, concentrated: 3000 N, TIGHTER",
        "category: A, category: C3, UNKNOWN",
        "largest drop: {atMost: 600 mm}, largest drop: {atMost: 500 mm}, TIGHTER",
        "concentratedShare: {value: 0.5, concentratedShare: {value: 0.6, UNKNOWN"
    })
    void a_higher_load_is_tighter(String was, String is, Strictness expected) {
        Edition after = EditedFiles.good().with(EDITION, was, is).edition();
        assertThat(LimitChange.between(GOOD.loads(), after.loads(), TestVocabulary.SMALL)
                        .strictness())
                .isEqualTo(expected);
    }

    @Test
    void what_is_added_is_tighter_and_what_is_withdrawn_looser() {
        Provision guard = provision(GOOD, "guard.height");
        assertThat(LimitChange.added(guard).strictness()).isEqualTo(Strictness.TIGHTER);
        LimitChange withdrawn = LimitChange.withdrawn(guard);
        assertThat(withdrawn.strictness()).isEqualTo(Strictness.LOOSER);
        assertThat(withdrawn.values().get(0).was().orElseThrow().text())
                .isEqualTo("shall: guard height at least 1100 mm, where occupancy is single-dwelling or public;"
                        + " at least 1200 mm");
    }

    @Test
    void changes_made_together_add_up() {
        assertThat(Strictness.TIGHTER.and(Strictness.SAME)).isEqualTo(Strictness.TIGHTER);
        assertThat(Strictness.TIGHTER.and(Strictness.LOOSER)).isEqualTo(Strictness.BOTH);
        assertThat(Strictness.LOOSER.and(Strictness.UNKNOWN)).isEqualTo(Strictness.UNKNOWN);
        assertThat(Strictness.values())
                .filteredOn(Strictness::mayRelax)
                .containsExactly(Strictness.LOOSER, Strictness.BOTH, Strictness.UNKNOWN);
    }
}
