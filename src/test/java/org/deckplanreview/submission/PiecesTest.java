package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Pieces that are drawn where another piece is: each once as a fault, and at its limit as none. */
class PiecesTest {

    @Test
    void a_wall_does_not_cross_a_platform() {
        assertThat(details(wall(-1000, 3541, 6000, 3541)
                        .without("/platforms/0/ledger")
                        .without("/platforms/0/edges")))
                .isEmpty();
        assertThat(details(wall(2000, 1000, 2000, 5000)
                        .without("/platforms/0/ledger")
                        .without("/platforms/0/edges")))
                .containsExactly("The wall 'W1' crosses the platform on 2540 mm");
    }

    @Test
    void a_wall_that_ends_below_the_deck_may_lie_under_it() {
        SampleDeck deck =
                wall(1000, 1000, 1000, 5000).without("/platforms/0/ledger").without("/platforms/0/edges");

        assertThat(details(deck.with("/site/walls/0/topLevel", 899))).isEmpty();
        assertThat(details(deck.with("/site/walls/0/topLevel", 900))).hasSize(1);
    }

    @Test
    void a_pad_does_not_lie_in_a_wall() {
        assertThat(details(secondWall(-1000, 840, 6000, 840)))
                .doesNotContain(pad(240))
                .isNotEmpty();
        assertThat(details(lowWall(600 - 240))).isEmpty();
        assertThat(details(lowWall(600 - 239))).containsOnly(pad(239)).hasSize(3);
    }

    @Test
    void a_post_and_a_beam_do_not_stand_in_a_wall() {
        assertThat(details(lowWall(600 - 36)))
                .contains("The face of the wall 'W2' passes through the post, 36 mm from its centre")
                .contains("The beam passes through the wall 'W2'");
    }

    @Test
    void a_beam_does_not_run_on_behind_a_wall() {
        SampleDeck through = SampleDeck.complete()
                .with("/platforms/0/beams/0/line", SampleDeck.line(-151, 600, 4800, 600))
                .withJson("/site/walls/-", "{\"id\": \"W2\", \"topLevel\": 0}")
                .with("/site/walls/1/line", SampleDeck.line(0, 0, 0, 3600));

        assertThat(details(through)).containsExactly("The beam passes through the wall 'W2'");
        assertThat(details(through.with("/platforms/0/beams/0/line", SampleDeck.line(-149, 600, 4800, 600))))
                .isEmpty();
    }

    @Test
    void no_post_stands_in_a_post_of_another_platform() {
        assertThat(details(beside("\"posts\": [{\"id\": \"Q1\", \"timber\": \"P\", \"at\": [4598, 600]}]")))
                .containsExactly("The post stands 98 mm from post P3, and so inside it");
        assertThat(details(beside("\"posts\": [{\"id\": \"Q1\", \"timber\": \"P\", \"at\": [4600, 600]}]")))
                .isEmpty();
    }

    @Test
    void beams_may_meet_at_their_ends_and_do_not_cross() {
        assertThat(details(withBeam(4800, 600, 9000, 600))).isEmpty();
        assertThat(details(withBeam(2400, 600, 2400, 3000))).isEmpty();
        assertThat(details(withBeam(2400, 0, 2400, 3000)))
                .containsExactly("The beam passes through beam 'B1' of /platforms/0");
    }

    @Test
    void beams_side_by_side_touch_and_do_not_lap() {
        assertThat(details(withBeam(0, 694, 4800, 694))).isEmpty();
        assertThat(details(withBeam(0, 691, 4800, 691))).contains("The beam passes through beam 'B1' of /platforms/0");
    }

    @Test
    void a_beam_on_hangers_passes_over_a_lower_one_only_where_the_joists_are_as_deep() {
        SampleDeck deck = withBeam(2400, 0, 2400, 3000).with("/platforms/0/beams/1/joists", "hangers");

        assertThat(details(deck)).containsExactly("The beam passes through beam 'B1' of /platforms/0");
        assertThat(details(deck.with("/platforms/0/beams/1/timber", "J"))).isEmpty();
    }

    @Test
    void a_post_stands_in_no_beam_that_it_does_not_carry() {
        SampleDeck deck = withBeam(2400, 1000, 2400, 3000)
                .withJson("/platforms/0/posts/-", "{\"id\": \"P9\", \"timber\": \"P\", \"at\": [2400, 2000]}")
                .withJson("/platforms/0/beams/-", "{\"id\": \"B3\", \"timber\": \"J\", \"plies\": 2}")
                .with("/platforms/0/beams/2/line", SampleDeck.line(2500, 2000, 4800, 2000))
                .withJson("/platforms/0/beams/2/posts", "[\"P9\"]")
                .with("/platforms/0/beams/2/seating", "both-sides")
                .with("/platforms/0/beams/2/joists", "on-top")
                .with("/timbers/2/breadth", 220);

        assertThat(details(deck)).contains("The post stands in beam 'B2' of /platforms/0, which it does not carry");
        assertThat(details(deck.withJson("/platforms/0/beams/1/posts", "[\"P9\"]")))
                .doesNotContain("The post stands in beam 'B2' of /platforms/0, which it does not carry");
    }

    @Test
    void a_post_is_not_cut_through_a_lower_platform() {
        String under = "{\"id\": \"low\", \"outline\": [[%d,0],[2000,0],[2000,3000],[%d,3000]],"
                + " \"level\": {\"at\": [0, 0], \"z\": -700}}";

        assertThat(details(SampleDeck.complete().withJson("/platforms/-", under.formatted(251, 251))))
                .isEmpty();
        assertThat(details(SampleDeck.complete().withJson("/platforms/-", under.formatted(250, 250))))
                .containsExactly("The post stands within /platforms/1, and so in its boards and joists");
    }

    @Test
    void a_brace_ends_under_the_platform_or_at_a_beam() {
        assertThat(details(SampleDeck.complete().withBrace("BR", "P1", -1, 0, 600, 310)))
                .isEmpty();
        assertThat(details(SampleDeck.complete().withBrace("BR", "P1", -1, 0, 600, 400)))
                .containsExactly(
                        "The upper end of the brace lies at [-100, 600] mm, beside the platform and all of its beams");
    }

    @Test
    void a_flight_does_not_run_through_a_wall() {
        SampleDeck deck = stair().withJson("/site/walls/-", "{\"id\": \"W2\"}");

        assertThat(details(deck.with("/site/walls/1/line", SampleDeck.line(0, -1600, 4000, -1600))))
                .isEmpty();
        assertThat(details(deck.with("/site/walls/1/line", SampleDeck.line(0, -989, 4000, -989))))
                .containsExactly("The flight runs through the wall 'W2'");
    }

    @Test
    void a_flight_does_not_run_through_a_platform() {
        assertThat(details(stair().withJson("/platforms/-", low(-300, 900)))).isNotEmpty();
        assertThat(details(stair().withJson("/platforms/-", low(-300, 500))))
                .contains("The flight runs through /platforms/1");
    }

    @Test
    void a_flight_may_stand_on_a_lower_platform() {
        assertThat(details(stair().withJson("/platforms/-", low(0, 0)))).isEmpty();
    }

    @Test
    void a_flight_does_not_run_through_posts_that_reach_up_to_it() {
        String upper = "{\"id\": \"up\", \"outline\": [[0,-2000],[4000,-2000],[4000,-500],[0,-500]], \"level\":"
                + " {\"at\": [0, -500], \"z\": 3600}, \"boards\": {\"timber\": \"BD\", \"direction\": [1, 0]},"
                + " \"joists\": {\"timber\": \"J\", \"direction\": [0, 1], \"spacing\": 400},"
                + " \"beams\": [{\"id\": \"B1\", \"timber\": \"BM\", \"plies\": 2, \"line\": {\"from\": [0, -600],"
                + " \"to\": [4000, -600]}, \"posts\": [\"U1\"], \"seating\": \"on-post\", \"joists\": \"on-top\"}],"
                + " \"posts\": [{\"id\": \"U1\", \"timber\": \"P\", \"at\": [%d, -600]}]}";

        assertThat(details(stair().withJson("/platforms/-", upper.formatted(1980))))
                .containsExactly("The flight runs through post U1");
        assertThat(details(stair().withJson("/platforms/-", upper.formatted(2050))))
                .isEmpty();
    }

    @Test
    void flights_do_not_cross() {
        String other = "{\"id\": \"low\", \"outline\": [[2500,-1500],[4000,-1500],[4000,-100],[2500,-100]], \"level\":"
                + " {\"at\": [2500, -100], \"z\": 900}, \"stairs\": [{\"id\": \"S1\", \"risers\": 5, \"rise\": 180,"
                + " \"going\": 250, \"line\": {\"from\": [2500, -900], \"to\": [2500, -200]}}]}";

        assertThat(details(stair().withJson("/platforms/-", other)))
                .contains("The flight runs through /platforms/0/stairs/0");
    }

    @Test
    void the_landing_at_the_head_lies_on_the_platform() {
        assertThat(details(stair().with("/platforms/0/stairs/0/topLanding", 3600)))
                .isEmpty();
        assertThat(details(stair().with("/platforms/0/stairs/0/topLanding", 3621)))
                .containsExactly("The landing at the head of the stair reaches beyond the platform");
    }

    @Test
    void nothing_heavy_stands_on_a_landing() {
        SampleDeck deck = stair().with("/platforms/0/stairs/0/topLanding", 1000);

        assertThat(details(deck.withHeavyItem(
                        "T", "planter", "3 kN", SampleDeck.points(1000, 991, 2000, 991, 2000, 1500))))
                .isEmpty();
        assertThat(details(stair().with("/platforms/0/stairs/0/topLanding", 1000)
                        .withHeavyItem("T", "planter", "3 kN", SampleDeck.points(1000, 980, 2000, 980, 2000, 1500))))
                .containsExactly("The heavy item 'T' stands on the landing at the head of the stair");
    }

    @Test
    void a_wall_does_not_stand_on_the_landing_at_the_foot() {
        SampleDeck deck =
                stair().with("/platforms/0/stairs/0/bottomLanding", 900).withJson("/site/walls/-", "{\"id\": \"W2\"}");

        assertThat(details(deck.with("/site/walls/1/line", SampleDeck.line(0, -1900, 4000, -1900))))
                .isEmpty();
        assertThat(details(deck.with("/site/walls/1/line", SampleDeck.line(0, -1889, 4000, -1889))))
                .containsExactly("The landing at the foot of the stair runs into the wall 'W2'");
    }

    /** A stair of five risers from the south side, 1000 mm wide, that reaches to y = -1000. */
    private static SampleDeck stair() {
        return SampleDeck.complete()
                .withStair("S1", SampleDeck.line(1000, 0, 2000, 0), 5, 180, 250)
                .without("/platforms/0/stairs/0/topLanding")
                .without("/platforms/0/stairs/0/bottomLanding");
    }

    /** Another platform south of the deck. */
    private static String low(int north, int level) {
        return "{\"id\": \"low\", \"outline\": [[0,-3000],[4800,-3000],[4800,%d],[0,%d]], \"level\": {\"at\": [0, 0], \"z\": %d}}"
                .formatted(north, north, level);
    }

    private static SampleDeck wall(int x1, int y1, int x2, int y2) {
        return SampleDeck.complete().with("/site/walls/0/line", SampleDeck.line(x1, y1, x2, y2));
    }

    private static SampleDeck secondWall(int x1, int y1, int x2, int y2) {
        return SampleDeck.complete()
                .withJson("/site/walls/-", "{\"id\": \"W2\"}")
                .with("/site/walls/1/line", SampleDeck.line(x1, y1, x2, y2));
    }

    /** A garden wall under the deck, along its beam. */
    private static SampleDeck lowWall(int y) {
        return secondWall(-1000, y, 6000, y).with("/site/walls/1/topLevel", 0);
    }

    private static String pad(int off) {
        return "The face of the wall 'W2' passes through the footing, " + off + " mm from its centre";
    }

    private static SampleDeck withBeam(int x1, int y1, int x2, int y2) {
        return SampleDeck.complete()
                .withJson(
                        "/platforms/0/beams/-",
                        "{\"id\": \"B2\", \"timber\": \"BM\", \"plies\": 2, \"seating\": \"on-post\", \"joists\": \"on-top\"}")
                .with("/platforms/0/beams/1/line", SampleDeck.line(x1, y1, x2, y2));
    }

    private static SampleDeck beside(String more) {
        return SampleDeck.complete()
                .withJson(
                        "/platforms/-",
                        "{\"id\": \"east\", \"outline\": [[4800,0],[8000,0],[8000,3600],[4800,3600]], " + more + "}");
    }

    private static List<String> details(SampleDeck deck) {
        ReadResult read = deck.read();
        return read instanceof ReadResult.Read
                ? List.of()
                : SampleDeck.faults(read).stream().map(Fault::detail).toList();
    }
}
