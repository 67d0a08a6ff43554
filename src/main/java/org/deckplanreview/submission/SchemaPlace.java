package org.deckplanreview.submission;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;

/**
 * The part of the submission's schema that rules one member. The schema has neither alternatives nor conditions, so
 * that every member has exactly one such part.
 *
 * @param definitions of the whole schema
 * @param written the part as it stands, a reference or the rules themselves
 */
record SchemaPlace(JsonNode definitions, JsonNode written) {

    static SchemaPlace root(JsonNode schema) {
        return new SchemaPlace(schema.path("definitions"), schema);
    }

    Optional<SchemaPlace> member(String name) {
        return place(rules().path("properties").path(name));
    }

    Optional<SchemaPlace> item() {
        return place(rules().path("items"));
    }

    List<String> members() {
        return rules().path("properties")
                .propertyStream()
                .map(Map.Entry::getKey)
                .toList();
    }

    List<String> required() {
        return texts(rules().path("required"));
    }

    /** The longest list that the schema allows here; 0 where it asks for something else. */
    int maxItems() {
        return rules().path("maxItems").asInt(0);
    }

    /** What stands here, in the trade's words. */
    String meaning() {
        return written.path("description").asText();
    }

    /** Whether the member of that name at this place only names its owner: by an id, a label or a title. */
    boolean isName(String member) {
        String reference = written.path("$ref").asText();
        return switch (reference.substring(reference.lastIndexOf('/') + 1)) {
            case "label", "title" -> true;
            case "id" -> member.equals("id");
            default -> false;
        };
    }

    boolean isObject() {
        return type().equals("object");
    }

    boolean isArray() {
        return type().equals("array");
    }

    /** Words of a closed list; empty where any value of a type is accepted. */
    List<String> words() {
        return texts(rules().path("enum"));
    }

    /** What would be accepted, in words. */
    String accepted() {
        if (rules().has("enum")) {
            return "one of " + String.join(", ", words());
        }
        return switch (type()) {
            case "boolean" -> "true or false";
            case "integer" -> "a whole number " + range();
            case "number" -> "a number " + range();
            case "object" -> "an object with " + memberWords();
            case "array" -> isReference() ? rules().path("description").asText() : listWords();
            default -> rules().path("description").asText();
        };
    }

    private String range() {
        return "from " + rules().path("minimum").asText() + " to "
                + rules().path("maximum").asText();
    }

    private String listWords() {
        int fewest = rules().path("minItems").asInt(0);
        return "a list of " + fewest + " to " + maxItems() + " entries";
    }

    private String memberWords() {
        List<String> optional = new ArrayList<>(members());
        optional.removeAll(required());
        String list = String.join(", ", required());
        if (optional.isEmpty()) {
            return list;
        }
        return (list.isEmpty() ? "" : list + " and ") + "optionally " + String.join(", ", optional);
    }

    private boolean isReference() {
        return written.has("$ref");
    }

    private String type() {
        return rules().path("type").asText();
    }

    private JsonNode rules() {
        return isReference()
                ? definitions.path(written.path("$ref").asText().substring("#/definitions/".length()))
                : written;
    }

    private Optional<SchemaPlace> place(JsonNode node) {
        return node.isMissingNode() ? Optional.empty() : Optional.of(new SchemaPlace(definitions, node));
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }
}
