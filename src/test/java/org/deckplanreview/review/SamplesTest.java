package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.report.ApprovedReports;
import org.deckplanreview.report.ApprovedReports.JsonDigest;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportSchema;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each sample's report against the approved one. After an intended change {@code mvn test -Dtest=SamplesTest
 * -Dapprove=true} rewrites the approved texts and digests: read the difference of the texts before you commit.
 */
class SamplesTest {

    private static final Path TABLE = BuiltIn.SAMPLES.resolve("README.md");
    private static final int SHOWN_BYTES = 200;
    private static final Pattern ROW = Pattern.compile("\\| `([^`]+)` \\| ([^|]+) \\| ([^|]+) \\| ([^|]+) \\|");

    @BeforeAll
    static void approve() throws IOException {
        if (Boolean.getBoolean("approve")) {
            SortedMap<String, String> texts = new TreeMap<>();
            List<JsonDigest> digests = new ArrayList<>();
            for (Path sample : samples()) {
                Report report = BuiltIn.reviewed(sample).report();
                texts.put(name(sample), text(report));
                digests.add(digest(sample, report));
            }
            ApprovedReports.approve(texts, digests);
        }
    }

    private static String name(Path sample) {
        return sample.getFileName().toString().replaceFirst("\\.json$", "");
    }

    private static JsonDigest digest(Path sample, Report report) {
        String edition = report.edition().region() + "/" + report.edition().edition();
        return JsonDigest.of(name(sample), edition, JsonRendering.line(report, Detail.FULL));
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
    void the_text_report_is_the_approved_one_byte_for_byte(Path sample) {
        assertSame(
                text(BuiltIn.reviewed(sample).report()).getBytes(StandardCharsets.UTF_8),
                ApprovedReports.text(name(sample)));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_json_report_has_the_approved_digest(Path sample) throws IOException {
        Report report = BuiltIn.reviewed(sample).report();
        JsonDigest now = digest(sample, report);
        assertThat(ApprovedReports.json()).containsKey(name(sample));
        JsonDigest approved = ApprovedReports.json().get(name(sample));
        ApprovedReports.keep(now, JsonRendering.line(report, Detail.FULL));
        if (!now.equals(approved)) {
            fail(ApprovedReports.help(approved, now));
        }
    }

    /** Shows the first difference alone: the reports are long. */
    private static void assertSame(byte[] now, Path approved) {
        byte[] before = BuiltIn.read(approved);
        int at = Arrays.mismatch(now, before);
        if (at >= 0) {
            int from = Math.max(0, at - SHOWN_BYTES);
            fail(
                    "%s differs from byte %d on.%nApproved: …%s…%nNow: …%s…%nIf that is intended, approve it:"
                            + " mvn test -Dtest=SamplesTest -Dapprove=true",
                    approved, at, part(before, from), part(now, from));
        }
    }

    private static String part(byte[] report, int from) {
        return new String(
                Arrays.copyOfRange(report, from, Math.min(report.length, from + 2 * SHOWN_BYTES)),
                StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_report_is_valid_against_its_published_schema(Path sample) {
        byte[] report = JsonRendering.line(BuiltIn.reviewed(sample).report(), Detail.FULL);
        assertThat(ReportSchema.faults(new String(report, StandardCharsets.UTF_8)))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_outcome_is_the_one_that_the_samples_table_expects(Path sample) {
        assertThat(BuiltIn.reviewed(sample).report().outcome().word())
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
    void each_sample_has_an_approved_text_and_digest_and_there_are_no_others() throws IOException {
        List<String> names = samples().stream().map(SamplesTest::name).toList();
        assertThat(ApprovedReports.texts()).containsExactlyInAnyOrderElementsOf(names);
        assertThat(ApprovedReports.json().keySet()).containsExactlyInAnyOrderElementsOf(names);
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
