package org.deckplanreview.rendering.json;

import java.util.Arrays;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportJson;

/** A report as a JSON document of its own. */
public final class JsonRendering {
    private JsonRendering() {}

    /** UTF-8, indented, ending with a line end. */
    public static byte[] render(Report report, Detail detail) {
        return ended(ReportJson.indented(report, detail));
    }

    /** UTF-8, on one line, ending with a line end. */
    public static byte[] line(Report report, Detail detail) {
        return ended(ReportJson.line(report, detail));
    }

    private static byte[] ended(byte[] json) {
        byte[] ended = Arrays.copyOf(json, json.length + 1);
        ended[json.length] = '\n';
        return ended;
    }
}
