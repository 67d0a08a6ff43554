package org.deckplanreview.rendering.json;

import java.util.Arrays;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportJson;

/** A report as a JSON document of its own. */
public final class JsonRendering {
    private JsonRendering() {}

    /** UTF-8, on one line, ending with a line end. */
    public static byte[] line(Report report, Detail detail) {
        byte[] json = ReportJson.line(report, detail);
        byte[] ended = Arrays.copyOf(json, json.length + 1);
        ended[json.length] = '\n';
        return ended;
    }
}
