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

    private static final String MANUFACTURED =
            "{\"joistSpacing\": 400, \"diagonalJoistSpacing\": 300, \"load\": \"5 kN/m2\","
                    + " \"concentratedLoad\": \"2 kN\", \"weight\": \"0.25 kN/m2\", \"labelledTo\": \"ASTM-D7032\"}";

    private final ObjectNode document;

    private SampleDeck(ObjectNode document) {
        this.document = document;
    }

    public static SampleDeck complete() {
        return new SampleDeck(document());
    }

    /**
     * The complete deck with a value for every member that a submission may have: also a brace at P1, a stair of 5
     * risers at the west edge, joints, ledger fixings, guard posts, measurements, planning and a spa bath.
     */
    public static SampleDeck everyMember() {
        SampleDeck deck = complete()
                .withBrace("BR1", "P1", 1, 0, 600, 600)
                .withStair("S1", line(0, 600, 0, 1600), 5, 180, 250)
                .withJoint(0, "bolt", 12, 4, 2)
                .withPlyFixing(0, "SC", 300, 2)
                .withLedgerFixings("masonry", 12, 400)
                .withGuardPosts(0, "P", 1200)
                .withPlanning("house")
                .withDiagonal("P1", "P3", 4200)
                .withMeasuredLevel(0, 3600, 900)
                .withHeavyItem("SPA", "spa-bath", "9 kN", points(2000, 1000, 4000, 1000, 4000, 3000, 2000, 3000))
                .with("/ruleset/edition", "2024")
                .withJson("/ruleset/amendments", "[\"office-stiffer-decks\"]")
                .with("/use/imposedLoad", "1.5 kN/m2")
                .with("/use/concentratedLoad", "2 kN")
                .with("/site/windPressure", "0.8 kN/m2")
                .withJson("/timbers/0/naturalDurability", "{\"heartwoodClass\": 2, \"heartwoodOnly\": true}")
                .with("/platforms/0/joists/hangerResistance", "6 kN")
                .with("/platforms/0/overRoom", false)
                .with("/platforms/0/footings/0/length", 600)
                .with("/platforms/0/footings/0/embedment", 0)
                .with("/use/roofOver", false)
                .with("/site/groundSnowLoad", "50 psf")
                .with("/platforms/0/posts/0/base", "connector")
                .with("/platforms/0/footings/0/frostProtected", false)
                .with("/platforms/0/guards/0/postsNotched", false)
                .withJson("/timbers/0/treatment/useCategory", "\"UC3B\"")
                .withTimber("G", "southern-pine", "no.2")
                .withBandJoist()
                .with("/protection/fixings/0/thickness", 2)
                .with("/protection/weedControl", "membrane-and-gravel")
                .with("/protection/crossVentilated", true)
                .withJson("/platforms/0/joists/holdDownResistance", "\"1 kN\"")
                .withJson("/platforms/0/joists/blocked", "true")
                .withJson("/platforms/0/beams/0/holdDownResistance", "\"2 kN\"")
                .withJson("/platforms/0/beams/0/postCap", "\"connector\"")
                .withJson("/platforms/0/beams/0/plyJoints", "[2400]")
                .withJson("/platforms/0/posts/0/holdDownResistance", "\"3 kN\"")
                .withJson("/platforms/0/footings/0/at", "[150, 600]")
                .withJson("/platforms/0/guards/0/postNotchDepth", "20")
                .withJson("/platforms/0/guards/0/standingSurface", "0")
                .withJson("/platforms/0/guards/0/blocked", "true")
                .withJson("/platforms/0/stairs/0/guardedSides", "\"both\"")
                .withJson("/platforms/0/stairs/0/guardEdge", "45")
                .withJson("/platforms/0/stairs/0/nosing", "20")
                .withJson("/platforms/0/stairs/0/contrastingNosings", "true")
                .withJson("/platforms/0/stairs/0/slipResistantTreads", "true")
                .withJson("/platforms/0/stairs/0/handrails/extension", "300")
                .withJson("/platforms/0/stairs/0/handrails/grip", "40")
                .withJson("/platforms/0/stairs/0/handrails/clearWidth", "900")
                .withJson("/platforms/0/stairs/0/strings/throatDepth", "130")
                .withJson("/platforms/0/stairs/0/strings/headResistance", "\"5 kN\"")
                .withJson("/platforms/0/ledger/fixings/tensionResistance", "\"2 kN\"")
                .withJson("/platforms/0/ledger/bandJoist/cantilevered", "false")
                .withJson("/site/walls/0/topLevel", "5000")
                .withJson("/site/walls/0/dampProofCourseLevel", "900")
                .withJson("/site/walls/0/foundationDepth", "1000")
                .withJson("/platforms/0/coversVents", "false")
                .withJson("/platforms/0/boards/manufactured", MANUFACTURED);
        String notch = "{\"depth\": 20, \"supportDistance\": 50, \"slope\": 0, \"side\": \"support\"}";
        deck.withJson("/platforms/0/joists/endNotch", notch).withJson("/platforms/0/beams/0/endNotch", notch);
        for (String labelled : List.of(
                "/use/heavyItems/0",
                "/site/walls/0",
                "/timbers/0",
                "/platforms/0",
                "/platforms/0/beams/0",
                "/platforms/0/posts/0",
                "/platforms/0/footings/0",
                "/platforms/0/edges/0",
                "/platforms/0/guards/0",
                "/platforms/0/braces/0",
                "/platforms/0/stairs/0",
                "/protection/fixings/0")) {
            deck.with(labelled + "/label", "the first");
        }
        return deck;
    }

    /** Adds a brace of timber J to the first platform, with 4 kN at each end; lengths in the document's unit. */
    public SampleDeck withBrace(String id, String post, double dx, double dy, double below, double reach) {
        ObjectNode brace = NODES.objectNode();
        brace.put("id", id).put("timber", "J").put("post", post);
        brace.set("direction", point(dx, dy));
        brace.set("below", whole(below));
        brace.set("reach", whole(reach));
        return appended("/platforms/0", "braces", brace.put("fixingResistance", "4 kN"));
    }

    /**
     * Adds a stair to the first platform: closed risers, two handrails of 900, landings of 1200, two strings of timber J
     * and treads of timber BD, guarded by G1, with its foot at level 0.
     */
    public SampleDeck withStair(String id, ObjectNode line, int risers, double rise, double going) {
        ObjectNode stair = NODES.objectNode();
        stair.put("id", id).put("risers", risers);
        stair.set("line", line);
        stair.set("rise", whole(rise));
        stair.set("going", whole(going));
        stair.put("largestRiseDifference", 2).put("footLevel", 0).put("openRisers", false);
        stair.put("treadOverlap", 20).put("riserOpening", 0);
        stair.putObject("handrails").put("sides", "both").put("height", 900);
        stair.put("topLanding", 1200).put("bottomLanding", 1200).put("headroom", 2400);
        stair.putObject("strings").put("timber", "J").put("count", 2);
        return appended(
                "/platforms/0",
                "stairs",
                stair.put("treadTimber", "BD").put("guard", "G1").put("guardTriangle", 140));
    }

    /** Gives a beam of the first platform a joint, with distances that suit a diameter of 12. */
    public SampleDeck withJoint(int beam, String kind, double diameter, int count, int rows) {
        ObjectNode joint = NODES.objectNode();
        joint.put("kind", kind).put("count", count).put("rows", rows);
        joint.set("diameter", whole(diameter));
        joint.put("spacing", 60).put("rowSpacing", 50).put("endDistance", 84).put("edgeDistance", 48);
        joint.put("tensileStrength", "400 N/mm2");
        joint.put("washerDiameter", 36).put("washerThickness", 4).put("penetration", 100);
        return with("/platforms/0/beams/" + beam + "/joint", joint);
    }

    /** Gives the plies of a beam of the first platform fixings that are listed under that id. */
    public SampleDeck withPlyFixing(int beam, String fixing, double spacing, int rows) {
        ObjectNode plies = NODES.objectNode().put("fixing", fixing).put("rows", rows);
        plies.set("spacing", whole(spacing));
        return with("/platforms/0/beams/" + beam + "/plyFixing", plies);
    }

    /** Gives the ledger of the first platform fixings of 5 kN each behind a flashing. */
    public SampleDeck withLedgerFixings(String base, double diameter, double spacing) {
        ObjectNode fixings = NODES.objectNode().put("base", base);
        fixings.set("diameter", whole(diameter));
        fixings.set("spacing", whole(spacing));
        fixings.put("edgeDistance", 50).put("endDistance", 100);
        return with(
                "/platforms/0/ledger/fixings", fixings.put("resistance", "5 kN").put("weathering", "flashing"));
    }

    /** Adds a timber of 38 x 184 that is visually graded and incised. */
    public SampleDeck withTimber(String id, String species, String grade) {
        ObjectNode timber = NODES.objectNode().put("id", id).put("breadth", 38).put("depth", 184);
        return with(
                "/timbers/-", timber.put("species", species).put("grade", grade).put("incised", true));
    }

    /**
     * Fixes the ledger, which has fixings, with two staggered rows of lag screws through 12 of sheathing and a gap of 10
     * to a band joist of 38 x 235, with hold-downs of 1500 lbf at 500 and 4300 along it.
     */
    public SampleDeck withBandJoist() {
        ObjectNode ledger = (ObjectNode) document.at("/platforms/0/ledger");
        ((ObjectNode) ledger.path("fixings"))
                .put("kind", "lag-screw")
                .put("sheathing", 12)
                .put("gap", 10)
                .put("topEdgeDistance", 51)
                .put("bottomEdgeDistance", 20)
                .put("rowDistance", 80)
                .put("staggered", true)
                .put("tipBeyondBand", true)
                .putObject("flashing")
                .put("upWall", 50)
                .put("pastFace", 0)
                .put("downFace", 12)
                .put("barrierLap", 60);
        ledger.putObject("bandJoist")
                .put("kind", "solid-sawn")
                .put("thickness", 38)
                .put("depth", 235);
        ArrayNode connections = ledger.putArray("lateralConnections");
        connections.addObject().put("at", 500).put("capacity", "1500 lbf");
        connections.addObject().put("at", 4300).put("capacity", "1500 lbf");
        return this;
    }

    /** Gives a guard of the first platform posts, a rail of timber J and infill of timber BD. */
    public SampleDeck withGuardPosts(int guard, String timber, double spacing) {
        ObjectNode posts = NODES.objectNode().put("timber", timber);
        posts.set("spacing", whole(spacing));
        posts.put("leverArm", 130).put("fixingResistance", "10 kN");
        String at = "/platforms/0/guards/" + guard;
        return with(at + "/posts", posts).with(at + "/rail", "J").with(at + "/infillTimber", "BD");
    }

    public SampleDeck withDiagonal(String from, String to, double length) {
        ObjectNode diagonal = NODES.objectNode().put("from", from).put("to", to);
        diagonal.set("length", whole(length));
        return appended("/siteMeasurements", "diagonals", diagonal);
    }

    public SampleDeck withMeasuredLevel(double x, double y, double z) {
        ObjectNode level = NODES.objectNode();
        level.set("at", point(x, y));
        level.set("z", whole(z));
        return appended("/siteMeasurements", "levels", level);
    }

    /** What the planning authority asks, with answers that ask for nothing. */
    public SampleDeck withPlanning(String building) {
        return with(
                "/site/planning",
                NODES.objectNode()
                        .put("building", building)
                        .put("listed", false)
                        .put("protectedArea", false)
                        .put("beyondPrincipalElevation", false)
                        .put("gardenCovered", "20 %")
                        .put("boundaryDistance", 4000));
    }

    public SampleDeck withHeavyItem(String id, String kind, String weight, ArrayNode outline) {
        ObjectNode item = NODES.objectNode();
        item.put("id", id).put("weight", weight).put("nature", "permanent").put("kind", kind);
        item.set("outline", outline);
        return appended("/use", "heavyItems", item);
    }

    private SampleDeck appended(String owner, String list, ObjectNode entry) {
        JsonPointer at = JsonPointer.compile(owner);
        ObjectNode parent = document.at(at.head()) instanceof ObjectNode above
                        && document.at(at).isMissingNode()
                ? above.putObject(at.last().getMatchingProperty())
                : (ObjectNode) document.at(at);
        parent.withArray("/" + list).add(entry);
        return this;
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
