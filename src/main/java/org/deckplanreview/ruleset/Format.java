package org.deckplanreview.ruleset;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.deckplanreview.kernel.Pointer;
import org.everit.json.schema.Schema;
import org.everit.json.schema.ValidationException;
import org.everit.json.schema.loader.SchemaLoader;
import org.json.JSONArray;
import org.json.JSONObject;
import org.json.JSONPointer;
import org.json.JSONTokener;

/** The format of one kind of file, as its JSON Schema gives it, with violations told by line. */
final class Format {

    static final Format EDITION = new Format("/schema/ruleset-1.json", "#/definitions/edition");
    static final Format BASE = new Format("/schema/ruleset-1.json", "#/definitions/base");
    static final Format AMENDMENT = new Format("/schema/ruleset-1.json", "#/definitions/amendment");
    static final Format STANDARD = new Format("/schema/standard-1.json", "#");
    static final Format CASES = new Format("/schema/cases-1.json", "#");

    private final String resource;
    private final String part;
    private JSONObject json;
    private Schema schema;

    /** @param part of the schema that the whole file must follow, as a JSON Pointer in a fragment */
    private Format(String resource, String part) {
        this.resource = resource;
        this.part = part;
    }

    /** Reads the schema when the first file is checked: trusted files are not. */
    private synchronized void load() {
        if (schema != null) {
            return;
        }
        try (InputStream in = Format.class.getResourceAsStream(resource)) {
            json = new JSONObject(new JSONTokener(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
            schema = SchemaLoader.builder()
                    .draftV7Support()
                    .schemaClient(url -> {
                        throw new UncheckedIOException(new IOException("Schemas refer to nothing outside: " + url));
                    })
                    .schemaJson(part.equals("#") ? json : only())
                    .build()
                    .load()
                    .build();
        } catch (IOException e) {
            throw new UncheckedIOException(resource, e);
        }
    }

    private JSONObject only() {
        return new JSONObject()
                .put("allOf", new JSONArray().put(new JSONObject().put("$ref", part)))
                .put("definitions", json.get("definitions"));
    }

    /** Checks a file's content, notes every violation in the file and which parts are unsound, and gives the entry to read. */
    Entry check(RulesetFile file, YamlNode content) {
        load();
        try {
            schema.validate(JSONObject.wrap(content.plain()));
        } catch (ValidationException e) {
            violations(e, file, content);
        }
        return new Entry(file, Pointer.ROOT, content);
    }

    private void violations(ValidationException e, RulesetFile file, YamlNode content) {
        if (!e.getCausingExceptions().isEmpty() && !isChoice(e)) {
            causes(e).forEach(cause -> violations(cause, file, content));
            return;
        }
        String pointer = e.getPointerToViolation().substring(1);
        file.unsound(pointer);
        YamlNode node = at(content, pointer);
        if (e.getSchemaLocation() == null) {
            file.fault(node.line(), node.shown(), "This has not the right form", e.getErrorMessage());
            return;
        }
        // The exception may hold an outer schema, its location is always that of the violated one.
        JSONObject violated = (JSONObject) new JSONPointer(e.getSchemaLocation()).queryFrom(json);
        if ("required".equals(e.getKeyword()) && node instanceof YamlNode.MapNode map) {
            missing(violated, map, file);
        } else if ("additionalProperties".equals(e.getKeyword()) && node instanceof YamlNode.MapNode map) {
            surplus(violated, map, file);
        } else {
            file.fault(node.line(), node.shown(), "This has not the right form", accepted(violated, node, e));
        }
    }

    /** What is wrong inside; not why the condition of an "else" did not hold, which comes first among the causes. */
    private static List<ValidationException> causes(ValidationException e) {
        List<ValidationException> causes = e.getCausingExceptions();
        return "else".equals(e.getKeyword()) ? causes.subList(causes.size() - 1, causes.size()) : causes;
    }

    private void missing(JSONObject violated, YamlNode.MapNode map, RulesetFile file) {
        for (Object name : violated.getJSONArray("required")) {
            if (!map.members().containsKey(String.valueOf(name))) {
                String description = member(violated, String.valueOf(name)).optString("description", "'" + name + "'");
                file.fault(map.line(), map.shown(), "'" + name + "' is missing", description);
            }
        }
    }

    private JSONObject member(JSONObject object, String name) {
        JSONObject member = object.getJSONObject("properties").getJSONObject(name);
        return member.has("$ref") ? (JSONObject) new JSONPointer(member.getString("$ref")).queryFrom(json) : member;
    }

    /** Among alternatives the reader is told what may stand there, not how each of them failed. */
    private static boolean isChoice(ValidationException e) {
        return "anyOf".equals(e.getKeyword()) || "oneOf".equals(e.getKeyword());
    }

    private static void surplus(JSONObject violated, YamlNode.MapNode map, RulesetFile file) {
        Optional<JSONObject> properties = Optional.ofNullable(violated.optJSONObject("properties"));
        List<String> known = properties.stream()
                .flatMap(all -> all.keySet().stream().sorted())
                .toList();
        List<Pattern> forms = Optional.ofNullable(violated.optJSONObject("patternProperties")).stream()
                .flatMap(all -> all.keySet().stream().sorted().map(Pattern::compile))
                .toList();
        map.members().forEach((name, value) -> {
            boolean permitted = known.contains(name)
                    || forms.stream().anyMatch(form -> form.matcher(name).find());
            if (!permitted) {
                file.fault(
                        value.line(),
                        "'" + Shortened.of(name) + "'",
                        forms.isEmpty() ? "There is no such member here" : "This name has not the right form",
                        forms.isEmpty() ? KnownNames.accepted(name, known) : violated.optString("description"));
            }
        });
    }

    private static String accepted(JSONObject violated, YamlNode node, ValidationException e) {
        if (violated.has("enum")) {
            List<String> words = violated.getJSONArray("enum").toList().stream()
                    .map(String::valueOf)
                    .toList();
            return KnownNames.accepted(node instanceof YamlNode.TextNode text ? text.text() : "", words);
        }
        return violated.optString("description", e.getErrorMessage());
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
