package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.flipkart.zjsonpatch.JsonPatch;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.provenance.CanonicalJson;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.ruleset.Edition;
import org.json.JSONObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The editions of the United Kingdom side by side. Guards: Approved Document K 2013, K2, 3.1 (more than 600 mm) and the
 * technical handbooks of Scotland, standard 4.4 (600 mm or more; guidance 4.4.1 from memory). Timber: BS 8417:2011+A1:2014 and
 * BS 8417:2024, both as secondary pages quote them.
 */
class NationsTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String AT_600_MM =
            replace("/platforms/0/fall", "{\"gradient\": \"level\"}") + "," + replace("/platforms/0/level/z", "600");
    private static final String WITHOUT_GUARD = "{\"op\": \"remove\", \"path\": \"/platforms/0/edges/0/guard\"}";
    private static final String JOISTS_FOR_CLASS_3_2 = replace("/timbers/0/treatment/useClass", "\"UC3.2\"");

    private static String replace(String path, String value) {
        return "{\"op\": \"replace\", \"path\": \"%s\", \"value\": %s}".formatted(path, value);
    }

    private static String in(String region) {
        return replace("/ruleset/region", "\"" + region + "\"");
    }

    private static String on(String day) {
        return replace("/reviewOn", "\"" + day + "\"");
    }

    private static ReviewResult review(String... operations) {
        try {
            JsonNode sample = JSON.readTree(Files.readAllBytes(Path.of("sample-submissions/small-level-deck.json")));
            JsonNode patch = JSON.readTree("[" + String.join(",", operations) + "]");
            return BuiltIn.REVIEWER.review(JSON.writeValueAsBytes(JsonPatch.apply(patch, sample)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Report report(String... operations) {
        ReviewResult result = review(operations);
        assertThat(result).isInstanceOf(ReviewResult.Reviewed.class);
        return ((ReviewResult.Reviewed) result).report();
    }

    /** Ids of the provisions of a concern that the report finds not to be met. */
    private static List<String> broken(Report report, Concern concern) {
        return report.findings().stream()
                .filter(f -> f.concern() == concern && f.determination() == Determination.DOES_NOT_COMPLY)
                .map(ReportedFinding::provision)
                .toList();
    }

    @Test
    void a_drop_of_600_mm_needs_a_guard_in_scotland_and_none_in_england() {
        assertThat(broken(report(in("uk-scotland"), AT_600_MM, WITHOUT_GUARD), Concern.GUARDING))
                .containsExactly("guard.needed");
        assertThat(broken(report(in("uk-england"), AT_600_MM, WITHOUT_GUARD), Concern.GUARDING))
                .isEmpty();
    }

    @Test
    void the_same_deck_fails_in_scotland_and_not_in_england() {
        Report scotland = report(in("uk-scotland"), AT_600_MM, WITHOUT_GUARD);
        Report england = report(in("uk-england"), AT_600_MM, WITHOUT_GUARD);
        assertThat(scotland.outcome()).isEqualTo(Determination.DOES_NOT_COMPLY);
        assertThat(england.outcome()).isNotEqualTo(Determination.DOES_NOT_COMPLY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"uk-england", "uk-wales", "uk-northern-ireland"})
    void a_drop_of_601_mm_needs_a_guard_where_more_than_600_mm_does(String region) {
        String higher = replace("/platforms/0/level/z", "601");
        assertThat(broken(report(in(region), AT_600_MM, higher, WITHOUT_GUARD), Concern.GUARDING))
                .containsExactly("guard.dwelling.needed");
        assertThat(broken(report(in(region), AT_600_MM, WITHOUT_GUARD), Concern.GUARDING))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "uk-england, 2014-10-31, 2014",
        "uk-england, 2020-06-01, 2014",
        "uk-england, 2024-09-30, 2014",
        "uk-england, 2024-10-01, 2024",
        "uk-scotland, 2024-10-01, 2024",
        "uk-wales, 2026-03-31, 2024",
        "uk-northern-ireland, 2026-03-31, 2024"
    })
    void the_day_picks_the_edition(String region, String day, String edition) {
        assertThat(report(in(region), on(day)).edition().edition()).isEqualTo(edition);
    }

    @ParameterizedTest
    @CsvSource({"uk-england, 2014-10-30", "uk-scotland, 2024-09-30"})
    void before_the_first_edition_there_is_none(String region, String day) {
        assertThat(review(in(region), on(day)))
                .isInstanceOfSatisfying(
                        ReviewResult.UnknownRuleset.class,
                        none -> assertThat(none.pointer().value()).isEqualTo("/reviewOn"));
    }

    @Test
    void joists_treated_for_use_class_3_2_comply_in_2014_and_not_in_2024() {
        assertThat(broken(report(JOISTS_FOR_CLASS_3_2, on("2024-09-30")), Concern.TREATMENT))
                .isEmpty();
        assertThat(broken(report(JOISTS_FOR_CLASS_3_2, on("2024-10-01")), Concern.TREATMENT))
                .containsExactly("treatment.joists");
    }

    @Test
    void a_report_names_the_documents_of_its_own_nation() {
        assertThat(report(in("uk-wales")).findings())
                .filteredOn(f -> f.provision().startsWith("guard.dwelling."))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.citation().source().title()).contains("for use in Wales"));
        assertThat(report(in("uk-scotland")).edition().regionTitle()).isEqualTo("Scotland");
    }

    /** What England's edition asked for when it was one file; a line has id, obligation, condition and limit or method. */
    @Test
    void sharing_changed_nothing_in_england() throws IOException {
        Edition england = BuiltIn.RULESETS.edition("uk-england", "2024").orElseThrow();
        List<String> lines = new ArrayList<>();
        for (Object one : new JSONObject(england.canonical()).getJSONArray("provisions")) {
            lines.add(line((JSONObject) one));
        }
        assertThat(lines).containsSubsequence(expected());
    }

    private static List<String> expected() throws IOException {
        try (InputStream in = NationsTest.class.getResourceAsStream("england-2024.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    private static String line(JSONObject provision) {
        return String.join(
                " ",
                provision.getString("id"),
                provision.getString("obligation"),
                CanonicalJson.of(provision.getJSONObject("when").toString()),
                provision.has("limit")
                        ? CanonicalJson.of(provision.getJSONObject("limit").toString())
                        : provision.getJSONObject("calculate").getString("method"));
    }
}
