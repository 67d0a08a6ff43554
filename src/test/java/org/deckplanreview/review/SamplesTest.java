package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportSchema;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each sample's report against the one that was read and approved. After a wanted change of reports
 * {@code mvn test -Dtest=SamplesTest -Dapprove=true} writes them anew: read the difference before it is committed.
 */
class SamplesTest {

    private static final Path APPROVED = Path.of("src/test/resources/approved");
    private static final Path TABLE = BuiltIn.SAMPLES.resolve("README.md");
    private static final Pattern ROW = Pattern.compile("\\| `([^`]+)` \\| ([^|]+) \\| ([^|]+) \\| ([^|]+) \\|");

    @BeforeAll
    static void approve() throws IOException {
        if (Boolean.getBoolean("approve")) {
            Files.createDirectories(APPROVED);
            for (Path old : BuiltIn.in(APPROVED, "")) {
                Files.delete(old);
            }
            for (Path sample : BuiltIn.samples()) {
                Report report = BuiltIn.report(BuiltIn.read(sample));
                Files.write(approved(sample, "json"), JsonRendering.render(report));
                Files.writeString(approved(sample, "txt"), text(report));
            }
        }
    }

    private static Path approved(Path sample, String ending) {
        return APPROVED.resolve(sample.getFileName().toString().replaceFirst("json$", ending));
    }

    /** As the service answers and the command prints. */
    private static String text(Report report) {
        return TextRendering.render(report, WorkingShown.GOVERNING);
    }

    static List<Path> samples() {
        return BuiltIn.samples();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_report_is_the_approved_one_byte_for_byte(Path sample) {
        Report report = BuiltIn.report(BuiltIn.read(sample));
        assertThat(new String(JsonRendering.render(report), StandardCharsets.UTF_8))
                .isEqualTo(new String(BuiltIn.read(approved(sample, "json")), StandardCharsets.UTF_8));
        assertThat(text(report).getBytes(StandardCharsets.UTF_8)).isEqualTo(BuiltIn.read(approved(sample, "txt")));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_report_is_valid_against_its_published_schema(Path sample) {
        byte[] report = JsonRendering.render(BuiltIn.report(BuiltIn.read(sample)));
        assertThat(ReportSchema.faults(new String(report, StandardCharsets.UTF_8)))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_outcome_is_the_one_that_the_samples_table_expects(Path sample) {
        assertThat(BuiltIn.report(BuiltIn.read(sample)).outcome().word())
                .isEqualTo(expectedOutcomes().get(sample.getFileName().toString()));
    }

    @Test
    void the_table_has_a_row_for_each_sample_and_no_other() {
        assertThat(expectedOutcomes())
                .containsOnlyKeys(BuiltIn.samples().stream()
                        .map(s -> s.getFileName().toString())
                        .toArray(String[]::new));
    }

    @Test
    void each_sample_has_its_two_approved_reports_and_there_are_no_others() {
        assertThat(BuiltIn.in(APPROVED, ""))
                .containsExactlyInAnyOrderElementsOf(BuiltIn.samples().stream()
                        .flatMap(s -> Stream.of(approved(s, "json"), approved(s, "txt")))
                        .toList());
    }

    private static Map<String, String> expectedOutcomes() {
        Map<String, String> outcomes = new TreeMap<>();
        Matcher row = ROW.matcher(new String(BuiltIn.read(TABLE), StandardCharsets.UTF_8));
        while (row.find()) {
            outcomes.put(row.group(1), row.group(3));
        }
        return outcomes;
    }
}
