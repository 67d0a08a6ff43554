package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.deckplanreview.kernel.Worded;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.junit.jupiter.api.Test;

/**
 * The schema file itself. Its validator passes over a keyword that it does not know, so that a slip of the pen in a
 * keyword would switch a rule off; the keywords that are used are held against those of JSON Schema draft 7
 * (draft-handrews-json-schema-validation-01, sections 6 and 10, and draft-handrews-json-schema-01, sections 8 and 9).
 */
class PublishedSchemaTest {

    private static final List<String> KEYWORDS = List.of(
            "$id",
            "$ref",
            "$schema",
            "additionalProperties",
            "definitions",
            "description",
            "enum",
            "items",
            "maxItems",
            "maxLength",
            "maximum",
            "minItems",
            "minimum",
            "pattern",
            "properties",
            "required",
            "title",
            "type");

    private final JsonNode schema = load();

    @Test
    void the_schema_says_its_draft_and_its_address() {
        assertThat(schema.path("$schema").asText()).isEqualTo("http://json-schema.org/draft-07/schema#");
        assertThat(schema.path("$id").asText()).isEqualTo("/schemas/submission-1.json");
    }

    @Test
    void only_keywords_of_draft_7_are_used_and_none_that_divides_numbers() {
        TreeSet<String> used = new TreeSet<>();
        places().values().forEach(p -> p.fieldNames().forEachRemaining(used::add));

        assertThat(KEYWORDS).containsAll(used);
        assertThat(used).doesNotContain("multipleOf");
    }

    @Test
    void every_rule_has_its_bounds() {
        places().forEach((where, place) -> {
            switch (place.path("type").asText()) {
                case "object" ->
                    assertThat(place.path("additionalProperties").isBoolean()
                                    && !place.path("additionalProperties").asBoolean())
                            .as(where)
                            .isTrue();
                case "array" ->
                    assertThat(place.has("maxItems") && place.has("items"))
                            .as(where)
                            .isTrue();
                case "number", "integer" ->
                    assertThat(place.has("minimum") && place.has("maximum"))
                            .as(where)
                            .isTrue();
                case "string" ->
                    assertThat(place.has("maxLength")
                                    && place.path("pattern").asText().startsWith("^")
                                    && place.path("pattern").asText().endsWith("$")
                                    && where.startsWith("/definitions/")
                                    && place.has("description"))
                            .as(where)
                            .isTrue();
                case "boolean" -> assertThat(place.size()).as(where).isEqualTo(2);
                default ->
                    assertThat(place.has("$ref") || place.has("enum")).as(where).isTrue();
            }
        });
    }

    @Test
    void every_reference_is_to_a_definition_and_every_definition_is_used() {
        TreeSet<String> used = new TreeSet<>();
        places().values().stream()
                .filter(p -> p.has("$ref"))
                .forEach(p -> used.add(p.path("$ref").asText().replace("#/definitions/", "")));
        TreeSet<String> defined = new TreeSet<>();
        schema.path("definitions").fieldNames().forEachRemaining(defined::add);

        assertThat(used).isEqualTo(defined);
    }

    @Test
    void every_member_is_described_and_every_length_says_its_unit() {
        places().forEach((where, place) -> {
            if (where.matches(".*/properties/[^/]+")) {
                assertThat(place.path("description").asText()).as(where).endsWith(".");
            }
            if (List.of("size", "distance", "reach", "offset", "coordinate", "point", "outline")
                            .contains(place.path("$ref").asText().replace("#/definitions/", ""))
                    && where.contains("/properties/")) {
                assertThat(place.path("description").asText()).as(where).contains("in the document's length unit");
            }
        });
    }

    @Test
    void every_place_can_tell_what_it_accepts() {
        places().forEach((where, place) -> assertThat(new SchemaPlace(schema.path("definitions"), place).accepted())
                .as(where)
                .isNotBlank()
                .doesNotContain("null"));
    }

    @Test
    void the_schema_mirrors_the_records_name_by_name() {
        mirrors(Submission.class, SchemaPlace.root(schema), "");
    }

    @Test
    void the_fullest_sample_deck_has_every_member_of_the_schema() {
        assertThat(absent(SampleDeck.everyMember().node(), SchemaPlace.root(schema), ""))
                .isEmpty();
    }

    /** Members that a document, or every entry of a list in it, leaves out. */
    private static List<String> absent(JsonNode document, SchemaPlace place, String where) {
        if (document.isMissingNode()) {
            return List.of(where);
        }
        if (place.isObject()) {
            return place.members().stream()
                    .flatMap(name ->
                            absent(document.path(name), place.member(name).orElseThrow(), where + "/" + name).stream())
                    .toList();
        }
        return place.isArray() ? absentInAll(document, place.item().orElseThrow(), where + "/0") : List.of();
    }

    private static List<String> absentInAll(JsonNode list, SchemaPlace item, String where) {
        List<String> absent = new ArrayList<>(absent(list.path(0), item, where));
        list.forEach(entry -> absent.retainAll(absent(entry, item, where)));
        return absent;
    }

    private void mirrors(Class<?> type, SchemaPlace place, String where) {
        List<String> names = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();
        assertThat(place.members()).as(where).containsExactlyElementsOf(names);
        for (RecordComponent component : type.getRecordComponents()) {
            SchemaPlace member = place.member(component.getName()).orElseThrow();
            String at = where + "/" + component.getName();
            Class<?> raw = component.getType();
            boolean needed = place.required().contains(component.getName());
            if (raw == Optional.class) {
                assertThat(needed).as(at).isFalse();
                mirrorsValue(argument(component.getGenericType()), member, at);
            } else if (raw == List.class) {
                boolean neverEmpty = at.equals("/timbers") || at.equals("/platforms") || at.endsWith("/outline");
                assertThat(needed).as(at).isEqualTo(neverEmpty);
                mirrorsValue(argument(component.getGenericType()), member.item().orElseThrow(), at + "/0");
            } else {
                assertThat(needed).as(at).isEqualTo(raw != Site.class && raw != Protection.class);
                mirrorsValue(raw, member, at);
            }
        }
    }

    private void mirrorsValue(Class<?> type, SchemaPlace place, String where) {
        List<Class<?>> written =
                List.of(Length.class, Measure.class, LocalDate.class, PlanPoint.class, Direction.class, Fall.class);
        if (type.isEnum()) {
            assertThat(place.words())
                    .as(where)
                    .containsExactlyElementsOf(Arrays.stream(type.getEnumConstants())
                            .filter(w -> w != EdgeKind.STAIR)
                            .map(w -> ((Worded) w).word())
                            .toList());
        } else if (type.isRecord() && !written.contains(type)) {
            mirrors(type, place, where);
        }
    }

    private static Class<?> argument(Type type) {
        return (Class<?>) ((ParameterizedType) type).getActualTypeArguments()[0];
    }

    /** Every part of the schema that rules some member, by its place in the file. */
    private Map<String, JsonNode> places() {
        Map<String, JsonNode> places = new TreeMap<>();
        collect("", schema, places);
        return places;
    }

    private static void collect(String where, JsonNode place, Map<String, JsonNode> places) {
        places.put(where, place);
        for (String group : List.of("properties", "definitions")) {
            place.path(group)
                    .properties()
                    .forEach(e -> collect(where + "/" + group + "/" + e.getKey(), e.getValue(), places));
        }
        if (place.has("items")) {
            collect(where + "/items", place.path("items"), places);
        }
    }

    private static JsonNode load() {
        try (InputStream in = PublishedSchemaTest.class.getResourceAsStream("/schema/submission-1.json")) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
