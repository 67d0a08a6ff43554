package org.deckplanreview.submission;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A complete valid submission to change at will: one platform of 4800 x 3600 mm at 900 mm above level ground, a ledger
 * on the house wall along y = 3600, one beam of two plies at y = 600 on three posts with pads, joists 47 x 170 C24 at
 * 400 along y, boards 28 x 145 along x, a guard of 1100 mm on the three open edges, a fall of 1:80 away from the wall.
 */
public final class SampleDeck {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private static final SubmissionReader READER = new SubmissionReader();

    private final ObjectNode document;

    private SampleDeck(ObjectNode document) {
        this.document = document;
    }

    public static SampleDeck complete() {
        return new SampleDeck(document());
    }

    /** Sets the member at a pointer, or the entry of a list; {@code -} as last token adds an entry. */
    public SampleDeck with(String pointer, Object value) {
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode parent = document.at(at.head());
        JsonNode node = value instanceof JsonNode n ? n : JSON.valueToTree(value);
        String last = at.last().getMatchingProperty();
        if (parent instanceof ObjectNode object) {
            object.set(last, node);
        } else if (parent instanceof ArrayNode list && last.equals("-")) {
            list.add(node);
        } else if (parent instanceof ArrayNode list) {
            list.set(Integer.parseInt(last), node);
        } else {
            throw new IllegalArgumentException("Nothing at " + at.head());
        }
        return this;
    }

    /** Sets the member at a pointer to the JSON value that a text holds. */
    public SampleDeck withJson(String pointer, String json) {
        return with(pointer, parse(json));
    }

    public SampleDeck without(String pointer) {
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode parent = document.at(at.head());
        String last = at.last().getMatchingProperty();
        if (parent instanceof ObjectNode object) {
            object.remove(last);
        } else if (parent instanceof ArrayNode list) {
            list.remove(Integer.parseInt(last));
        } else {
            throw new IllegalArgumentException("Nothing at " + at.head());
        }
        return this;
    }

    /** The document as it is now; changing it changes this deck. */
    public ObjectNode node() {
        return document;
    }

    public byte[] bytes() {
        return document.toString().getBytes(StandardCharsets.UTF_8);
    }

    public ReadResult read() {
        return READER.read(bytes());
    }

    /**
     * The submission that the document reads as.
     *
     * @throws AssertionError if it is not valid
     */
    public Submission submission() {
        ReadResult result = read();
        if (result instanceof ReadResult.Read read) {
            return read.submission();
        }
        throw new AssertionError(result);
    }

    public static JsonNode parse(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(json, e);
        }
    }

    private static ObjectNode document() {
        ObjectNode deck = NODES.objectNode();
        deck.put("reference", "Lark Cottage 7");
        deck.put("title", "Deck at the garden side");
        deck.put("units", "mm");
        deck.put("reviewOn", "2026-03-31");
        deck.putObject("ruleset").put("region", "uk-england");
        deck.putObject("use").put("occupancy", "single-dwelling").put("youngChildren", true);
        deck.set("site", site());
        deck.set("timbers", timbers());
        deck.set("platforms", NODES.arrayNode().add(platform()));
        deck.set("protection", protection());
        return deck;
    }

    private static ObjectNode site() {
        ObjectNode site = NODES.objectNode();
        ArrayNode levels = site.putArray("groundLevels");
        for (int[] corner : new int[][] {{-3000, -3000}, {8000, -3000}, {8000, 5000}, {-3000, 5000}}) {
            levels.addObject().put("x", corner[0]).put("y", corner[1]).put("z", 0);
        }
        site.putObject("soil")
                .put("soilClass", "firm-clay")
                .put("volumeChange", "low")
                .put("bearingResistance", "75 kN/m2")
                .put("treesNearby", false);
        site.put("frostDepth", 450);
        site.put("snowLoad", "0.6 kN/m2");
        site.put("coastDistance", "20 km");
        site.putArray("walls").addObject().put("id", "W1").set("line", line(-1000, 3600, 6000, 3600));
        return site;
    }

    private static ArrayNode timbers() {
        ArrayNode timbers = NODES.arrayNode();
        timbers.add(timber("J", 47, 170, "C24", "UC3.2"));
        timbers.add(timber("BM", 47, 195, "C24", "UC3.2"));
        timbers.add(timber("P", 100, 100, "C24", "UC4"));
        timbers.add(timber("BD", 145, 28, "C18", "UC3.2"));
        return timbers;
    }

    private static ObjectNode timber(String id, int breadth, int depth, String strengthClass, String useClass) {
        ObjectNode timber = NODES.objectNode();
        timber.put("id", id).put("breadth", breadth).put("depth", depth).put("strengthClass", strengthClass);
        timber.putObject("treatment")
                .put("useClass", useClass)
                .put("serviceLifeYears", 30)
                .put("standard", "BS 8417:2024");
        timber.put("installedWet", false);
        return timber;
    }

    private static ObjectNode platform() {
        ObjectNode platform = NODES.objectNode();
        platform.put("id", "main");
        platform.set("outline", points(0, 0, 4800, 0, 4800, 3600, 0, 3600));
        platform.putObject("level").put("z", 900).set("at", point(0, 3600));
        platform.putObject("fall").put("gradient", "1:80").set("direction", point(0, -1));
        platform.put("finishes", "0 kN/m2");
        platform.putObject("boards")
                .put("timber", "BD")
                .put("gap", 6)
                .put("profile", "smooth")
                .set("direction", point(1, 0));
        platform.putObject("joists").put("timber", "J").put("spacing", 400).set("direction", point(0, 1));
        ObjectNode beam = platform.putArray("beams").addObject();
        beam.put("id", "B1").put("timber", "BM").put("plies", 2);
        beam.set("line", line(0, 600, 4800, 600));
        beam.putArray("posts").add("P1").add("P2").add("P3");
        beam.put("seating", "on-post").put("joists", "on-top");
        platform.putObject("ledger")
                .put("timber", "J")
                .put("wall", "W1")
                .put("joists", "hangers")
                .put("bearingLength", 45)
                .set("line", line(0, 3600, 4800, 3600));
        ArrayNode posts = platform.putArray("posts");
        ArrayNode footings = platform.putArray("footings");
        int[] places = {300, 2400, 4500};
        for (int i = 0; i < places.length; i++) {
            posts.add(post("P" + (i + 1), "F" + (i + 1), places[i]));
            footings.add(footing("F" + (i + 1)));
        }
        ArrayNode edges = platform.putArray("edges");
        edges.addObject().put("kind", "open").put("guard", "G1").set("line", line(0, 0, 4800, 0));
        edges.addObject().put("kind", "open").put("guard", "G1").set("line", line(4800, 0, 4800, 3600));
        edges.addObject().put("kind", "wall").set("line", line(4800, 3600, 0, 3600));
        edges.addObject().put("kind", "open").put("guard", "G1").set("line", line(0, 3600, 0, 0));
        platform.putArray("guards")
                .addObject()
                .put("id", "G1")
                .put("height", 1100)
                .put("infill", "balusters")
                .put("largestOpening", 99)
                .put("climbable", false);
        return platform;
    }

    private static ObjectNode post(String id, String footing, int x) {
        ObjectNode post = NODES.objectNode();
        post.put("id", id).put("timber", "P").put("footing", footing);
        post.put("groundEnd", "not-in-ground").put("top", "covered");
        post.set("at", point(x, 600));
        return post;
    }

    private static ObjectNode footing(String id) {
        return NODES.objectNode()
                .put("id", id)
                .put("kind", "pad")
                .put("shape", "rectangular")
                .put("breadth", 500)
                .put("depth", 900)
                .put("thickness", 300)
                .put("topAboveGround", 50)
                .put("topShedsWater", true);
    }

    private static ObjectNode protection() {
        ObjectNode protection = NODES.objectNode();
        protection.put("cutEndsTreated", true);
        ArrayNode fixings = protection.putArray("fixings");
        fixings.addObject()
                .put("id", "SC")
                .put("kind", "screw")
                .put("diameter", 5)
                .put("finish", "stainless-A2");
        fixings.addObject()
                .put("id", "HG")
                .put("kind", "plate")
                .put("thickness", 2)
                .put("finish", "Z350");
        return protection;
    }

    public static ArrayNode point(double x, double y) {
        return NODES.arrayNode().add(whole(x)).add(whole(y));
    }

    /** Points from coordinates x, y, x, y … */
    public static ArrayNode points(double... coordinates) {
        ArrayNode points = NODES.arrayNode();
        for (int i = 0; i < coordinates.length; i += 2) {
            points.add(point(coordinates[i], coordinates[i + 1]));
        }
        return points;
    }

    public static ObjectNode line(double x1, double y1, double x2, double y2) {
        ObjectNode line = NODES.objectNode();
        line.set("from", point(x1, y1));
        line.set("to", point(x2, y2));
        return line;
    }

    private static JsonNode whole(double value) {
        return value == Math.rint(value) ? NODES.numberNode((long) value) : NODES.numberNode(value);
    }

    static List<Fault> faults(ReadResult result) {
        if (result instanceof ReadResult.Invalid invalid) {
            return invalid.faults();
        }
        throw new AssertionError("Not invalid: " + result);
    }
}
