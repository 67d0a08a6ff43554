package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.layout.Decks.line;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Supports against the overlap of rectangles by a general-purpose geometry library. */
class OverlapTest {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double JOIST = 47;
    private static final double BEAM = 94;
    private static final double POST = 100;

    /** Coordinates in whole millimetres and halves, so that many pieces just touch. */
    @Property(tries = 200)
    void members_rest_where_their_rectangles_overlap(@ForAll long seed) {
        Random random = new Random(seed);
        int width = 1000 + random.nextInt(3000);
        int depth = 800 + random.nextInt(2000);
        Decks deck = Decks.rectangle(width, depth).joists(0, 1, 300 + random.nextInt(300));
        for (int i = 0; i < 3; i++) {
            double from = random.nextInt(width / 2) - 60;
            double y = (random.nextBoolean() ? depth + 47 : random.nextInt(depth)) + random.nextInt(5) - 2;
            double to = from + 400 + random.nextInt(width);
            deck.beam("b" + i, 2, line(from, y, to, y), "a" + i, "z" + i);
            deck.post("a" + i, from - 50 + random.nextInt(5) - 2, y + random.nextInt(200) - 100);
            deck.post("z" + i, to - random.nextInt(200), y + 97 + random.nextInt(5) - 2);
        }
        PlatformLayout p = deck.platform();
        for (BeamLine beam : p.beams()) {
            for (JoistLine joist : p.joists()) {
                boolean rests = joist.supports().stream().anyMatch(s -> s.id().equals(beam.id()));
                boolean overlaps = overlap(strip(joist.line(), JOIST), strip(beam.line(), BEAM));
                boolean another = p.beams().stream()
                        .filter(b -> b != beam)
                        .anyMatch(b -> overlap(strip(joist.line(), JOIST), strip(b.line(), BEAM))
                                && Math.abs(b.line().from().yMm()
                                                - beam.line().from().yMm())
                                        < BEAM);
                assertThat(rests).as(beam + " and " + joist).isEqualTo(overlaps && (rests || !another));
            }
            for (PostPlace post : p.posts()) {
                boolean named = post.id().endsWith(beam.id().substring(1));
                assertThat(beam.supports().stream().anyMatch(s -> s.id().equals(post.id())))
                        .as(beam + " and " + post)
                        .isEqualTo(named && overlap(square(post.post().at()), strip(beam.line(), BEAM)));
            }
        }
    }

    private static boolean overlap(Polygon one, Polygon other) {
        return one.intersection(other).getArea() > 0;
    }

    /** Around a line along an axis. */
    private static Polygon strip(PlanLine line, double breadth) {
        boolean alongX = line.from().yMm() == line.to().yMm();
        double half = breadth / 2;
        return rectangle(
                Math.min(line.from().xMm(), line.to().xMm()) - (alongX ? 0 : half),
                Math.min(line.from().yMm(), line.to().yMm()) - (alongX ? half : 0),
                Math.max(line.from().xMm(), line.to().xMm()) + (alongX ? 0 : half),
                Math.max(line.from().yMm(), line.to().yMm()) + (alongX ? half : 0));
    }

    private static Polygon square(PlanPoint at) {
        double half = POST / 2;
        return rectangle(at.xMm() - half, at.yMm() - half, at.xMm() + half, at.yMm() + half);
    }

    private static Polygon rectangle(double x1, double y1, double x2, double y2) {
        return FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(x1, y1),
            new Coordinate(x2, y1),
            new Coordinate(x2, y2),
            new Coordinate(x1, y2),
            new Coordinate(x1, y1)
        });
    }

    @Test
    void a_beam_rests_on_a_post_only_where_it_overlaps_it() {
        // Posts of 100 and a beam of 94 touch where their axes are 97 apart, and the beam's end where a post's axis is
        // 50 beyond it.
        for (double gap : new double[] {0, 1e-6, 1, 40}) {
            assertThat(supports(300, 97 + gap)).isZero();
            assertThat(supports(4850 + gap, 0)).isZero();
        }
        for (double overlap : new double[] {1e-6, 1, 40}) {
            assertThat(supports(300, 97 - overlap)).isEqualTo(1);
            assertThat(supports(4850 - overlap, 0)).isEqualTo(1);
        }
    }

    private static int supports(double x, double off) {
        return Decks.rectangle(4800, 3000)
                .beam("b", 2, line(0, 2400, 4800, 2400), "a")
                .post("a", x, 2400 + off)
                .platform()
                .beams()
                .get(0)
                .supports()
                .size();
    }
}
