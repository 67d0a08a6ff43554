package org.deckplanreview.ruleset;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.deckplanreview.submission.Pointer;
import org.everit.json.schema.CombinedSchema;
import org.everit.json.schema.EnumSchema;
import org.everit.json.schema.ObjectSchema;
import org.everit.json.schema.Schema;
import org.everit.json.schema.ValidationException;
import org.everit.json.schema.loader.SchemaLoader;
import org.json.JSONObject;
import org.json.JSONTokener;

/** The format of one kind of file, as its JSON Schema gives it, with violations told by line. */
final class Format {

    static final Format EDITION = new Format("/schema/ruleset-1.json");
    static final Format STANDARD = new Format("/schema/standard-1.json");
    static final Format CASES = new Format("/schema/cases-1.json");

    private final Schema schema;

    private Format(String resource) {
        try (InputStream in = Format.class.getResourceAsStream(resource)) {
            JSONObject json = new JSONObject(new JSONTokener(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
            schema = SchemaLoader.builder()
                    .draftV7Support()
                    .schemaClient(url -> {
                        throw new UncheckedIOException(new IOException("Schemas refer to nothing outside: " + url));
                    })
                    .schemaJson(json)
                    .build()
                    .load()
                    .build();
        } catch (IOException e) {
            throw new UncheckedIOException(resource, e);
        }
    }

    /** Checks a file's content, notes every violation in the file and which parts are unsound, and gives the entry to read. */
    Entry check(RulesetFile file, YamlNode content) {
        try {
            schema.validate(JSONObject.wrap(content.plain()));
        } catch (ValidationException e) {
            violations(e, file, content);
        }
        return new Entry(file, Pointer.ROOT, content);
    }

    private static void violations(ValidationException e, RulesetFile file, YamlNode content) {
        if (!e.getCausingExceptions().isEmpty() && !isChoice(e.getViolatedSchema())) {
            e.getCausingExceptions().forEach(cause -> violations(cause, file, content));
            return;
        }
        String pointer = e.getPointerToViolation().substring(1);
        file.unsound(pointer);
        YamlNode node = at(content, pointer);
        if (e.getViolatedSchema() instanceof ObjectSchema object && node instanceof YamlNode.MapNode map) {
            if ("required".equals(e.getKeyword())) {
                missing(object, map, file);
                return;
            }
            if ("additionalProperties".equals(e.getKeyword())) {
                surplus(object, map, file);
                return;
            }
        }
        file.fault(node.line(), node.shown(), "This has not the right form", accepted(e.getViolatedSchema(), node, e));
    }

    /** Among alternatives the reader is told what may stand there, not how each of them failed. */
    private static boolean isChoice(Schema schema) {
        return schema instanceof CombinedSchema combined && combined.getCriterion() != CombinedSchema.ALL_CRITERION;
    }

    private static void missing(ObjectSchema object, YamlNode.MapNode map, RulesetFile file) {
        for (String name : object.getRequiredProperties()) {
            if (!map.members().containsKey(name)) {
                Optional<String> description = Optional.ofNullable(
                                object.getPropertySchemas().get(name))
                        .map(Schema::getDescription);
                file.fault(map.line(), map.shown(), "'" + name + "' is missing", description.orElse("'" + name + "'"));
            }
        }
    }

    private static void surplus(ObjectSchema object, YamlNode.MapNode map, RulesetFile file) {
        map.members().forEach((name, value) -> {
            if (!object.getPropertySchemas().containsKey(name)) {
                file.fault(
                        value.line(),
                        "'" + Shortened.of(name) + "'",
                        "There is no such member here",
                        NearestName.accepted(
                                name,
                                object.getPropertySchemas().keySet().stream()
                                        .sorted()
                                        .toList()));
            }
        });
    }

    private static String accepted(Schema violated, YamlNode node, ValidationException e) {
        if (violated instanceof EnumSchema words) {
            return NearestName.accepted(
                    node instanceof YamlNode.TextNode text ? text.text() : "",
                    words.getPossibleValuesAsList().stream()
                            .map(String::valueOf)
                            .toList());
        }
        return Optional.ofNullable(violated.getDescription()).orElse(e.getErrorMessage());
    }

    private static YamlNode at(YamlNode content, String pointer) {
        YamlNode node = content;
        for (String token : pointer.split("/")) {
            String name = token.replace("~1", "/").replace("~0", "~");
            if (node instanceof YamlNode.MapNode map && map.members().containsKey(name)) {
                node = map.members().get(name);
            } else if (node instanceof YamlNode.ListNode list && name.matches("\\d{1,6}")) {
                node = list.items().get(Integer.parseInt(name));
            }
        }
        return node;
    }
}
