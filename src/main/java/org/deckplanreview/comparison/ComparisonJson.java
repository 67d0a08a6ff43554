package org.deckplanreview.comparison;

import java.nio.charset.StandardCharsets;
import org.deckplanreview.report.ReportJson;

/** Comparisons as JSON, format 1: members in the records' order, absent ones left out. UTF-8, with a line end at the end. */
public final class ComparisonJson {
    private ComparisonJson() {}

    /** Indented for people. */
    public static byte[] of(EditionDifferences differences) {
        return bytes(ReportJson.indented(differences));
    }

    /** Indented for people. */
    public static byte[] of(SubmissionComparison comparison) {
        return bytes(ReportJson.indented(comparison));
    }

    /** On one line. */
    public static byte[] line(SubmissionComparison comparison) {
        return bytes(ReportJson.line(comparison));
    }

    /** On one line, told from a comparison by its only member. */
    public static byte[] line(ComparisonSummary summary) {
        record Last(ComparisonSummary summary) {}
        return bytes(ReportJson.line(new Last(summary)));
    }

    private static byte[] bytes(String json) {
        return (json + "\n").getBytes(StandardCharsets.UTF_8);
    }
}
