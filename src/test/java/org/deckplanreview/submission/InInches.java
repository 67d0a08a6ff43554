package org.deckplanreview.submission;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Set;

/** A document in mm, written in inches of 25.4 mm: each length divided as a decimal number, all else left alone. */
public final class InInches {

    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
    private static final MathContext DIGITS = new MathContext(25);
    /** Members whose numbers are no lengths. */
    private static final Set<String> PURE =
            Set.of("direction", "plies", "count", "rows", "risers", "slope", "serviceLifeYears", "heartwoodClass");

    private InInches() {}

    public static ObjectNode of(JsonNode document) {
        if (!document.path("units").asText().equals("mm")) {
            throw new IllegalArgumentException("Not a document in mm");
        }
        ObjectNode converted = document.deepCopy();
        convert(converted);
        return converted.put("units", "in");
    }

    private static void convert(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.properties().stream()
                    .filter(member -> !PURE.contains(member.getKey()))
                    .forEach(member -> {
                        if (member.getValue().isNumber()) {
                            object.put(member.getKey(), inches(member.getValue()));
                        } else {
                            convert(member.getValue());
                        }
                    });
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                if (list.get(i).isNumber()) {
                    list.set(i, list.numberNode(inches(list.get(i))));
                } else {
                    convert(list.get(i));
                }
            }
        }
    }

    private static BigDecimal inches(JsonNode mm) {
        return mm.decimalValue().divide(MM_PER_INCH, DIGITS);
    }
}
