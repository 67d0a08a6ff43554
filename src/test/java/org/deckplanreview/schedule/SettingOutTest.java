package org.deckplanreview.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Decks;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SubmissionReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Posts, levels and rectangles, recomputed by plain trigonometry from levels and coordinates. */
class SettingOutTest {

    private static final Offset<Double> EXACT = within(1e-6);

    /** Ground falls 1 in 20 along x and 1 in 10 along y; the deck falls 1 in 80 along (3, 4), so 0.6 / 80 along x. */
    private static Decks sloping() {
        return Decks.rectangle(4000, 3000)
                .ground(0, 0, -600)
                .ground(8000, 0, -1000)
                .ground(0, 8000, -1400)
                .level(0, 0, 0)
                .fall(80, 3, 4)
                .boards(1, 0)
                .joists(0, 1, 400)
                .post("A", 300, 200)
                .post("B", 2000, 200)
                .post("C", 300, 2800)
                .post("D", 2000, 2800)
                .pad("A", 400, 900, 50)
                .pad("B", 400, 900, 50)
                .pad("C", 400, 900, 50)
                .pad("D", 400, 900, 50)
                .beam("front", 2, line(0, 200, 4000, 200), "A", "B")
                .beam("back", 2, line(0, 2800, 4000, 2800), "C", "D");
    }

    private static PlatformSchedule schedule(Decks deck) {
        return SiteSchedule.derive(deck.layout(), GivenPractice.practice())
                .platforms()
                .get(0);
    }

    @ParameterizedTest
    @CsvSource({"0, 300, 200", "1, 2000, 200", "2, 300, 2800", "3, 2000, 2800"})
    void a_posts_length_follows_from_fall_layers_and_ground(int index, double x, double y) {
        PostCut post = schedule(sloping()).posts().get(index);

        double deck = -(0.6 * x + 0.8 * y) / 80;
        double ground = -600 - x / 20 - y / 10;
        assertThat(post.topLevelMm().get()).isCloseTo(deck - 28 - 147 - 197, EXACT);
        assertThat(post.bottomLevelMm().get()).isCloseTo(ground + 50, EXACT);
        assertThat(post.lengthMm().get()).isCloseTo(deck - 28 - 147 - 197 - ground - 50, EXACT);
    }

    /** Planes through three surveyed points each, by determinants; the centre point parts the site into four triangles. */
    @Test
    void the_posts_of_the_sloping_sample_are_as_long_as_its_levels_leave_room() throws IOException {
        double[] a = {-500, -200, -320};
        double[] b = {6500, -200, -560};
        double[] c = {3000, 2000, -830};
        double[] d = {-500, 4500, -1080};
        double[] e = {6500, 4500, -1490};
        double[][] posts = {
            {300, 1950}, {2100, 1950}, {3900, 1950}, {5700, 1950}, {300, 3750}, {2100, 3750}, {3900, 3750}, {5700, 3750}
        };
        double[][][] triangles = {{a, c, d}, {a, c, d}, {b, c, e}, {b, c, e}, {a, c, d}, {c, d, e}, {c, d, e}, {b, c, e}
        };

        List<PostCut> cuts = SiteSchedule.derive(sample("sloping-garden-deck.json"), GivenPractice.practice())
                .platforms()
                .get(0)
                .posts();

        for (int i = 0; i < posts.length; i++) {
            double top = -posts[i][1] / 80 - 32 - 147 - 195;
            double bottom = onPlane(triangles[i], posts[i]) + 50;
            assertThat(cuts.get(i).lengthMm().get()).as(cuts.get(i).label()).isCloseTo(top - bottom, EXACT);
        }
    }

    private static double onPlane(double[][] t, double[] p) {
        double ux = t[1][0] - t[0][0];
        double uy = t[1][1] - t[0][1];
        double uz = t[1][2] - t[0][2];
        double vx = t[2][0] - t[0][0];
        double vy = t[2][1] - t[0][1];
        double vz = t[2][2] - t[0][2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        return t[0][2] - (nx * (p[0] - t[0][0]) + ny * (p[1] - t[0][1])) / nz;
    }

    private static Layout sample(String name) throws IOException {
        ReadResult read = new SubmissionReader().read(Files.readAllBytes(Path.of("sample-submissions", name)));
        return Layout.derive(((ReadResult.Read) read).submission());
    }

    @Test
    void an_embedded_post_is_as_much_longer_as_it_stands_in_the_ground() {
        PostCut post = schedule(ScheduledDecks.withEmbeddedPost()).posts().get(0);

        // Deck at 900 on level ground, layers 28 + 147 + 197, 600 in the ground.
        assertThat(post.lengthMm().get()).isCloseTo(900 - 28 - 147 - 197 + 600, EXACT);
    }

    @Test
    void a_posts_top_is_sloped_like_the_beam_on_it_and_lower_where_the_beam_falls() {
        List<PostCut> posts = schedule(sloping()).posts();

        PostCut.TopCut first = posts.get(0).top().get();
        assertThat(first.degrees()).isCloseTo(Math.toDegrees(Math.atan(0.6 / 80)), EXACT);
        assertThat(first.mmOverBreadth()).isCloseTo(100 * 0.6 / 80, EXACT);
        assertThat(first.lowerTowards()).contains("post B");
        assertThat(posts.get(1).top().get().lowerTowards()).contains("the end of beam front");
    }

    @Test
    void a_post_under_a_beam_square_to_the_fall_is_cut_level() {
        PostCut.TopCut top =
                schedule(sloping().fall(80, 0, 1)).posts().get(0).top().get();

        assertThat(top.degrees()).isZero();
        assertThat(top.lowerTowards()).isEmpty();
    }

    @Test
    void a_beam_bolted_to_the_sides_of_its_posts_leaves_them_its_depth_longer() {
        double onPost = schedule(sloping()).posts().get(0).lengthMm().get();
        PlatformSchedule bolted = schedule(Decks.rectangle(4000, 3000)
                .ground(0, 0, -600)
                .ground(8000, 0, -1000)
                .ground(0, 8000, -1400)
                .level(0, 0, 0)
                .fall(80, 3, 4)
                .boards(1, 0)
                .joists(0, 1, 400)
                .post("A", 300, 200)
                .pad("A", 400, 900, 50)
                .beam("front", 2, line(0, 200, 4000, 200), BeamSeating.BOTH_SIDES, JoistSeating.ON_TOP, "A"));

        assertThat(bolted.posts().get(0).lengthMm().get()).isCloseTo(onPost + 197, EXACT);
    }

    @Test
    void a_beams_top_falls_from_end_to_end() {
        BeamTop back = schedule(sloping()).beamTops().get(1);

        assertThat(back.levels())
                .extracting(BeamTop.At::place)
                .containsExactly("first end", "post C", "post D", "last end");
        for (BeamTop.At at : back.levels()) {
            double deck = -(0.6 * at.alongMm() + 0.8 * 2800) / 80;
            assertThat(at.levelMm().get()).isCloseTo(deck - 28 - 147, EXACT);
        }
        assertThat(back.levels().get(1).alongMm()).isCloseTo(300, EXACT);
    }

    @Test
    void posts_are_set_out_from_the_first_corner_along_the_first_edge() {
        // The outline turned so that its first edge runs up y, with the platform to the right of it.
        Decks deck = Decks.outline(1000, 500, 1000, 4500, 4000, 4500, 4000, 500)
                .post("A", 1200, 800)
                .pad("A", 400, 900, 50);
        PostCut post = schedule(deck).posts().get(0);

        assertThat(post.alongMm()).isCloseTo(300, EXACT);
        assertThat(post.offsetMm()).isCloseTo(200, EXACT);
    }

    @Test
    void the_diagonals_of_posts_and_outline_follow_by_pythagoras() {
        List<SetOutRectangle> rectangles = schedule(sloping()).rectangles();

        assertThat(rectangles).hasSize(2);
        assertThat(rectangles.get(0).corners()).containsExactly("post A", "post B", "post D", "post C");
        assertThat(rectangles.get(0).diagonalMm()).isCloseTo(Math.sqrt(1700 * 1700 + 2600 * 2600), EXACT);
        assertThat(rectangles.get(0).otherDiagonalMm())
                .isCloseTo(rectangles.get(0).diagonalMm(), EXACT);
        assertThat(rectangles.get(1).diagonalMm()).isCloseTo(5000, EXACT);
        assertThat(rectangles.get(1).triangle()).contains(new SetOutRectangle.RightTriangle(3000, 4000, 5000));
    }

    @Test
    void three_beams_of_three_posts_give_four_fields_the_whole_and_the_outline() {
        Decks deck = Decks.rectangle(4200, 4200);
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                deck.post("P" + row + column, 100 + 2000 * column, 100 + 2000 * row);
            }
            double y = 100 + 2000 * row;
            deck.beam("B" + row, 1, line(0, y, 4200, y), "P" + row + "0", "P" + row + "1", "P" + row + "2");
        }
        List<SetOutRectangle> rectangles = schedule(deck).rectangles();

        assertThat(rectangles.stream().map(r -> Math.round(r.firstSideMm())).collect(Collectors.toList()))
                .containsExactly(2000L, 2000L, 2000L, 2000L, 4000L, 4200L);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "0.5, 1", "1, 0", "30, 0"})
    void posts_out_of_line_by_more_than_the_tolerance_form_no_rectangle(double shift, int expected) {
        // A shift s skews the diagonals of a 2000 x 2000 field by s * sqrt(2): 0.7 mm at s = 0.5, 1.4 mm at s = 1.
        Decks deck = Decks.outline(0, 0, 4000, 0, 5000, 2000, 4000, 4000, 0, 4000)
                .post("A", 500, 500)
                .post("B", 2500, 500)
                .post("C", 500 + shift, 2500)
                .post("D", 2500 + shift, 2500)
                .beam("B1", 1, line(0, 500, 3000, 500), "A", "B")
                .beam("B2", 1, line(0, 2500, 3000, 2500), "C", "D");

        assertThat(schedule(deck).rectangles()).hasSize(expected);
    }

    /** 3-4-5 by hand: the unit is the lesser of a third of the shorter and a quarter of the longer side, in whole steps. */
    @ParameterizedTest
    @CsvSource({
        "3000, 4000, 1000",
        "2999, 4000, 900",
        "3000, 3999, 900",
        "1700, 3100, 500",
        "300, 400, 100",
        "5400, 1800, 600"
    })
    void the_largest_triangle_that_fits(double side, double other, double unit) {
        assertThat(SetOutRectangle.RightTriangle.largest(side, other, 100))
                .contains(new SetOutRectangle.RightTriangle(3 * unit, 4 * unit, 5 * unit));
    }

    @Test
    void no_triangle_fits_a_field_smaller_than_one_step() {
        assertThat(SetOutRectangle.RightTriangle.largest(299, 400, 100)).isEqualTo(Optional.empty());
    }

    @Test
    void what_cannot_be_told_names_what_to_give() {
        SiteSchedule schedule = SiteSchedule.derive(
                Decks.rectangle(3000, 3000)
                        .post("A", 500, 500)
                        .beam("B", 1, line(0, 500, 3000, 500), "A")
                        .boards(1, 0)
                        .layout(),
                GivenPractice.practice());

        assertThat(schedule.platforms().get(0).posts().get(0).lengthMm().isKnown())
                .isFalse();
        assertThat(schedule.concreteM3().isKnown()).isFalse();
        assertThat(schedule.needs())
                .extracting(Need::pointer)
                .extracting(p -> p.value())
                .contains("/platforms/0/level", "/platforms/0/joists", "/platforms/0/boards/gap")
                .doesNotHaveDuplicates();
    }

    @Test
    void a_deck_too_low_for_its_posts_asks_for_other_levels() {
        SiteSchedule schedule = SiteSchedule.derive(
                Decks.rectangle(3000, 3000)
                        .levelGround(0)
                        .level(0, 0, 300)
                        .noFall()
                        .boards(1, 0)
                        .joists(0, 1, 400)
                        .post("A", 500, 500)
                        .pad("A", 400, 900, 50)
                        .beam("B", 1, line(0, 500, 3000, 500), "A")
                        .layout(),
                GivenPractice.practice());

        assertThat(schedule.platforms().get(0).posts().get(0).lengthMm().needs())
                .singleElement()
                .satisfies(n -> assertThat(n.pointer().value()).isEqualTo("/platforms/0/level"));
    }
}
