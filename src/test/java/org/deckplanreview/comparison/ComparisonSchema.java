package org.deckplanreview.comparison;

import java.io.InputStream;
import java.util.List;
import org.everit.json.schema.Schema;
import org.everit.json.schema.ValidationException;
import org.everit.json.schema.loader.SchemaLoader;
import org.json.JSONObject;
import org.json.JSONTokener;

/** The published schema of comparisons. */
public final class ComparisonSchema {
    private ComparisonSchema() {}

    /** What the schema says against a document of the kind that the definition names; nothing if it is valid. */
    public static List<String> faults(String definition, String json) {
        try {
            schema(definition).validate(new JSONObject(json));
            return List.of();
        } catch (ValidationException e) {
            return e.getAllMessages();
        }
    }

    private static Schema schema(String definition) {
        InputStream file = ComparisonSchema.class.getResourceAsStream("/schema/comparison-1.json");
        JSONObject schema = new JSONObject(new JSONTokener(file));
        schema.remove("oneOf");
        schema.put("$ref", "#/definitions/" + definition);
        return SchemaLoader.builder()
                .draftV7Support()
                .schemaJson(schema)
                .build()
                .load()
                .build();
    }
}
