package org.deckplanreview.submission;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A submission in millimetres written in inches, and the other way round: an inch is 25.4 mm exactly (ISO 80000-3:2006, Annex
 * A; from memory). Which numbers are lengths is read from the published schema.
 */
public final class InOtherUnits {

    private static final BigDecimal MM_IN_AN_INCH = new BigDecimal("25.4");
    private static final int DECIMALS = 16;
    private static final Set<String> LENGTHS = Set.of("coordinate", "size", "distance", "reach", "offset");
    private static final String DIRECTION = "direction";
    private static final JsonNode SCHEMA = schema();

    private InOtherUnits() {}

    private static JsonNode schema() {
        try (InputStream in = InOtherUnits.class.getResourceAsStream(SubmissionSchema.RESOURCE)) {
            return SampleDeck.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode of(JsonNode document) {
        boolean isInInches = document.path("units").textValue().equals("in");
        UnaryOperator<BigDecimal> length = isInInches
                ? inches -> inches.multiply(MM_IN_AN_INCH)
                : mm -> mm.divide(MM_IN_AN_INCH, DECIMALS, RoundingMode.HALF_EVEN);
        ObjectNode converted = (ObjectNode) converted(document, SCHEMA, length);
        return converted.put("units", isInInches ? "mm" : "in");
    }

    private static JsonNode converted(JsonNode node, JsonNode schema, UnaryOperator<BigDecimal> length) {
        String definition = schema.path("$ref").asText().replace("#/definitions/", "");
        if (definition.equals(DIRECTION)) {
            return node;
        }
        if (node.isNumber()) {
            return LENGTHS.contains(definition) ? DecimalNode.valueOf(length.apply(node.decimalValue())) : node;
        }
        JsonNode place =
                definition.isEmpty() ? schema : SCHEMA.path("definitions").path(definition);
        if (node instanceof ObjectNode object) {
            ObjectNode all = object.deepCopy();
            object.fields()
                    .forEachRemaining(m -> all.set(
                            m.getKey(),
                            converted(m.getValue(), place.path("properties").path(m.getKey()), length)));
            return all;
        }
        if (node instanceof ArrayNode list) {
            ArrayNode all = list.arrayNode();
            list.forEach(n -> all.add(converted(n, place.path("items"), length)));
            return all;
        }
        return node;
    }

    /** As a document that was read. */
    public static JsonNode read(JsonNode document) {
        return SampleDeck.parse(of(document).toString());
    }
}
