package org.deckplanreview.rendering.json;

import java.nio.charset.StandardCharsets;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportJson;

/** A report as a JSON document of its own. */
public final class JsonRendering {
    private JsonRendering() {}

    /** UTF-8, indented, ending with a line end. */
    public static byte[] render(Report report) {
        return (ReportJson.text(report) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** UTF-8, on one line, ending with a line end. */
    public static byte[] line(Report report) {
        return (ReportJson.line(report) + "\n").getBytes(StandardCharsets.UTF_8);
    }
}
