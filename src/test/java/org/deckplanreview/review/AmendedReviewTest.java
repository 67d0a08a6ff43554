package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportSchema;
import org.deckplanreview.report.ReportedAmendment;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.WrittenReport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reviews under amendments, and in an invented region whose editions bind only where they are adopted, which a directory
 * adds to the rulesets that come with the service.
 */
class AmendedReviewTest {

    private static final String SAMPLE = "small-level-deck.json";
    private static final String CITE = "cite: {source: law, clause: \"3\", confirmed: {by: page, on: 2026-11-25}}";
    private static final String LAW =
            "sources:\n  law: {title: Ordinance, edition: \"7\", publisher: County, standing: statute}\n";

    @TempDir
    static Path folder;

    private static Reviewer reviewer;

    @BeforeAll
    static void add() throws IOException {
        String england = Files.readString(Path.of("rulesets", "uk-england", "2024.yaml"));
        for (String edition : List.of("2018", "2021")) {
            write(
                    "modelland/" + edition + ".yaml",
                    england.replace("region: uk-england", "region: modelland")
                            .replace("regionTitle: England", "regionTitle: Modelland")
                            .replace("edition: \"2024\"", "edition: \"" + edition + "\"")
                            .replace("inForce: {from: 2024-10-01}", "published: " + edition + "-08-31"));
        }
        amendment(
                "county",
                "[\"2018\", \"2021\"]\nadopts: \"2018\"",
                "site:\n  frostDepth: {value: 42 in, " + CITE + "}\n");
        amendment("parish", "[\"2021\"]\nadopts: \"2021\"", "site:\n  frostDepth: {value: 300 mm, " + CITE + "}\n");
        reviewer = ReviewServices.reviewerOf(
                BuiltIn.CATALOGUE, ReviewServices.loaded(BuiltIn.CATALOGUE.vocabulary(), Optional.of(folder)), "test");
    }

    private static void amendment(String name, String amends, String content) throws IOException {
        write(
                "modelland/amendments/" + name + ".yaml",
                "region: modelland\namendment: " + name + "\ntitle: The " + name + "\namends: " + amends + "\n" + LAW
                        + content);
    }

    private static void write(String path, String text) throws IOException {
        Path file = folder.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static ObjectNode deck(String region, Optional<String> edition, String... amendments) {
        ObjectNode deck = (ObjectNode) BuiltIn.sample(SAMPLE);
        ObjectNode ruleset = deck.putObject("ruleset").put("region", region);
        edition.ifPresent(name -> ruleset.put("edition", name));
        Arrays.stream(amendments)
                .forEach(name -> ruleset.withArray("amendments").add(name));
        return deck;
    }

    private static Report report(JsonNode deck) {
        ReviewResult result = reviewer.review(BuiltIn.bytes(deck));
        assertThat(result).isInstanceOf(ReviewResult.Reviewed.class);
        return ((ReviewResult.Reviewed) result).report();
    }

    private static ReviewResult.UnknownRuleset refused(JsonNode deck) {
        ReviewResult result = reviewer.review(BuiltIn.bytes(deck));
        assertThat(result).isInstanceOf(ReviewResult.UnknownRuleset.class);
        return (ReviewResult.UnknownRuleset) result;
    }

    private static String text(Report report) {
        return TextRendering.render(report, WorkingShown.NONE).replaceAll("\\s+", " ");
    }

    private static Determination determination(Report report, String provision) {
        return report.findings().stream()
                .filter(f -> f.provision().equals(provision))
                .map(ReportedFinding::determination)
                .min(Determination::compareTo)
                .orElseThrow();
    }

    /** 3400 / 250 = 13.6 mm: joists of 47 x 170 sag about 17 mm, less than the national 3400 / 150 = 22.7 mm. */
    @Test
    void an_offices_stricter_limit_turns_a_deck_that_complies() {
        ObjectNode deck = deck("uk-england", Optional.empty());
        ((ObjectNode) deck.at("/timbers/0")).put("depth", 170);
        ObjectNode amended = deck.deepCopy();
        ((ObjectNode) amended.get("ruleset")).putArray("amendments").add("office-stiffer-decks");
        assertThat(determination(report(deck), "joist.deflection-final")).isEqualTo(Determination.COMPLIES);
        assertThat(determination(report(amended), "joist.deflection-final")).isEqualTo(Determination.DOES_NOT_COMPLY);
    }

    @Test
    void the_report_names_each_amended_value_what_it_replaced_and_by_whom() {
        Report report = report(deck("uk-england", Optional.empty(), "office-stiffer-decks"));
        assertThat(report.edition().amendments())
                .extracting(ReportedAmendment::amendment, ReportedAmendment::adopts)
                .containsExactly(tuple("office-stiffer-decks", false));
        assertThat(report.edition().amendedValues())
                .extracting(
                        v -> v.what(),
                        v -> v.provision().orElseThrow(),
                        v -> v.was().orElseThrow().value(),
                        v -> v.is().orElseThrow().value(),
                        v -> v.strictness(),
                        v -> v.setBy())
                .containsExactly(
                        tuple("spanRatio", "joist.deflection-final", "150", "250", "tighter", "office-stiffer-decks"),
                        tuple(
                                "cantileverRatio",
                                "joist.deflection-final",
                                "75",
                                "125",
                                "tighter",
                                "office-stiffer-decks"));
        assertThat(ReportSchema.faults(WrittenReport.text(report))).isEmpty();
        assertThat(text(report))
                .contains(
                        "Amended by office-stiffer-decks: A design office's own rule for decks that sag less",
                        "- spanRatio (joist.deflection-final): tighter Was 150; NA to BS EN 1995-1-1",
                        "Is 250; House rules of a design office",
                        "Set by office-stiffer-decks",
                        "picked by the day 2026-03-31");
    }

    @Test
    void a_report_without_amendments_has_no_member_for_them() {
        String json = WrittenReport.text(report(deck("uk-england", Optional.empty())));
        assertThat(json).doesNotContain("\"amendments\"", "\"amendedValues\"", "\"pickedBy\"", "\"published\"");
    }

    @Test
    void an_edition_that_binds_only_as_adopted_may_be_named_by_the_submission() {
        Report report = report(deck("modelland", Optional.of("2021")));
        assertThat(text(report))
                .contains("published on 2021-08-31, binding only where adopted; named by the submission");
        assertThat(ReportSchema.faults(WrittenReport.text(report))).isEmpty();
        assertThat(WrittenReport.text(report)).contains("\"published\":\"2021-08-31\"", "\"pickedBy\":\"submission\"");
    }

    @Test
    void an_edition_may_be_adopted_by_an_amendment() {
        Report report = report(deck("modelland", Optional.empty(), "county"));
        assertThat(report.edition().edition()).isEqualTo("2018");
        assertThat(text(report)).contains("binding only where adopted; adopted by the amendment county");
        assertThat(ReportSchema.faults(WrittenReport.text(report))).isEmpty();
    }

    @Test
    void without_either_the_editions_and_the_amendments_that_adopt_one_are_listed() {
        ReviewResult.UnknownRuleset refused = refused(deck("modelland", Optional.empty()));
        assertThat(refused.pointer().value()).isEqualTo("/ruleset/edition");
        assertThat(refused.accepted())
                .isEqualTo("one of 2018, 2021; or in /ruleset/amendments one that adopts an edition: county (2018),"
                        + " parish (2021)");
    }

    @Test
    void amendments_that_adopt_different_editions_are_refused() {
        assertThat(refused(deck("modelland", Optional.empty(), "county", "parish"))
                        .pointer()
                        .value())
                .isEqualTo("/ruleset/amendments");
    }

    @Test
    void amendments_in_conflict_are_refused_where_the_submission_names_the_second() {
        ReviewResult.UnknownRuleset refused = refused(deck("modelland", Optional.of("2021"), "county", "parish"));
        assertThat(refused.pointer().value()).isEqualTo("/ruleset/amendments/1");
        assertThat(refused.detail()).contains("'parish' cannot be laid over those named before it");
    }

    @Test
    void an_unknown_amendment_is_refused_with_the_nearest_known() {
        ReviewResult.UnknownRuleset refused = refused(deck("modelland", Optional.of("2018"), "conty"));
        assertThat(refused.pointer().value()).isEqualTo("/ruleset/amendments/0");
        assertThat(refused.accepted()).isEqualTo("county, parish; the nearest is 'county'");
        assertThat(refused(deck("modelland", Optional.of("2018"), "parish")).detail())
                .isEqualTo("The amendment 'parish' does not amend the edition 2018.");
    }

    /** 42 in = 1066.8 mm, by the inch of 25.4 mm. */
    @ParameterizedTest
    @CsvSource({"450, less; the local value is used", "1066, less; the local value is used", ", none"})
    void a_local_value_holds_where_the_submission_states_none_or_less(Integer stated, String words) {
        ObjectNode deck = deck("modelland", Optional.empty(), "county");
        ObjectNode site = (ObjectNode) deck.get("site");
        site.remove("frostDepth");
        Optional.ofNullable(stated).ifPresent(mm -> site.put("frostDepth", mm));
        Report report = report(deck);
        assertThat(report.assumptions())
                .contains(
                        "Frost depth: 42 in, the local value of the amendment county (Ordinance, 7, 3). The submission"
                                + " states " + words + ".");
        assertThat(determination(report, "footing.depth-frost")).isEqualTo(Determination.DOES_NOT_COMPLY);
    }

    @ParameterizedTest
    @CsvSource({"1066.8", "1200"})
    void a_local_value_is_no_more_than_a_least_one(double stated) {
        ObjectNode deck = deck("modelland", Optional.empty(), "county");
        ((ObjectNode) deck.get("site")).put("frostDepth", stated);
        assertThat(report(deck).assumptions()).noneMatch(a -> a.startsWith("Frost depth"));
    }

    @Test
    void what_is_built_in_cannot_be_replaced_from_a_directory() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        Files.createDirectories(other.resolve("uk-england"));
        Files.copy(Path.of("rulesets", "uk-england", "2024.yaml"), other.resolve("uk-england/2024.yaml"));
        try {
            assertThatThrownBy(() -> ReviewServices.loaded(BuiltIn.CATALOGUE.vocabulary(), Optional.of(other)))
                    .isInstanceOf(FaultyRulesets.class)
                    .hasMessageStartingWith("The rulesets, with those in " + other + ", have faults:\n"
                            + "uk-england/2024.yaml:1: A file of this path is built in already");
        } finally {
            Files.delete(other.resolve("uk-england/2024.yaml"));
        }
    }

    @Test
    void a_directory_that_is_not_there_is_told() {
        Path none = folder.resolve("none");
        assertThatThrownBy(() -> ReviewServices.loaded(BuiltIn.CATALOGUE.vocabulary(), Optional.of(none)))
                .isInstanceOf(FaultyRulesets.class)
                .hasMessageContaining("The rulesets cannot be listed");
    }
}
