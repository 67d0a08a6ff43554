package org.deckplanreview.report;

import java.nio.charset.StandardCharsets;

/** A report as JSON in full. */
public final class WrittenReport {
    private WrittenReport() {}

    public static String text(Report report) {
        return new String(ReportJson.line(report, Detail.FULL), StandardCharsets.UTF_8);
    }
}
