package org.deckplanreview.rendering.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.submission.SampleDeck;

/** Decks of any size and shape, turned or not: no two texts cover each other. */
class AnyDeckDrawnTest {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /**
     * @param bays of the joists, from the wall, mm
     * @param posts under each beam
     * @param turned by a slope of so many in a thousand
     * @param notch side of a corner cut out of the outline, mm; 0 for none
     */
    record Shape(int width, List<Integer> bays, int posts, int turned, int notch, int ground, String label) {

        byte[] submission() {
            double length = bays.stream().mapToInt(i -> i).sum() + 300.0;
            double cut = Math.min(notch, 200);
            SampleDeck deck = SampleDeck.complete()
                    .without("/site/walls")
                    .without("/platforms/0/ledger")
                    .without("/platforms/0/edges/3")
                    .without("/platforms/0/edges/2")
                    .without("/platforms/0/edges/1")
                    .without("/platforms/0/edges/0")
                    .without("/platforms/0/guards/0")
                    .with("/site/groundLevels/0/z", -ground)
                    .with("/platforms/0/label", label)
                    .with(
                            "/platforms/0/outline",
                            cut > 0
                                    ? corners(
                                            0,
                                            0,
                                            width,
                                            0,
                                            width,
                                            length - cut,
                                            width - cut,
                                            length - cut,
                                            width - cut,
                                            length,
                                            0,
                                            length)
                                    : corners(0, 0, width, 0, width, length, 0, length))
                    .with("/platforms/0/joists/direction", direction(0, 1))
                    .with("/platforms/0/boards/direction", direction(1, 0))
                    .with("/platforms/0/fall/direction", direction(0, 1))
                    .with("/platforms/0/beams", NODES.arrayNode())
                    .with("/platforms/0/posts", NODES.arrayNode())
                    .with("/platforms/0/footings", NODES.arrayNode());
            double y = 300;
            for (int b = 0; b <= bays.size(); b++) {
                if (b > 0) {
                    y += bays.get(b - 1);
                }
                beam(deck, b, Math.min(y, length - 250));
            }
            return deck.bytes();
        }

        private void beam(SampleDeck deck, int b, double y) {
            ObjectNode beam = NODES.objectNode();
            beam.put("id", "B" + b).put("timber", "BM").put("plies", 2).put("seating", "on-post");
            beam.put("joists", "on-top");
            ObjectNode line = beam.putObject("line");
            line.set("from", point(0, y));
            line.set("to", point(width - 220, y));
            ArrayNode ids = beam.putArray("posts");
            for (int i = 0; i < posts; i++) {
                String id = b + "." + i;
                ids.add("P" + id);
                ObjectNode post = NODES.objectNode();
                post.put("id", "P" + id)
                        .put("timber", "P")
                        .put("footing", "F" + id)
                        .put("label", label);
                post.set("at", point(150 + (width - 520.0) * i / (posts - 1), y));
                deck.with("/platforms/0/posts/-", post);
                ObjectNode pad = NODES.objectNode();
                pad.put("id", "F" + id).put("kind", "pad").put("shape", i % 2 == 0 ? "round" : "rectangular");
                pad.put("breadth", 300).put("depth", 900).put("thickness", 300).put("topAboveGround", 50);
                deck.with("/platforms/0/footings/-", pad);
            }
            deck.with("/platforms/0/beams/-", beam);
        }

        private double cosine() {
            double slope = turned / 1000.0;
            return 1 / Math.sqrt(1 + slope * slope);
        }

        private ArrayNode point(double x, double y) {
            double c = cosine();
            double s = c * turned / 1000;
            return NODES.arrayNode().add(x * c - y * s).add(x * s + y * c);
        }

        private ArrayNode direction(double x, double y) {
            return point(x, y);
        }

        private ArrayNode corners(double... xy) {
            ArrayNode all = NODES.arrayNode();
            for (int i = 0; i < xy.length; i += 2) {
                all.add(point(xy[i], xy[i + 1]));
            }
            return all;
        }
    }

    @Provide
    Arbitrary<Shape> shapes() {
        return Combinators.combine(
                        Arbitraries.integers().between(2000, 30_000),
                        Arbitraries.integers()
                                .between(1200, 6000)
                                .list()
                                .ofMinSize(1)
                                .ofMaxSize(4),
                        Arbitraries.integers().between(2, 9),
                        Arbitraries.frequencyOf(
                                Tuple.of(2, Arbitraries.just(0)),
                                Tuple.of(1, Arbitraries.integers().between(-900, 900))),
                        Arbitraries.of(0, 200),
                        Arbitraries.integers().between(-700, 2500),
                        Arbitraries.of("terrace", "a rather long label that says more than a drawing has room for"))
                .as(Shape::new);
    }

    @Property(tries = 40)
    void no_text_covers_another(@ForAll("shapes") Shape shape) {
        for (Drawing drawing : ReviewedDecks.drawings(ReviewedDecks.of(shape.submission()))) {
            assertThat(ReadSvg.of(drawing).overlaps()).as(drawing.name()).isEmpty();
        }
    }
}
