package org.deckplanreview.report;

import java.io.InputStream;
import java.util.List;
import org.everit.json.schema.Schema;
import org.everit.json.schema.ValidationException;
import org.everit.json.schema.loader.SchemaLoader;
import org.json.JSONObject;
import org.json.JSONTokener;

/** The published schema of reports. */
public final class ReportSchema {
    private static final Schema SCHEMA = load();

    private ReportSchema() {}

    /** What the schema says against a report; nothing if it is valid. */
    public static List<String> faults(String report) {
        try {
            SCHEMA.validate(new JSONObject(report));
            return List.of();
        } catch (ValidationException e) {
            return e.getAllMessages();
        }
    }

    private static Schema load() {
        InputStream schema = ReportSchema.class.getResourceAsStream("/schema/report-1.json");
        return SchemaLoader.builder()
                .draftV7Support()
                .schemaJson(new JSONObject(new JSONTokener(schema)))
                .build()
                .load()
                .build();
    }
}
