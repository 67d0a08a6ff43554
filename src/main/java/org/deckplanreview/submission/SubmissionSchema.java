package org.deckplanreview.submission;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Pointer;
import org.everit.json.schema.Schema;
import org.everit.json.schema.ValidationException;
import org.everit.json.schema.loader.SchemaLoader;
import org.everit.json.schema.regexp.RE2JRegexpFactory;
import org.json.JSONArray;
import org.json.JSONObject;

/** The published schema of submissions: decides by a schema validator, and speaks of each fault in the trade's words. */
final class SubmissionSchema {

    static final String RESOURCE = "/schema/submission-1.json";

    private final SchemaPlace root;
    private final Schema validator;

    SubmissionSchema() {
        JsonNode schema = load();
        this.root = SchemaPlace.root(schema);
        // RE2J runs in linear time, and its $ is the end of the text as in JSON Schema, not the end of a last line.
        this.validator = SchemaLoader.builder()
                .schemaJson(new JSONObject(schema.toString()))
                .draftV7Support()
                .regexpFactory(new RE2JRegexpFactory())
                .schemaClient(url -> {
                    throw new UncheckedIOException(new IOException("The schema stands alone, but names " + url));
                })
                .build()
                .load()
                .build();
    }

    private static JsonNode load() {
        try (InputStream in = SubmissionSchema.class.getResourceAsStream(RESOURCE)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + RESOURCE, e);
        }
    }

    /** The part that rules the whole document. */
    SchemaPlace root() {
        return root;
    }

    SortedSet<Fault> faults(JsonNode document) {
        SortedSet<Fault> faults = new TreeSet<>();
        try {
            validator.validate(pruned(document, root));
        } catch (ValidationException e) {
            leaves(e)
                    .map(leaf -> new Violation(leaf.getPointerToViolation().substring(1), leaf.getKeyword()))
                    .distinct()
                    .flatMap(violation -> inWords(document, violation))
                    .forEach(faults::add);
        }
        return faults;
    }

    /**
     * The document as the validator takes it, without what cannot change its answer: the entries of a list beyond the
     * first that is too many, and the inside of what has the wrong type or a name that the schema does not know. So the
     * number of violations is bounded by the schema and not by the document's length.
     */
    private static Object pruned(JsonNode node, SchemaPlace place) {
        return switch (node.getNodeType()) {
            case OBJECT -> place.isObject() ? prunedObject(node, place) : new JSONObject();
            case ARRAY -> place.isArray() ? prunedArray(node, place) : new JSONArray();
            case STRING -> node.textValue();
            case BOOLEAN -> node.booleanValue();
            case NUMBER -> number(node);
            default -> JSONObject.NULL;
        };
    }

    private static JSONObject prunedObject(JsonNode node, SchemaPlace place) {
        JSONObject object = new JSONObject();
        node.properties()
                .forEach(entry -> place.member(entry.getKey())
                        .ifPresent(member -> object.put(entry.getKey(), pruned(entry.getValue(), member))));
        unknown(node, place).findFirst().ifPresent(name -> object.put(name, JSONObject.NULL));
        return object;
    }

    private static JSONArray prunedArray(JsonNode node, SchemaPlace place) {
        SchemaPlace item = place.item().orElseThrow();
        JSONArray array = new JSONArray();
        for (int i = 0; i < Math.min(node.size(), place.maxItems() + 1); i++) {
            array.put(pruned(node.get(i), item));
        }
        return array;
    }

    private static Object number(JsonNode node) {
        if (node.canConvertToLong() && node.canConvertToExactIntegral()) {
            return node.longValue();
        }
        return node.isIntegralNumber() ? node.bigIntegerValue() : (Object) node.doubleValue();
    }

    private static Stream<ValidationException> leaves(ValidationException e) {
        return e.getCausingExceptions().isEmpty()
                ? Stream.of(e)
                : e.getCausingExceptions().stream().flatMap(SubmissionSchema::leaves);
    }

    /** One keyword that does not hold at one place; the validator tells it once for each member that is missing. */
    private record Violation(String place, String keyword) {}

    private Stream<Fault> inWords(JsonNode document, Violation violation) {
        Pointer pointer = Pointer.of(violation.place());
        JsonNode found = document.at(JsonPointer.compile(pointer.value()));
        SchemaPlace place = placeOf(pointer);
        return switch (violation.keyword()) {
            case "required" -> missing(found, place).map(name -> missingMember(pointer, name, place));
            case "additionalProperties" -> unknown(found, place).map(name -> unknownMember(pointer, name, place));
            default ->
                Stream.of(new Fault(
                        pointer,
                        "Found " + Found.value(found) + whatIsWrong(violation.keyword(), found, place),
                        place.accepted()));
        };
    }

    private static Stream<String> missing(JsonNode object, SchemaPlace place) {
        return place.required().stream().filter(name -> !object.has(name));
    }

    private static Stream<String> unknown(JsonNode object, SchemaPlace place) {
        return object.propertyStream()
                .map(Map.Entry::getKey)
                .filter(name -> place.member(name).isEmpty());
    }

    private static Fault missingMember(Pointer pointer, String name, SchemaPlace place) {
        SchemaPlace member = place.member(name).orElseThrow();
        return new Fault(pointer.child(name), "The member is missing. " + member.meaning(), member.accepted());
    }

    private static Fault unknownMember(Pointer pointer, String name, SchemaPlace place) {
        List<String> known = place.members();
        String nearest = NearestName.of(name, known)
                .map(n -> "; the nearest known is " + n)
                .orElse("");
        return new Fault(
                pointer.child(name),
                Found.quoted(name) + " is not a known member" + nearest,
                "one of the members " + String.join(", ", known));
    }

    private static String whatIsWrong(String keyword, JsonNode found, SchemaPlace place) {
        return switch (keyword) {
            case "minimum", "exclusiveMinimum" -> ", which is too small";
            case "maximum", "exclusiveMaximum" -> ", which is too large";
            case "minItems" -> ", which is too short";
            case "maxItems" -> ", which is too long";
            case "pattern", "minLength", "maxLength" -> ", which is not in the form that is asked for";
            case "enum" ->
                NearestName.of(found.asText(), place.words())
                        .map(n -> "; the nearest accepted is " + n)
                        .orElse("");
            default -> "";
        };
    }

    private SchemaPlace placeOf(Pointer pointer) {
        SchemaPlace place = root;
        for (JsonPointer at = JsonPointer.compile(pointer.value()); !at.matches(); at = at.tail()) {
            Optional<SchemaPlace> next = place.isArray() ? place.item() : place.member(at.getMatchingProperty());
            place = next.orElseThrow();
        }
        return place;
    }
}
