package org.deckplanreview.rendering.csv;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.rendering.text.PlainText;

/** Rows of one CSV file: UTF-8, lines ended by CR LF, the first one the headings. */
final class Sheet {

    private static final CsvMapper MAPPER = CsvMapper.builder()
            .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
            .enable(CsvGenerator.Feature.ALWAYS_QUOTE_EMPTY_STRINGS)
            .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    /** What starts a formula in one spreadsheet or another. */
    private static final String STARTS = "=+-@|%";

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final JsonGenerator cells;

    Sheet(List<String> headings) {
        CsvSchema schema = CsvSchema.emptySchema().withLineSeparator("\r\n");
        try {
            this.cells = MAPPER.getFactory().createGenerator(bytes);
            cells.setSchema(schema);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        row(headings.toArray());
    }

    /** @param values texts, numbers or {@code ""} */
    void row(Object... values) {
        try {
            cells.writeStartArray();
            for (Object value : values) {
                if (value instanceof BigDecimal number) {
                    cells.writeNumber(number);
                } else if (value instanceof Double number) {
                    cells.writeNumber(Numbers.rounded(number));
                } else if (value instanceof Integer number) {
                    cells.writeNumber(number);
                } else {
                    cells.writeString(text(String.valueOf(value)));
                }
            }
            cells.writeEndArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An apostrophe in front keeps it a text. */
    private static String text(String untrusted) {
        String safe = PlainText.of(untrusted);
        String start = safe.stripLeading();
        return !start.isEmpty() && STARTS.indexOf(start.charAt(0)) >= 0 ? "'" + safe : safe;
    }

    byte[] bytes() {
        try {
            cells.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
