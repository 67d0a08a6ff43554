package org.deckplanreview.review;

import static org.deckplanreview.submission.SampleDeck.line;
import static org.deckplanreview.submission.SampleDeck.point;
import static org.deckplanreview.submission.SampleDeck.points;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.submission.Submission;

/**
 * A rectangular deck above ground that slopes across its joists, drawn from a few figures. Joists run along y from the front
 * edge at y = 0; the last support is a ledger on a wall or one more beam.
 *
 * @param bays of the joists between supports, from the front, mm
 * @param overhang of the joists in front of the first beam, and behind the last one where there is no wall, mm
 * @param width across the joists, mm
 * @param posts under each beam
 * @param inset of the outermost posts from the sides, mm
 */
record DrawnDeck(
        boolean onWall,
        List<Integer> bays,
        int overhang,
        int width,
        int spacing,
        int joistDepth,
        int posts,
        int inset) {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** The outlines of bearings and the reach of load along the grain need bays that are not much shorter than this. */
    private static final int SHORTEST_BAY = 1200;

    private static final int CLEAR_OF_WALL = 3000;

    static Arbitrary<DrawnDeck> any() {
        Arbitrary<List<Integer>> bays = Arbitraries.integers()
                .between(SHORTEST_BAY, 4000)
                .list()
                .ofMinSize(1)
                .ofMaxSize(3);
        return Combinators.combine(
                        Arbitraries.of(true, false),
                        bays,
                        Arbitraries.integers().between(60, 900),
                        Arbitraries.integers().between(2400, 6000),
                        Arbitraries.integers().between(300, 600),
                        Arbitraries.of(145, 170, 195, 220),
                        Arbitraries.integers().between(2, 4),
                        Arbitraries.integers().between(75, 500))
                .as(DrawnDeck::new);
    }

    /** As drawn. */
    SampleDeck document() {
        return document(1);
    }

    Submission submission() {
        return BuiltIn.submission(document().node());
    }

    /** With everything stretched in the joists' direction. */
    SampleDeck document(double stretch) {
        List<Double> supports = supports().stream().map(y -> y * stretch).toList();
        double length = stretch * (supports().get(supports().size() - 1) + (onWall ? 0 : overhang));
        int beams = supports.size() - (onWall ? 1 : 0);
        SampleDeck deck = SampleDeck.complete()
                .with("/site/groundLevels", ground())
                .with("/timbers/0/depth", joistDepth)
                .with("/platforms/0/outline", points(0, 0, width, 0, width, length, 0, length))
                .with("/platforms/0/level/at", point(0, 0))
                .withJson("/platforms/0/fall", "{\"gradient\": \"1:80\", \"direction\": [1, 0]}")
                .with("/platforms/0/joists/spacing", spacing)
                .with("/platforms/0/beams", NODES.arrayNode())
                .with("/platforms/0/posts", NODES.arrayNode())
                .with("/platforms/0/footings", NODES.arrayNode())
                .with("/platforms/0/edges/0/line", line(0, 0, width, 0))
                .with("/platforms/0/edges/1/line", line(width, 0, width, length))
                .with("/platforms/0/edges/2/line", line(width, length, 0, length))
                .with("/platforms/0/edges/3/line", line(0, length, 0, 0));
        if (onWall) {
            deck.with("/platforms/0/ledger/line", line(0, length, width, length))
                    .with("/site/walls/0/line", line(-1000, length, width + 1000, length));
        } else {
            deck.without("/platforms/0/ledger").withJson("/platforms/0/edges/2/kind", "\"open\"");
            deck.with("/platforms/0/edges/2/guard", "G1")
                    .with(
                            "/site/walls/0/line",
                            line(-1000, length + CLEAR_OF_WALL, width + 1000, length + CLEAR_OF_WALL));
        }
        for (int b = 0; b < beams; b++) {
            addBeam(deck, b, supports.get(b));
        }
        return deck;
    }

    private List<Double> supports() {
        List<Double> at = new ArrayList<>(List.of((double) overhang));
        for (int bay : bays) {
            at.add(at.get(at.size() - 1) + bay);
        }
        return at;
    }

    private void addBeam(SampleDeck deck, int b, double y) {
        List<String> ids = IntStream.range(0, posts).mapToObj(i -> "P" + b + i).toList();
        ObjectNode beam = NODES.objectNode();
        beam.put("id", "B" + b).put("timber", "BM").put("plies", 2).put("seating", "on-post");
        beam.put("joists", "on-top").set("line", line(0, y, width, y));
        ids.forEach(beam.putArray("posts")::add);
        deck.with("/platforms/0/beams/-", beam);
        for (int i = 0; i < posts; i++) {
            double x = inset + (width - 2.0 * inset) * i / (posts - 1);
            ObjectNode post = NODES.objectNode();
            post.put("id", ids.get(i)).put("timber", "P").put("footing", "F" + b + i);
            post.put("groundEnd", "not-in-ground").put("top", "covered").set("at", point(x, y));
            deck.with("/platforms/0/posts/-", post);
            ObjectNode pad = NODES.objectNode();
            pad.put("id", "F" + b + i).put("kind", "pad").put("shape", "rectangular");
            pad.put("breadth", 500).put("depth", 900).put("thickness", 300);
            pad.put("topAboveGround", 50).put("topShedsWater", true);
            deck.with("/platforms/0/footings/-", pad);
        }
    }

    /** Falls by 1 in 20 across the joists. */
    private static ArrayNode ground() {
        ArrayNode levels = NODES.arrayNode();
        for (int x : List.of(-20_000, 20_000)) {
            for (int y : List.of(-20_000, 40_000)) {
                levels.addObject().put("x", x).put("y", y).put("z", -x / 20);
            }
        }
        return levels;
    }
}
