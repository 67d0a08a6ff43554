package org.deckplanreview.rendering.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.report.FindingBuilder.finding;
import static org.deckplanreview.report.ReportBuilder.report;

import java.nio.charset.StandardCharsets;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.ReportSchema;
import org.junit.jupiter.api.Test;

class JsonRenderingTest {
    @Test
    void a_rendered_report_is_utf_8_ends_with_a_line_end_and_is_valid() {
        byte[] bytes = JsonRendering.line(report("Bächlein", finding("a").doesNotComply()), Detail.FULL);
        String text = new String(bytes, StandardCharsets.UTF_8);

        assertThat(text).startsWith("{\"notice\":").endsWith("}\n").contains("\"reference\":\"Bächlein\"");
        assertThat(text).doesNotContain("\r");
        assertThat(ReportSchema.faults(text)).isEmpty();
    }
}
