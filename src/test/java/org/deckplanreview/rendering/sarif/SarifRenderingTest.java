package org.deckplanreview.rendering.sarif;

import static org.assertj.core.api.Assertions.assertThat;

import com.contrastsecurity.sarif.SarifSchema210;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.report.Report;
import org.everit.json.schema.Schema;
import org.everit.json.schema.loader.SchemaLoader;
import org.json.JSONObject;
import org.json.JSONTokener;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the schema that OASIS publishes for the Static Analysis Results Interchange Format, version 2.1.0. */
class SarifRenderingTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static Schema schema() throws IOException {
        try (InputStream in = SarifSchema210.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            JSONObject schema = new JSONObject(new JSONTokener(in));
            return SchemaLoader.builder()
                    .schemaJson(schema)
                    .draftV7Support()
                    .build()
                    .load()
                    .build();
        }
    }

    static List<String> samples() throws IOException {
        return ReviewedDecks.names();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_sample_gives_a_valid_log_with_a_result_for_each_open_finding(String sample) throws IOException {
        byte[] submission = ReviewedDecks.bytes(sample);
        Report report = ReviewedDecks.report(submission);
        String log = new String(SarifRendering.render(report, submission, sample), StandardCharsets.UTF_8);

        schema().validate(new JSONObject(log));
        JsonNode results = JSON.readTree(log).at("/runs/0/results");
        assertThat(results).hasSize((int) report.findings().stream()
                .filter(f -> f.determination() == Determination.DOES_NOT_COMPLY
                        || f.determination() == Determination.UNDETERMINED)
                .count());
        for (JsonNode result : results) {
            JsonNode rule = JSON.readTree(log)
                    .at("/runs/0/tool/driver/rules/" + result.path("ruleIndex").asInt());
            assertThat(rule.path("id")).isEqualTo(result.path("ruleId"));
        }
    }

    @Test
    void a_result_stands_on_the_line_of_its_subject() throws IOException {
        byte[] submission = ReviewedDecks.bytes("many-faults");
        List<String> lines =
                new String(submission, StandardCharsets.UTF_8).lines().toList();
        JsonNode results = JSON.readTree(
                        SarifRendering.render(ReviewedDecks.report(submission), submission, "many-faults.json"))
                .at("/runs/0/results");
        JsonNode submitted = JSON.readTree(submission);
        int checked = 0;
        for (JsonNode result : results) {
            JsonNode location = result.at("/locations/0");
            JsonNode subject = submitted.at(
                    location.at("/logicalLocations/0/fullyQualifiedName").asText());
            if (subject.isObject()) {
                JsonNode region = location.at("/physicalLocation/region");
                String line = lines.get(region.path("startLine").asInt() - 1);
                assertThat(line.charAt(region.path("startColumn").asInt() - 1)).isEqualTo('{');
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(10);
    }

    @Test
    void shall_is_an_error_should_a_warning_and_what_cannot_be_told_is_open() throws IOException {
        byte[] submission = ReviewedDecks.bytes("many-faults");
        JsonNode log =
                JSON.readTree(SarifRendering.render(ReviewedDecks.report(submission), submission, "many-faults.json"));
        assertThat(log.at("/runs/0/results"))
                .anySatisfy(r -> assertThat(r.path("level").asText()).isEqualTo("error"))
                .anySatisfy(r -> assertThat(r.path("level").asText()).isEqualTo("warning"))
                .anySatisfy(r -> assertThat(r.path("kind").asText()).isEqualTo("open"))
                .allSatisfy(r -> assertThat(r.path("kind").asText().equals("fail"))
                        .isNotEqualTo(r.path("level").asText().equals("none")));
    }

    /** Sections 3.11.5 and 3.11.6: placeholders are in braces, links in brackets, both escaped to be text. */
    @Test
    void a_label_is_text_whatever_it_holds() throws IOException {
        byte[] submission = ReviewedDecks.changed("many-faults", "the yard deck", "[a](http://x) {0} <script>]]>");
        String log = new String(
                SarifRendering.render(ReviewedDecks.report(submission), submission, "x.json"), StandardCharsets.UTF_8);
        schema().validate(new JSONObject(log));
        assertThat(JSON.readTree(log).at("/runs/0/results"))
                .anySatisfy(r ->
                        assertThat(r.at("/message/text").asText()).contains("\\[a\\](http://x) {{0}} <script>\\]\\]>"));
    }

    @Test
    void the_same_report_gives_the_same_bytes() throws IOException {
        byte[] submission = ReviewedDecks.bytes("many-faults");
        assertThat(SarifRendering.render(ReviewedDecks.report(submission), submission, "a.json"))
                .isEqualTo(SarifRendering.render(ReviewedDecks.report(submission), submission, "a.json"));
    }
}
