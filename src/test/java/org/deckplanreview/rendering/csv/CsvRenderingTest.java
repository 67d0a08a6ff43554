package org.deckplanreview.rendering.csv;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.report.Report;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvRenderingTest {

    static List<String> samples() throws IOException {
        return ReviewedDecks.names();
    }

    private static List<String[]> rows(byte[] csv) throws IOException {
        MappingIterator<String[]> rows = new CsvMapper()
                .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                .readerFor(String[].class)
                .readValues(csv);
        return rows.readAll();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_finding_is_one_row_with_a_cell_for_each_heading(String sample) throws IOException {
        Report report = ReviewedDecks.report(sample);
        List<String[]> rows = rows(CsvRendering.findings(report));
        int findings = report.findings().size();
        assertThat(rows).hasSize(1 + findings + report.givenNotReviewed().size());
        assertThat(rows).allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
        for (int i = 0; i < report.findings().size(); i++) {
            assertThat(rows.get(i + 1))
                    .contains(
                            report.findings().get(i).provision(),
                            report.findings().get(i).determination().word());
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void what_was_given_and_not_reviewed_is_a_row_without_a_number(String sample) throws IOException {
        Report report = ReviewedDecks.report(sample);
        List<String[]> rows = rows(CsvRendering.findings(report));
        List<String[]> last = rows.subList(1 + report.findings().size(), rows.size());
        for (int i = 0; i < last.size(); i++) {
            assertThat(last.get(i)[0]).isEmpty();
            assertThat(last.get(i))
                    .contains(
                            "given, not reviewed",
                            report.givenNotReviewed().get(i).meaning(),
                            report.givenNotReviewed().get(i).pointer().value());
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_length_of_each_post_is_in_the_schedule(String sample) throws IOException {
        Report report = ReviewedDecks.report(sample);
        List<String[]> rows = rows(CsvRendering.schedule(report));
        assertThat(rows).allSatisfy(row -> assertThat(row).hasSize(6));
        report.schedule().orElseThrow().platforms().stream()
                .flatMap(platform -> platform.posts().stream())
                .forEach(post ->
                        assertThat(rows).anySatisfy(row -> assertThat(row).contains("posts", post.label(), "length")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "|cmd", " =1+1", "%x"})
    void a_label_that_starts_like_a_formula_stays_a_text(String label) throws IOException {
        byte[] submission = ReviewedDecks.changed("many-faults", "the yard deck", label);
        List<String[]> rows = rows(CsvRendering.findings(ReviewedDecks.report(submission)));
        assertThat(rows).anySatisfy(row -> assertThat(row).contains("'" + label));
        assertThat(rows).allSatisfy(row -> assertThat(row).doesNotContain(label));
    }

    @Test
    void a_comma_a_quote_and_markup_in_a_label_stay_in_its_cell() throws IOException {
        String label = "a, \\\"b\\\"; <script>]]>";
        byte[] submission = ReviewedDecks.changed("many-faults", "the yard deck", label);
        assertThat(rows(CsvRendering.findings(ReviewedDecks.report(submission))))
                .anySatisfy(row -> assertThat(row).contains("a, \"b\"; <script>]]>"));
    }

    /** RFC 4180, section 2: lines end with CR LF. */
    @Test
    void lines_end_with_cr_lf_and_negative_levels_are_numbers() throws IOException {
        Report report = ReviewedDecks.report("border-deck-scotland");
        String schedule = new String(CsvRendering.schedule(report), StandardCharsets.UTF_8);
        assertThat(schedule.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(schedule).endsWith("\r\n").contains(",bottom level,-550,mm\r\n");
    }
}
