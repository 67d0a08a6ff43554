package org.deckplanreview.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.comparison.BuiltInComparisons.COMPARISONS;
import static org.deckplanreview.comparison.BuiltInComparisons.ENGLAND_2014;
import static org.deckplanreview.comparison.BuiltInComparisons.ENGLAND_2024;
import static org.deckplanreview.comparison.BuiltInComparisons.SCOTLAND_2024;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.report.ReportJson;
import org.deckplanreview.review.BuiltIn;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.EditedFiles;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.TestVocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What changed between editions, told by the sense of each limit. */
class EditionDifferencesTest {

    private static final Edition BEFORE = EditedFiles.good().edition();

    static Stream<Edition> every_edition() {
        return BuiltIn.RULESETS.all().stream();
    }

    static Stream<List<Edition>> every_pair() {
        return BuiltIn.RULESETS.all().stream()
                .flatMap(a -> BuiltIn.RULESETS.all().stream().map(b -> List.of(a, b)));
    }

    @ParameterizedTest
    @MethodSource("every_edition")
    void an_edition_differs_in_nothing_from_itself(Edition edition) {
        EditionDifferences none = COMPARISONS.differences(edition, edition);

        assertThat(none.provisions()).isEmpty();
        assertThat(none.loads()).isEmpty();
        assertThat(none.schedule()).isEmpty();
        assertThat(none.texts()).isEmpty();
        assertThat(none.counts().unchanged()).isEqualTo(edition.provisions().size());
    }

    @ParameterizedTest
    @MethodSource("every_pair")
    void there_and_back_are_mirror_images(List<Edition> pair) {
        EditionDifferences there = COMPARISONS.differences(pair.get(0), pair.get(1));
        EditionDifferences back = COMPARISONS.differences(pair.get(1), pair.get(0));

        assertThat(effects(back))
                .isEqualTo(effects(there).entrySet().stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, e -> mirrored(e.getValue()))));
        assertThat(back.counts().unchanged()).isEqualTo(there.counts().unchanged());
        assertThat(back.loads()).hasSameSizeAs(there.loads());
    }

    @ParameterizedTest
    @MethodSource("every_pair")
    void counts_add_up_to_the_provisions_of_both(List<Edition> pair) {
        EditionDifferences.Counts counts =
                COMPARISONS.differences(pair.get(0), pair.get(1)).counts();
        int common =
                counts.tightened() + counts.relaxed() + counts.changed() + counts.rewordedOnly() + counts.unchanged();

        assertThat(common + counts.withdrawn())
                .isEqualTo(pair.get(0).provisions().size());
        assertThat(common + counts.added()).isEqualTo(pair.get(1).provisions().size());
    }

    @Test
    void the_same_editions_differ_in_the_same_bytes() {
        assertThat(ReportJson.indented(COMPARISONS.differences(ENGLAND_2014, SCOTLAND_2024)))
                .isEqualTo(ReportJson.indented(COMPARISONS.differences(ENGLAND_2014, SCOTLAND_2024)));
    }

    /**
     * By hand from the two codes of practice that the editions stand on: BS 8417:2011+A1:2014 held framing out of the
     * ground to use class 3.2 and what lay within 150 mm of it to use class 4; BS 8417:2024 holds the whole frame to use
     * class 4 (secondary pages). Untreated heartwood is held to what its place asks under both.
     */
    @Test
    void england_asks_more_of_a_frames_treatment_since_2024_and_nothing_else() {
        EditionDifferences differences = COMPARISONS.differences(ENGLAND_2014, ENGLAND_2024);

        Map<String, Effect> effects = effects(differences);
        Predicate<Effect> isReworded = Effect.REWORDED::equals;
        assertThat(effects.values().stream().filter(isReworded.negate())).hasSize(8);
        assertThat(effects)
                .containsAllEntriesOf(Map.of(
                        "treatment.joists", Effect.TIGHTENED,
                        "treatment.beams", Effect.TIGHTENED,
                        "treatment.ledgers", Effect.TIGHTENED,
                        "treatment.posts", Effect.CHANGED,
                        "treatment.posts-in-ground", Effect.ADDED,
                        "treatment.ledgers-near-ground", Effect.WITHDRAWN,
                        "treatment.posts-on-pads", Effect.WITHDRAWN,
                        "treatment.posts-near-ground", Effect.WITHDRAWN));
        assertThat(differences.provisions().stream()
                        .filter(p -> p.effect() == Effect.REWORDED)
                        .flatMap(p -> p.changes().stream()))
                .as("the provisions that both editions of the standard have alike")
                .hasSize(15)
                .extracting(Change::what)
                .containsOnly("citation", "advice");
        assertThat(differences.loads()).isEmpty();
        assertThat(change(differences, "treatment.joists", "neededUseClass"))
                .isEqualTo(new Change(
                        "neededUseClass",
                        Effect.TIGHTENED,
                        Optional.of(new Statement(
                                "UC3.2",
                                Optional.of(new Statement.Cited(
                                        "BS 8417:2011+A1:2014, timber out of ground contact, exposed and uncoated",
                                        Confirmation.SECONDARY_PAGE)))),
                        Optional.of(new Statement(
                                "UC4",
                                Optional.of(new Statement.Cited(
                                        "BS 8417:2024, substructure of decks", Confirmation.SECONDARY_PAGE))))));
        assertThat(change(differences, "treatment.posts", "when it applies").after())
                .map(Statement::text)
                .hasValue("always");
        assertThat(differences.texts()).extracting(Change::what).contains("note");
    }

    /** The test ruleset asks at least 1100 mm where occupancy is single-dwelling or public, otherwise 1200 mm. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "value: 1100 mm; value: 1150 mm; TIGHTENED",
                "value: 1100 mm; value: 1050 mm; RELAXED",
                "value: 1100 mm; value: 1.1 m; unchanged",
                "value: 1200 mm; value: 1300 mm; TIGHTENED",
                "[single-dwelling, public]; [single-dwelling]; TIGHTENED",
                "drop: {over: 600 mm}; drop: {over: 500 mm}; TIGHTENED",
                "drop: {over: 600 mm}; drop: {atLeast: 600 mm}; TIGHTENED",
                "drop: {over: 600 mm}; drop: {over: 700 mm}; RELAXED",
                "drop: {over: 600 mm}; drop: {under: 600 mm}; CHANGED",
                "when: {drop: {over: 600 mm}}; when: {drop: {over: 600 mm}, occupancy: [public]}; RELAXED",
                "atLeast:; over:; TIGHTENED",
                "atLeast:; atMost:; CHANGED",
                "obligation: shall; obligation: should; RELAXED",
                "Raise the guard.; Put up a higher guard.; REWORDED",
                "Height of a guard; Guard height; REWORDED",
                "clause: Diagram 3.1; clause: Diagram 3.2; REWORDED",
                "concern: guarding; concern: stair; REWORDED",
            })
    void a_change_of_the_guards_provision_is_told_by_its_sense(String old, String now, String effect) {
        assertThat(guardAfter(old, now)).isEqualTo(effect);
        Edition after = EditedFiles.good().with(EditedFiles.EDITION, old, now).edition();
        assertThat(effect(after, BEFORE, "guard.height"))
                .isEqualTo(
                        effect.equals("unchanged")
                                ? effect
                                : mirrored(Effect.valueOf(effect)).name());
    }

    private static String guardAfter(String old, String now) {
        return effect(
                BEFORE, EditedFiles.good().with(EditedFiles.EDITION, old, now).edition(), "guard.height");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "post.treatment; atLeast: \"4\"; atLeast: \"3.2\"; RELAXED",
                "post.treatment; atLeast: \"4\"; atMost: \"3.2\"; CHANGED",
                "post.preservative; [copper, creosote]; [copper]; TIGHTENED",
                "post.preservative; [copper, creosote]; [copper, creosote, none]; RELAXED",
                "post.preservative; [copper, creosote]; [copper, none]; CHANGED",
                "post.preservative; cut ends treated: true; cut ends treated: false; CHANGED",
                "joist.bending; ksys: 1.05; ksys: 1.1; CHANGED",
                "joist.bending; value: 1.35; value: 1.30; CHANGED",
            })
    void other_provisions_are_told_likewise(String provision, String old, String now, String effect) {
        Edition after = EditedFiles.good().with(EditedFiles.EDITION, old, now).edition();

        assertThat(effect(BEFORE, after, provision)).isEqualTo(effect);
    }

    @Test
    void what_calculates_in_a_provisions_place_decides_nothing() {
        Edition before = EditedFiles.good().withUseOfJoists().edition();
        Edition after = EditedFiles.good()
                .withUseOfJoists("calculated: [joist.bending]")
                .edition();

        assertThat(effect(before, after, "joist.use")).isEqualTo("REWORDED");
        assertThat(change(
                                new EditionComparer(TestVocabulary.SMALL).compare(before, after),
                                "joist.use",
                                "calculated by")
                        .after())
                .isPresent();
    }

    @Test
    void a_limit_that_goes_up_for_one_use_and_down_for_another_is_changed() {
        Edition after = EditedFiles.good()
                .with(EditedFiles.EDITION, "value: 1100 mm", "value: 1150 mm")
                .with(EditedFiles.EDITION, "{value: 1200 mm}", "{when: {occupancy: [public]}, value: 900 mm}")
                .edition();

        assertThat(effect(BEFORE, after, "guard.height")).isEqualTo("CHANGED");
    }

    @Test
    void each_changed_parameter_is_named_with_its_source() {
        Edition after = EditedFiles.good()
                .with(EditedFiles.EDITION, "value: 1.35", "value: 1.30")
                .edition();
        Change gammaM =
                change(new EditionComparer(TestVocabulary.SMALL).compare(BEFORE, after), "joist.bending", "gammaM");

        assertThat(gammaM.before())
                .hasValue(new Statement(
                        "1.35",
                        Optional.of(new Statement.Cited("NA to EN 1995-1-1, Table NA.3", Confirmation.MEMORY))));
        assertThat(gammaM.after()).map(Statement::text).hasValue("1.3");
    }

    @Test
    void a_higher_load_is_tightened_and_no_provisions_doing() {
        Edition after = EditedFiles.good()
                .with(EditedFiles.EDITION, "uniform: 2.5 kN/m2", "uniform: 3 kN/m2")
                .edition();
        EditionDifferences differences = new EditionComparer(TestVocabulary.SMALL).compare(BEFORE, after);

        assertThat(differences.provisions()).isEmpty();
        assertThat(differences.loads()).extracting(Change::effect).containsExactly(Effect.TIGHTENED);
        assertThat(differences.loads().get(0).before()).map(Statement::text).hasValue("2.5 kN/m²");
        assertThat(differences.loads().get(0).after()).map(Statement::text).hasValue("3 kN/m²");
    }

    @Test
    void advice_that_only_shows_another_figure_is_not_reworded() {
        EditedFiles showing =
                EditedFiles.good().with(EditedFiles.EDITION, "advice: Raise the guard.", "advice: \"Up to {limit}.\"");
        Edition higher = showing.with(EditedFiles.EDITION, "value: 1200 mm", "value: 1250 mm")
                .edition();

        assertThat(new EditionComparer(TestVocabulary.SMALL)
                        .compare(showing.edition(), higher)
                        .of("guard.height")
                        .orElseThrow()
                        .changes())
                .extracting(Change::effect)
                .containsExactly(Effect.TIGHTENED);
    }

    @Test
    void reworded_advice_is_told_with_its_figures() {
        Edition after = EditedFiles.good()
                .with(EditedFiles.EDITION, "advice: Raise the guard.", "advice: \"Up to {limit}.\"")
                .edition();
        Change advice =
                change(new EditionComparer(TestVocabulary.SMALL).compare(BEFORE, after), "guard.height", "advice");

        assertThat(advice.before()).map(Statement::text).hasValue("Raise the guard.");
        assertThat(advice.after()).map(Statement::text).hasValue("Up to 1100 mm or 1200 mm.");
    }

    private static String effect(Edition before, Edition after, String provision) {
        EditionDifferences differences = new EditionComparer(TestVocabulary.SMALL).compare(before, after);
        assertThat(differences.provisions())
                .extracting(ProvisionDifference::provision)
                .isSubsetOf(provision);
        return differences.of(provision).map(p -> p.effect().name()).orElse("unchanged");
    }

    private static Map<String, Effect> effects(EditionDifferences differences) {
        return differences.provisions().stream()
                .collect(Collectors.toMap(ProvisionDifference::provision, ProvisionDifference::effect));
    }

    private static Change change(EditionDifferences differences, String provision, String what) {
        return differences.of(provision).orElseThrow().changes().stream()
                .filter(c -> c.what().startsWith(what))
                .findFirst()
                .orElseThrow();
    }

    private static Effect mirrored(Effect effect) {
        return switch (effect) {
            case ADDED -> Effect.WITHDRAWN;
            case WITHDRAWN -> Effect.ADDED;
            case TIGHTENED -> Effect.RELAXED;
            case RELAXED -> Effect.TIGHTENED;
            case CHANGED, REWORDED -> effect;
        };
    }
}
