package org.deckplanreview.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.Report;
import org.deckplanreview.submission.NotReviewed;
import org.deckplanreview.submission.SampleDeck;
import org.junit.jupiter.api.Test;

/** Whatever a submission states either changes the report or is named in it as not reviewed. */
class EveryMemberCountsTest {

    private static final JsonNode HOUSE_WALL = SampleDeck.line(-1000, 3600, 6000, 3600);
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonNode SCHEMA = BuiltIn.document(Path.of("schema/submission-1.json"));
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([0-9.]+)( .+)");
    /** What the report repeats, and what follows from the bytes alone. */
    private static final List<String> ECHO =
            List.of("reference", "title", "reviewOn", "givenNotReviewed", "provenance");

    /** A resistance that is read and decides nothing while nothing lifts the joists of these decks. */
    private static final List<String> WITHOUT_DEMAND = List.of("/platforms/-/joists/holdDownResistance");

    @Test
    void of_a_deck_in_england() {
        assertThat(silent(everyMember().without("/ruleset/edition").node(), BuiltIn.sample("braced-deck.json")))
                .isSubsetOf(WITHOUT_DEMAND);
    }

    @Test
    void of_a_deck_in_the_united_states() {
        SampleDeck deck = everyMember()
                .with("/ruleset/region", "us-irc")
                .with("/ruleset/edition", "2021")
                .without("/ruleset/amendments")
                .with("/platforms/0/ledger/fixings/base", "timber-frame")
                .with("/timbers/3/breadth", 140);
        for (int timber = 0; timber < 4; timber++) {
            deck.without("/timbers/" + timber + "/strengthClass")
                    .with("/timbers/" + timber + "/species", "southern-pine")
                    .with("/timbers/" + timber + "/grade", "no.2")
                    .with("/timbers/" + timber + "/treatment/useCategory", "UC4A");
        }

        assertThat(silent(
                        deck.node(), BuiltIn.sample("us-attached-deck.json"), BuiltIn.sample("us-hillside-deck.json")))
                .as(
                        "a model code binds by its name, whatever the day that the report repeats; and over a support beyond"
                                + " which a member goes on, no notch is permitted at either face; pull on a ledger's fixings"
                                + " is only held against what can be")
                .isSubsetOf(Stream.concat(
                                WITHOUT_DEMAND.stream(),
                                Stream.of(
                                        "/reviewOn",
                                        "/platforms/-/joists/endNotch/side",
                                        "/platforms/-/beams/-/endNotch/side",
                                        "/platforms/-/ledger/fixings/tensionResistance"))
                        .toList());
    }

    /** With what a changed member needs beside it: a slope, a second wall, guard and level. */
    private static SampleDeck everyMember() {
        return SampleDeck.everyMember()
                .with("/site/groundLevels/0/z", -300)
                .with("/timbers/0/naturalDurability/heartwoodClass", 1)
                .withMeasuredLevel(0, 0, 855)
                .withJson("/site/walls/-", "{\"id\": \"W2\", \"line\": " + HOUSE_WALL + "}")
                .withJson("/platforms/0/guards/-", "{\"id\": \"G2\", \"height\": 1000}");
    }

    /**
     * Kinds of members that neither change the report nor are listed, or for which no other value is valid.
     *
     * @param others decks in which a member counts that the first has no use for, such as braces of a deck that a house holds
     */
    private static Set<String> silent(JsonNode deck, JsonNode... others) {
        Map<String, List<Value>> silent = silent(deck, byKind(deck));
        for (JsonNode other : others) {
            Map<String, List<Value>> again = byKind(other);
            again.keySet().retainAll(silent.keySet());
            Set<String> still = silent(other, again).keySet();
            silent.keySet().removeIf(kind -> again.containsKey(kind) && !still.contains(kind));
        }
        return silent.keySet();
    }

    /** The kinds of members of which no change is valid and changes the report, or is told to be not reviewed. */
    private static Map<String, List<Value>> silent(JsonNode deck, Map<String, List<Value>> kinds) {
        JsonNode before = withoutEcho(deck).orElseThrow();
        Set<String> listed = listed(deck);
        Map<String, List<Value>> silent = new LinkedHashMap<>(kinds);
        silent.values()
                .removeIf(alike -> alike.stream()
                        .flatMap(value -> value.others(deck).stream()
                                .map(other -> new Changed(value, changed(deck, value.pointer(), other))))
                        .anyMatch(one -> withoutEcho(one.document())
                                .filter(after ->
                                        !after.equals(before) || one.value().isIn(listed))
                                .isPresent()));
        return silent;
    }

    private record Changed(Value value, JsonNode document) {}

    /** Members that differ in the indices of lists alone are of one kind; one of a kind that counts shows that it does. */
    private static Map<String, List<Value>> byKind(JsonNode deck) {
        return values(deck, SCHEMA, "").stream()
                .collect(Collectors.groupingBy(
                        value -> value.pointer().replaceAll("/\\d+", "/-"), LinkedHashMap::new, Collectors.toList()));
    }

    private static Set<String> listed(JsonNode document) {
        Set<String> pointers = new TreeSet<>();
        for (NotReviewed member : BuiltIn.report(BuiltIn.bytes(document)).givenNotReviewed()) {
            Stream.concat(Stream.of(member.pointer()), member.also().stream())
                    .map(Pointer::value)
                    .forEach(pointers::add);
        }
        return pointers;
    }

    /** The report without what it repeats; empty if the submission is not valid. */
    private static Optional<JsonNode> withoutEcho(JsonNode document) {
        if (!(BuiltIn.review(document) instanceof ReviewResult.Reviewed reviewed)) {
            return Optional.empty();
        }
        ObjectNode report = (ObjectNode) tree(reviewed.report());
        return Optional.of(report.remove(ECHO));
    }

    private static JsonNode tree(Report report) {
        return SampleDeck.parse(new String(JsonRendering.line(report, Detail.FULL), StandardCharsets.UTF_8));
    }

    private static JsonNode changed(JsonNode document, String pointer, JsonNode other) {
        ObjectNode copy = document.deepCopy();
        if (pointer.equals("/ruleset/region")) {
            ((ObjectNode) copy.path("ruleset")).remove(List.of("edition", "amendments")); // they are a region's own
        }
        JsonPointer at = JsonPointer.compile(pointer);
        String last = at.last().getMatchingProperty();
        if (copy.at(at.head()) instanceof ArrayNode list) {
            list.set(Integer.parseInt(last), other);
        } else {
            ((ObjectNode) copy.at(at.head())).set(last, other);
        }
        return copy;
    }

    /** Every value of the document that does not only name something. */
    private static List<Value> values(JsonNode node, JsonNode written, String pointer) {
        JsonNode rules = rules(written);
        List<Value> values = new ArrayList<>();
        if (node.isObject()) {
            node.properties()
                    .forEach(member -> values.addAll(values(
                            member.getValue(),
                            rules.path("properties").path(member.getKey()),
                            pointer + "/" + member.getKey())));
        } else if (node.isArray() && node.path(0).isContainerNode()) {
            for (int i = 0; i < node.size(); i++) {
                values.addAll(values(node.get(i), rules.path("items"), pointer + "/" + i));
            }
        } else if (!isName(written, pointer)) {
            values.add(new Value(pointer, node, rules, definition(written)));
        }
        return values;
    }

    private static boolean isName(JsonNode written, String pointer) {
        return switch (definition(written)) {
            case "label", "title" -> true;
            case "id" -> pointer.endsWith("/id");
            default -> false;
        };
    }

    private static String definition(JsonNode written) {
        String reference = written.path("$ref").asText();
        return reference.substring(reference.lastIndexOf('/') + 1);
    }

    private static JsonNode rules(JsonNode written) {
        return written.has("$ref") ? SCHEMA.path("definitions").path(definition(written)) : written;
    }

    private record Value(String pointer, JsonNode now, JsonNode rules, String definition) {

        /** A line is listed as one, with both its ends. */
        boolean isIn(Set<String> listed) {
            return listed.contains(pointer) || listed.contains(pointer.replaceFirst("/(from|to)$", ""));
        }

        /** What may stand in its place; not all of it is valid. */
        List<JsonNode> others(JsonNode document) {
            List<JsonNode> others = new ArrayList<>();
            if (now.isBoolean()) {
                others.add(BooleanNode.valueOf(!now.booleanValue()));
            } else if (now.isIntegralNumber()) {
                long v = now.longValue();
                Stream.of(v + 1, v - 1, v + 10, v - 10, v + 100, v - 100, v * 2, v / 2, 10 * v + 1)
                        .map(LongNode::valueOf)
                        .forEach(others::add);
            } else if (now.isNumber()) {
                double v = now.doubleValue();
                Stream.of(v * 1.01, v * 0.99, v * 2, v / 2)
                        .map(DoubleNode::valueOf)
                        .forEach(others::add);
            } else if (now.isArray()) {
                others.addAll(otherLists());
            } else if (rules.has("enum")) {
                rules.path("enum").forEach(others::add);
            } else if (definition.equals("id")) {
                document.findValues("id").forEach(others::add);
            } else {
                otherTexts().map(TextNode::valueOf).forEach(others::add);
            }
            others.removeIf(now::equals);
            return others;
        }

        private List<JsonNode> otherLists() {
            List<JsonNode> others = new ArrayList<>();
            for (int i = 0; i < now.size(); i++) {
                if (now.get(i).isNumber()) {
                    for (double by : new double[] {1, -1, 20, -20, 300, -300}) {
                        ArrayNode moved = now.deepCopy();
                        moved.set(i, NODES.numberNode(now.get(i).doubleValue() + by));
                        others.add(moved);
                    }
                }
                if (i > 0) {
                    ArrayNode swapped = now.deepCopy();
                    swapped.set(i, now.get(i - 1));
                    swapped.set(i - 1, now.get(i));
                    others.add(swapped);
                }
                ArrayNode shorter = now.deepCopy();
                shorter.remove(i);
                others.add(shorter);
            }
            return others;
        }

        private Stream<String> otherTexts() {
            String text = now.textValue();
            Matcher measure = NUMBER_AND_UNIT.matcher(text);
            if (measure.matches()) {
                double number = Double.parseDouble(measure.group(1));
                return Stream.of(number * 1.1, number / 2, number * 3, number + 1, number / 1000)
                        .map(v -> Numbers.plain(v) + measure.group(2));
            }
            return switch (definition) {
                case "date" -> Stream.of("2020-03-31");
                case "gradient" -> Stream.of("1:60", "level");
                case "region" -> Stream.of("uk-wales", "us-irc");
                case "edition" -> Stream.of("2014", "2018", "2021");
                default -> Stream.of(text + " 1");
            };
        }
    }
}
