package org.deckplanreview.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.deckplanreview.report.FindingBuilder.finding;

import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.deckplanreview.assessment.TakenRow;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Word;
import org.deckplanreview.ruleset.Confirmation;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.vocabulary.Sense;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReportJsonTest {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private static Report everyForm() {
        return ReportBuilder.report(
                finding("a")
                        .doesNotComply()
                        .caution("It may collapse.")
                        .also("edge 2", "/platforms/0/edges/1")
                        .rule(new Rule.Calculation("en1995.bending", ReportBuilder.parameters()))
                        .compares(Measure.mm(1000), Sense.AT_LEAST, Measure.mm(1100))
                        .utilisation(1.25)
                        .working(secondMoment()),
                finding("b").undetermined(new Need(Pointer.of("/platforms/0/level"), "the level of the boards")),
                finding("c").fromMemory().compares(new Word("x"), Sense.ONE_OF, new Word("x"), new Word("y")),
                finding("d").should().compares(new Flag(false), Sense.EQUAL, new Flag(false)),
                finding("e").notApplicable(),
                finding("f")
                        .takes(new TakenRow("code.sizes", "depth 5.5 in", "Sizes, Table 1", Confirmation.MEMORY))
                        .working(List.of(WorkingStep.ofWord("size", "2x6", "Sizes, Table 1", "from section depth"))));
    }

    private static List<WorkingStep> secondMoment() {
        Sheet sheet = Sheet.blank();
        sheet.given("b", 4.7e5, MeasureUnit.MILLIMETRE, "breadth", "", Pointer.of("/timbers/0"));
        sheet.given("h", 1.47e5, MeasureUnit.MILLIMETRE, "depth", "", Pointer.of("/timbers/0"));
        sheet.calculate(Formula.of("I = b * h^3 / 12", MeasureUnit.QUARTIC_MILLIMETRE, "(1)"));
        return sheet.steps();
    }

    @Test
    void a_step_that_comes_to_a_word_and_a_row_with_its_confirmation_are_told() throws Exception {
        JsonNode report = JSON.readTree(WrittenReport.text(everyForm()));
        JsonNode finding = report.at("/findings").findParents("provision").stream()
                .filter(f -> f.at("/provision").asText().equals("f"))
                .findFirst()
                .orElseThrow();

        JsonNode step = report.at("/steps").get(finding.at("/working/0/0").asInt());
        assertThat(step.at("/word").asText()).isEqualTo("2x6");
        assertThat(step.has("value")).isFalse();
        JsonNode row = report.at("/values").get(finding.at("/values/0/0").asInt());
        assertThat(row.at("/parameter").asText()).isEqualTo("code.sizes, depth 5.5 in");
        assertThat(row.at("/confirmed").asText()).isEqualTo("memory");
        assertThat(report.at("/recalledFromMemory").findParents("value"))
                .extracting(
                        recalled -> recalled.at("/value").asText(),
                        recalled -> recalled.at("/source").asText(),
                        recalled -> recalled.at("/provisions/0").asText())
                .containsExactly(
                        tuple("Modification factors", "source of kmod", "a"),
                        tuple("A requirement", "Protection from falling, 2013, Diagram 3.1", "c"),
                        tuple("Row of depth 5.5 in", "Sizes, Table 1", "f"));
    }

    @Test
    void every_form_of_finding_is_valid_against_the_published_schema() {
        assertThat(ReportSchema.faults(WrittenReport.text(everyForm()))).isEmpty();
    }

    @Test
    void a_report_without_findings_is_valid_against_the_published_schema() {
        assertThat(ReportSchema.faults(WrittenReport.text(ReportBuilder.report())))
                .isEmpty();
    }

    @Test
    void the_schema_refuses_a_member_that_it_does_not_know() throws Exception {
        ObjectNode report = (ObjectNode) JSON.readTree(WrittenReport.text(everyForm()));
        ((ObjectNode) report.at("/findings/0")).put("approved", true);

        assertThat(ReportSchema.faults(report.toString()))
                .singleElement()
                .asString()
                .contains("approved");
    }

    @Test
    void members_stand_from_the_top_down() throws Exception {
        JsonNode report = JSON.readTree(WrittenReport.text(everyForm()));

        assertThat(report.fieldNames())
                .toIterable()
                .containsExactly(
                        "notice",
                        "reference",
                        "title",
                        "reviewOn",
                        "outcome",
                        "counts",
                        "edition",
                        "cautions",
                        "referrals",
                        "findings",
                        "notApplicable",
                        "assumptions",
                        "recalledFromMemory",
                        "subjects",
                        "sources",
                        "values",
                        "steps",
                        "provenance");
        assertThat(report.at("/findings/0").fieldNames())
                .toIterable()
                .containsExactly(
                        "provision",
                        "title",
                        "concern",
                        "obligation",
                        "subject",
                        "also",
                        "determination",
                        "quantity",
                        "found",
                        "allowed",
                        "utilisation",
                        "sentence",
                        "advice",
                        "source",
                        "clause",
                        "values",
                        "working");
    }

    @Test
    void large_numbers_have_no_exponent_and_absent_members_are_left_out() {
        String json = WrittenReport.text(everyForm());

        assertThat(json).contains("\"value\":124414000000000000000").doesNotContain("null");
        assertThat(json).contains("\"utilisation\":1.25,");
    }

    @Test
    void what_is_calculated_beyond_a_provision_names_the_calculation() throws Exception {
        Report report = ReportBuilder.report(finding("span.table")
                .undetermined()
                .calculated(finding("span.bending").title("Bending"), 1.1199));

        assertThat(ReportSchema.faults(WrittenReport.text(report))).isEmpty();

        assertThat(JSON.readTree(WrittenReport.text(report)).at("/findings/0/calculated"))
                .isEqualTo(JSON.readTree("{\"provision\": \"span.bending\", \"title\": \"Bending\","
                        + " \"determination\": \"does not comply\", \"utilisation\": 1.12}"));
    }

    @Test
    void found_without_a_value_names_the_quantity_alone() throws Exception {
        JsonNode undetermined = JSON.readTree(WrittenReport.text(everyForm())).at("/findings/1");

        assertThat(undetermined.at("/quantity").asText()).isEqualTo("guard height");
        assertThat(undetermined.has("found")).isFalse();
        assertThat(undetermined.has("allowed")).isFalse();
    }

    @Test
    void the_same_assessment_gives_the_same_bytes_in_any_locale_and_time_zone() {
        String first = WrittenReport.text(everyForm());
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String tag : List.of("ar-EG-u-nu-arab", "tr-TR", "de-DE", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                assertThat(WrittenReport.text(everyForm())).as(tag).isEqualTo(first);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    /** As anyone can who has the line: without its last member, then SHA-256 (FIPS 180-4). */
    @ParameterizedTest
    @EnumSource(Detail.class)
    void the_digest_of_a_document_is_over_its_line_without_provenance(Detail detail) throws Exception {
        String line = new String(ReportJson.line(everyForm(), detail), StandardCharsets.UTF_8);

        String rest = line.replaceFirst(",\"provenance\":\\{[^{}]*}}$", "}");

        assertThat(JSON.readTree(line).at("/provenance/report").textValue())
                .isEqualTo(sha256(rest.getBytes(StandardCharsets.UTF_8)));
    }

    /** A tool that keeps members in their order and writes numbers as it reads them. */
    @Test
    void the_digest_follows_from_the_report_as_another_tool_writes_it() throws Exception {
        ObjectNode report = (ObjectNode) JSON.readTree(WrittenReport.text(everyForm()));
        String told = report.remove("provenance").get("report").textValue();

        assertThat(told)
                .isEqualTo(sha256(report.toString().getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(everyForm().digest());
    }

    @Test
    void what_findings_share_stands_once() throws Exception {
        WorkingStep breadth = WorkingStep.given(
                "b", 47, MeasureUnit.MILLIMETRE, "breadth", "", List.of(Pointer.of("/timbers/0/breadth")));
        WorkingStep depth = WorkingStep.given(
                "h", 147, MeasureUnit.MILLIMETRE, "depth", "", List.of(Pointer.of("/timbers/0/depth")));
        JsonNode report = JSON.readTree(WrittenReport.text(ReportBuilder.report(
                finding("a").working(List.of(breadth, depth)), finding("b").working(List.of(depth)))));

        assertThat(report.at("/steps")).hasSize(2);
        assertThat(report.at("/sources")).hasSize(1);
        assertThat(report.at("/findings/0/working")).isEqualTo(JSON.readTree("[[0, 1]]"));
        assertThat(report.at("/findings/1/working")).isEqualTo(JSON.readTree("[[1, 1]]"));
    }

    @Test
    void those_alike_that_follow_each_other_are_one_range_of_subjects() throws Exception {
        JsonNode report = JSON.readTree(WrittenReport.text(ReportBuilder.report(
                finding("a").also("edge 2", "/platforms/0/edges/1").also("edge 3", "/platforms/0/edges/2"))));
        JsonNode also = report.at("/findings/0/also/0");

        assertThat(report.at("/findings/0/also")).hasSize(1);
        assertThat(report.at("/subjects").get(also.get(0).asInt()).at("/label").asText())
                .isEqualTo("edge 2");
        assertThat(report.at("/subjects")
                        .get(also.get(1).asInt())
                        .at("/pointer")
                        .asText())
                .isEqualTo("/platforms/0/edges/2");
    }

    @Test
    void a_summary_tells_what_was_found_and_what_to_do_and_no_more() throws Exception {
        String line = new String(ReportJson.line(everyForm(), Detail.SUMMARY), StandardCharsets.UTF_8);
        JsonNode summary = JSON.readTree(line);

        assertThat(ReportSchema.faults(line)).isEmpty();
        assertThat(summary.fieldNames())
                .toIterable()
                .containsExactly(
                        "notice",
                        "detail",
                        "reference",
                        "reviewOn",
                        "outcome",
                        "counts",
                        "edition",
                        "findings",
                        "subjects",
                        "provenance");
        assertThat(summary.at("/findings/0").fieldNames())
                .toIterable()
                .containsExactly("provision", "subject", "determination", "found", "allowed", "utilisation", "advice");
        assertThat(summary.at("/findings").findValuesAsText("determination")).doesNotContain("not applicable");
    }

    @Test
    void provenance_digests_the_bytes_received_and_the_submissions_canonical_form() throws Exception {
        Provenance provenance = everyForm().provenance();

        assertThat(provenance.received()).isEqualTo(sha256(ReportBuilder.SUBMISSION.getBytes(StandardCharsets.UTF_8)));
        assertThat(provenance.submission())
                .isEqualTo(sha256("{\"a\":1,\"reference\":\"DPR-1\"}".getBytes(StandardCharsets.UTF_8)));
        assertThat(provenance.edition()).isEqualTo(ReportBuilder.edition().digest());
        assertThat(provenance.service()).isEqualTo(ReportBuilder.VERSION);
    }

    private static String sha256(byte[] bytes) throws Exception {
        return "sha256:"
                + String.format(
                        "%064x",
                        new BigInteger(1, MessageDigest.getInstance("SHA-256").digest(bytes)));
    }
}
