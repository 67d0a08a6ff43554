package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults that lie between members: each once as a fault, and at its limit as none. */
class MisfitsTest {

    @Test
    void the_sample_has_none() {
        assertThat(SampleDeck.complete().read()).isInstanceOf(ReadResult.Read.class);
    }

    @Test
    void a_day_that_the_calendar_has_not_is_a_fault_beside_others() {
        SampleDeck deck =
                SampleDeck.complete().with("/reviewOn", "2026-02-29").with("/platforms/0/boards/timber", "X9");

        assertThat(SampleDeck.faults(deck.read()))
                .containsExactly(
                        new Fault(
                                Pointer.of("/platforms/0/boards/timber"),
                                "There is no timber 'X9'",
                                "the id of a timber: J, BM, P, BD"),
                        new Fault(
                                Pointer.of("/reviewOn"),
                                "'2026-02-29' is no day of the calendar",
                                "a date of the calendar, such as 2026-02-28"));
        assertThat(SampleDeck.complete().with("/reviewOn", "2028-02-29").read()).isInstanceOf(ReadResult.Read.class);
    }

    @Nested
    class Names {

        @ParameterizedTest
        @CsvSource({
            "/timbers, timber",
            "/site/walls, wall",
            "/protection/fixings, fixing",
            "/platforms/0/posts, post",
            "/platforms/0/footings, footing",
            "/platforms/0/guards, guard",
            "/platforms/0/beams, beam"
        })
        void an_id_given_twice_is_a_fault_of_the_second(String list, String kind) {
            SampleDeck deck = SampleDeck.complete();
            int count = deck.node().at(list).size();
            ObjectNode copy = deck.node().at(list + "/0").deepCopy();
            deck.with(list + "/-", copy);

            assertThat(only(deck)).satisfies(f -> {
                assertThat(f.pointer().value()).isEqualTo(list + "/" + count + "/id");
                assertThat(f.detail()).endsWith("is already the id of " + list + "/0");
                assertThat(f.accepted()).isEqualTo("an id that no other " + kind + " has");
            });
        }

        @Test
        void platforms_and_heavy_items_have_ids_of_their_own_too() {
            SampleDeck deck = SampleDeck.complete()
                    .withJson("/platforms/-", "{\"id\": \"main\", \"outline\": [[9000,0],[9900,0],[9900,900]]}")
                    .withJson("/use/heavyItems", "[" + item(500, 500) + "," + item(2500, 500) + "]");

            assertThat(pointers(deck)).containsExactly("/platforms/1/id", "/use/heavyItems/1/id");
        }

        @Test
        void posts_of_two_platforms_may_share_an_id() {
            SampleDeck deck = SampleDeck.complete()
                    .withJson(
                            "/platforms/-",
                            "{\"id\": \"low\", \"outline\": [[9000,0],[9900,0],[9900,900]], \"posts\":"
                                    + " [{\"id\": \"P1\", \"timber\": \"P\", \"at\": [9500, 100]}]}");

            assertThat(deck.read()).isInstanceOf(ReadResult.Read.class);
        }

        @ParameterizedTest
        @CsvSource({
            "/platforms/0/boards/timber, timber, BE",
            "/platforms/0/joists/timber, timber, K",
            "/platforms/0/beams/0/timber, timber, BN",
            "/platforms/0/ledger/timber, timber, JJ",
            "/platforms/0/ledger/wall, wall, W2",
            "/platforms/0/posts/1/timber, timber, PP",
            "/platforms/0/posts/1/footing, footing, F9",
            "/platforms/0/beams/0/posts/1, post, P9",
            "/platforms/0/edges/0/guard, guard, G2"
        })
        void a_reference_to_nothing_is_a_fault(String pointer, String kind, String id) {
            Fault fault = only(SampleDeck.complete().with(pointer, id));

            assertThat(fault.pointer().value()).isEqualTo(pointer);
            assertThat(fault.detail()).startsWith("There is no " + kind + " '" + id + "'");
            assertThat(fault.accepted()).startsWith("the id of a " + kind + ": ");
        }

        @Test
        void a_reference_names_the_nearest_id() {
            assertThat(only(SampleDeck.complete().with("/platforms/0/boards/timber", "BDD")))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/boards/timber"),
                            "There is no timber 'BDD'; the nearest is 'BD'",
                            "the id of a timber: J, BM, P, BD"));
        }

        @Test
        void a_reference_where_nothing_is_listed_says_so() {
            assertThat(only(SampleDeck.complete()
                                    .with("/platforms/0/footings", List.of())
                                    .without("/platforms/0/posts/1/footing")
                                    .without("/platforms/0/posts/2/footing"))
                            .accepted())
                    .isEqualTo("the id of a footing, of which the document has none here");
        }

        @Test
        void a_post_listed_twice_under_one_beam_is_a_fault() {
            assertThat(only(SampleDeck.complete().with("/platforms/0/beams/0/posts/-", "P2")))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/beams/0/posts/3"),
                            "The post 'P2' is already listed",
                            "each post under the beam once"));
        }
    }

    @Nested
    class Outlines {

        @Test
        void an_outline_that_crosses_itself_names_where() {
            Fault fault = only(bare("[[0,0],[4000,3000],[4000,0],[0,3000]]"));

            assertThat(fault.pointer().value()).isEqualTo("/platforms/0/outline");
            assertThat(fault.detail()).isEqualTo("The outline crosses or touches itself at [2000, 1500] mm");
        }

        @Test
        void the_place_is_told_in_the_documents_unit() {
            assertThat(only(bare("[[0,0],[400,300],[400,0],[0,300]]").with("/units", "in"))
                            .detail())
                    .isEqualTo("The outline crosses or touches itself at [200, 150] in");
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "[[0,0],[2000,0],[1000,0]]",
                    "[[0,0],[1000,1000],[3000,3000],[2000,2000]]",
                    "[[0,0],[2000,0],[4000,0.5]]"
                })
        void an_outline_on_one_line_has_no_area(String outline) {
            assertThat(only(bare(outline)).detail())
                    .isEqualTo("All points of the outline lie on one line, so that it has no area");
        }

        @Test
        void an_outline_of_less_than_a_square_of_100_mm_is_a_slip() {
            assertThat(only(bare("[[0,0],[100,0],[100,99],[0,99]]")).accepted())
                    .isEqualTo("an outline that encloses at least a square of 100 mm");
            assertThat(bare("[[0,0],[100,0],[100,100],[0,100]]").read()).isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void a_corner_that_is_repeated_is_pointed_at() {
            assertThat(pointers(bare("[[0,0],[4000,0],[4000,0],[4000,3000],[0,3000],[0,0]]")))
                    .containsExactly("/platforms/0/outline/2", "/platforms/0/outline/5");
        }

        @Test
        void an_outline_that_touches_itself_at_a_corner_is_a_fault() {
            assertThat(only(bare("[[0,0],[2000,2000],[4000,0],[4000,4000],[2000,2000],[0,4000]]"))
                            .detail())
                    .isEqualTo("The outline crosses or touches itself at [2000, 2000] mm");
        }

        @Test
        void an_l_shape_is_an_outline_in_either_sense() {
            assertThat(bare("[[0,0],[4000,0],[4000,2000],[2000,2000],[2000,4000],[0,4000]]")
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(bare("[[0,4000],[2000,4000],[2000,2000],[4000,2000],[4000,0],[0,0]]")
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void platforms_may_touch_and_lap_by_10_mm_but_not_more() {
            assertThat(twoPlatforms(4000).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(twoPlatforms(3991).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(twoPlatforms(3989)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/1/outline"),
                            "The platform overlaps /platforms/0",
                            "platforms that lie beside each other, with at most 10 mm of overlap"));
        }

        @Test
        void a_platform_inside_another_overlaps_it() {
            SampleDeck deck = bare("[[0,0],[4000,0],[4000,3000],[0,3000]]")
                    .withJson(
                            "/platforms/-",
                            "{\"id\": \"inner\", \"outline\": [[1000,1000],[2000,1000],[2000,2000],[1000,2000]]}");

            assertThat(only(deck).pointer().value()).isEqualTo("/platforms/1/outline");
        }

        @Test
        void a_heavy_item_stands_on_one_platform_with_its_whole_area() {
            assertThat(heavyItem(3800).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(heavyItem(3810).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(heavyItem(3811)).detail())
                    .isEqualTo("The heavy item does not stand on any one platform with its whole area");
            assertThat(only(heavyItem(20_000)).pointer().value()).isEqualTo("/use/heavyItems/0/outline");
        }

        @Test
        void a_heavy_item_has_an_outline_as_a_platform_has() {
            SampleDeck deck = SampleDeck.complete()
                    .withJson(
                            "/use/heavyItems",
                            "[{\"id\": \"spa\", \"weight\": \"12 kN\", \"nature\": \"permanent\","
                                    + " \"outline\": [[0,0],[1000,1000],[1000,0],[0,1000]]}]");

            assertThat(only(deck).detail()).isEqualTo("The outline crosses or touches itself at [500, 500] mm");
        }

        private SampleDeck heavyItem(int x) {
            return SampleDeck.complete().withJson("/use/heavyItems", "[" + item(x, 1000) + "]");
        }

        private SampleDeck twoPlatforms(int x) {
            return bare("[[0,0],[4000,0],[4000,3000],[0,3000]]")
                    .withJson(
                            "/platforms/-",
                            "{\"id\": \"east\", \"outline\": [[%d,0],[8000,0],[8000,3000],[%d,3000]]}".formatted(x, x));
        }
    }

    @Nested
    class Ground {

        @Test
        void two_points_make_no_surface() {
            assertThat(only(ground("[0,0,0],[1000,0,100]")))
                    .isEqualTo(new Fault(
                            Pointer.of("/site/groundLevels"),
                            "Two points make no surface",
                            "one point for level ground, or at least three that do not lie on one line"));
        }

        @Test
        void three_points_on_one_line_make_no_surface() {
            assertThat(only(ground("[0,0,0],[1000,9,100],[2000,0,200]")).detail())
                    .isEqualTo("The points lie on one line and make no surface");
            assertThat(ground("[0,0,0],[1000,11,100],[2000,0,200]").read()).isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void one_point_or_none_is_enough() {
            assertThat(ground("[0,0,0]").read()).isInstanceOf(ReadResult.Read.class);
            assertThat(ground("").read()).isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void one_place_has_one_level() {
            Fault fault = only(ground("[0,0,0],[5000,0,0],[0,5000,0],[5000,0.5,1]"));

            assertThat(fault.pointer().value()).isEqualTo("/site/groundLevels/3");
            assertThat(fault.detail())
                    .isEqualTo("The point is at the place of /site/groundLevels/1 and has another level");
            assertThat(ground("[0,0,0],[5000,0,0],[0,5000,0],[5000,0,0]").read())
                    .isInstanceOf(ReadResult.Read.class);
        }

        private SampleDeck ground(String points) {
            return SampleDeck.complete()
                    .withJson(
                            "/site/groundLevels",
                            "["
                                    + points.replaceAll(
                                            "\\[([^,]*),([^,]*),([^\\]]*)\\]", "{\"x\": $1, \"y\": $2, \"z\": $3}")
                                    + "]");
        }
    }

    @Nested
    class Frame {

        /** Centres of posts of 100 mm and a beam of 2 x 47 mm are apart by at most (100 + 94) / 2 = 97 mm. */
        @Test
        void a_post_touches_its_beam() {
            assertThat(post(2400, 697.9).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(post(2400, 699)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/beams/0/posts/1"),
                            "The centre of post 'P2' lies 99 mm off the line of beam 'B1'",
                            "a post whose centre lies at most 97 mm off the line of beam 'B1'"));
        }

        @Test
        void a_post_stands_at_most_half_its_breadth_beyond_the_beams_end() {
            assertThat(post(4850, 600).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(post(4852, 600)).detail())
                    .isEqualTo("The centre of post 'P2' lies 52 mm beyond the end of beam 'B1'");
            assertThat(only(post(-60, 600)).accepted())
                    .isEqualTo("a post whose centre lies at most 50 mm beyond the end of beam 'B1'");
        }

        @Test
        void an_oblong_post_may_reach_the_beam_with_its_wider_side() {
            SampleDeck deck = post(2400, 720).with("/timbers/2/depth", 150);

            assertThat(deck.read()).isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void a_beam_is_at_most_500_mm_outside_the_outline() {
            assertThat(beam(-500).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(beam(-501)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/beams/0/line"),
                            "The beam lies 501 mm outside the outline",
                            "a beam within 500 mm of the outline"));
        }

        @ParameterizedTest
        @ValueSource(strings = {"/platforms/0/beams/0/line", "/platforms/0/ledger/line", "/platforms/0/edges/0/line"})
        void a_line_between_one_point_has_no_length(String pointer) {
            assertThat(only(SampleDeck.complete().with(pointer, SampleDeck.line(4800, 3600, 4800, 3600.5))))
                    .isEqualTo(new Fault(
                            Pointer.of(pointer), "The line has no length", "a line between two different points"));
        }

        @Test
        void a_wall_without_length_is_a_fault() {
            assertThat(pointers(SampleDeck.complete().with("/site/walls/0/line", SampleDeck.line(0, 0, 0, 0))))
                    .contains("/site/walls/0/line");
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "/platforms/0/boards/direction",
                    "/platforms/0/joists/direction",
                    "/platforms/0/fall/direction"
                })
        void a_direction_is_not_zero(String pointer) {
            assertThat(only(SampleDeck.complete().with(pointer, SampleDeck.point(0, 0))))
                    .isEqualTo(new Fault(
                            Pointer.of(pointer),
                            "The direction has no length",
                            "a list of two numbers, [dx, dy], not both zero"));
        }

        @Test
        void a_fall_needs_its_direction_unless_it_is_level() {
            assertThat(only(SampleDeck.complete().without("/platforms/0/fall/direction"))
                            .pointer()
                            .value())
                    .isEqualTo("/platforms/0/fall/direction");
            assertThat(SampleDeck.complete()
                            .withJson("/platforms/0/fall", "{\"gradient\": \"level\"}")
                            .submission()
                            .platforms()
                            .get(0)
                            .fall()
                            .orElseThrow()
                            .oneIn())
                    .isEqualTo(Double.POSITIVE_INFINITY);
        }

        @Test
        void a_ledger_lies_within_60_mm_of_its_wall() {
            assertThat(ledger(3540).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(ledger(3539)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/ledger/line"),
                            "An end of the ledger lies 61 mm from the wall 'W1'",
                            "a ledger with both ends within 60 mm of its wall"));
            assertThat(only(SampleDeck.complete()
                                    .with("/site/walls/0/line", SampleDeck.line(0, 3600, 4000, 3600))
                                    .without("/platforms/0/edges/2"))
                            .detail())
                    .isEqualTo("An end of the ledger lies 800 mm from the wall 'W1'");
        }

        @Test
        void a_ledger_lies_within_60_mm_of_the_outline() {
            assertThat(ledgerOnWall(3660).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(ledgerOnWall(3661)).detail()).isEqualTo("The ledger lies 61 mm outside the outline");
        }

        @Test
        void a_notch_leaves_some_of_the_depth() {
            String notch = "{\"depth\": %s, \"supportDistance\": 50, \"slope\": 0, \"side\": \"support\"}";
            assertThat(SampleDeck.complete()
                            .withJson("/platforms/0/joists/endNotch", notch.formatted("169"))
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(only(SampleDeck.complete().withJson("/platforms/0/joists/endNotch", notch.formatted("170"))))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/joists/endNotch/depth"),
                            "The notch of 170 mm leaves nothing of the timber's depth",
                            "a depth below 170 mm"));
            assertThat(only(SampleDeck.complete().withJson("/platforms/0/beams/0/endNotch", notch.formatted("195")))
                            .accepted())
                    .isEqualTo("a depth below 195 mm");
        }

        @Test
        void a_round_footing_has_no_length() {
            SampleDeck deck = SampleDeck.complete()
                    .with("/platforms/0/footings/1/shape", "round")
                    .with("/platforms/0/footings/1/length", 400);

            assertThat(only(deck).pointer().value()).isEqualTo("/platforms/0/footings/1/length");
            assertThat(deck.without("/platforms/0/footings/1/length").read()).isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void a_post_is_embedded_no_deeper_than_its_footing() {
            SampleDeck deck = SampleDeck.complete().with("/platforms/0/footings/0/embedment", 900);
            assertThat(deck.read()).isInstanceOf(ReadResult.Read.class);

            assertThat(only(deck.with("/platforms/0/footings/0/embedment", 901)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/footings/0/embedment"),
                            "The post reaches below the underside of its footing",
                            "an embedment of at most the footing's depth, 900 mm"));
            assertThat(deck.without("/platforms/0/footings/0/depth").read()).isInstanceOf(ReadResult.Read.class);
        }

        /** Joists along y lie side by side over 4800 mm: 2000 of them at 2.4 mm. */
        @Test
        void more_than_2000_joists_are_a_fault_of_their_spacing() {
            assertThat(SampleDeck.complete()
                            .with("/platforms/0/joists/spacing", 2.4)
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(only(SampleDeck.complete().with("/platforms/0/joists/spacing", 2.39)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/joists/spacing"),
                            "A platform 4800 mm wide would have more than 2000 joists",
                            "a spacing of at least 2.4 mm, or a smaller platform"));
        }

        @Test
        void a_board_may_be_wider_than_thick_and_a_post_square() {
            assertThat(SampleDeck.complete().with("/timbers/3/depth", 145).read())
                    .isInstanceOf(ReadResult.Read.class);
        }

        private SampleDeck post(double x, double y) {
            return SampleDeck.complete().with("/platforms/0/posts/1/at", SampleDeck.point(x, y));
        }

        private SampleDeck beam(int y) {
            return SampleDeck.complete()
                    .with("/platforms/0/beams/0/line", SampleDeck.line(0, y, 4800, y))
                    .without("/platforms/0/beams/0/posts");
        }

        private SampleDeck ledger(int y) {
            return SampleDeck.complete().with("/platforms/0/ledger/line", SampleDeck.line(0, 3600, 4800, y));
        }

        private SampleDeck ledgerOnWall(int y) {
            return SampleDeck.complete()
                    .with("/site/walls/0/line", SampleDeck.line(0, y, 4800, y))
                    .with("/platforms/0/ledger/line", SampleDeck.line(0, y, 4800, y))
                    .without("/platforms/0/edges/2");
        }
    }

    @Nested
    class Edges {

        @Test
        void an_edge_lies_within_10_mm_of_the_outline() {
            assertThat(edge(0, 9, 4800, 9).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(edge(0, 0, 4800, 11)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/edges/0/line"),
                            "The edge does not lie along the outline",
                            "a line along one side of the outline, within 10 mm of it"));
            assertThat(only(edge(0, 0, 4800, 3600)).pointer().value()).isEqualTo("/platforms/0/edges/0/line");
            assertThat(only(edge(0, 0, 4900, 0)).pointer().value()).isEqualTo("/platforms/0/edges/0/line");
        }

        @Test
        void edges_share_at_most_10_mm() {
            SampleDeck deck = edge(0, 0, 2410, 0);
            deck.withJson("/platforms/0/edges/-", "{\"kind\": \"open\"}")
                    .with("/platforms/0/edges/4/line", SampleDeck.line(4800, 0, 2400, 0));
            assertThat(deck.read()).isInstanceOf(ReadResult.Read.class);

            assertThat(only(deck.with("/platforms/0/edges/4/line", SampleDeck.line(4800, 0, 2300, 0))))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/edges/4/line"),
                            "The edge shares 110 mm with /platforms/0/edges/0",
                            "edges that describe each stretch of the outline once"));
        }

        @Test
        void a_wall_edge_may_have_a_guard() {
            assertThat(SampleDeck.complete()
                            .with("/platforms/0/edges/2/guard", "G1")
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void a_wall_edge_lies_within_60_mm_of_a_wall() {
            assertThat(wall(0, 3660, 4800, 3540).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(wall(0, 3661, 4800, 3661)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/edges/2/kind"),
                            "An end of the edge lies 61 mm from the nearest wall, 'W1'",
                            "'wall' along one wall of /site/walls, with both ends within 60 mm of it, or 'open'"));
        }

        @Test
        void a_wall_edge_does_not_go_on_beyond_its_wall() {
            assertThat(wall(0, 3600, 4740, 3600).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(wall(0, 3600, 4739, 3600)).detail())
                    .isEqualTo("An end of the edge lies 61 mm from the nearest wall, 'W1'");
        }

        @Test
        void of_several_walls_the_nearest_counts() {
            SampleDeck deck = wall(0, 9000, 4800, 9000)
                    .withJson("/site/walls/-", "{\"id\": \"W2\"}")
                    .with("/site/walls/1/line", SampleDeck.line(0, 3600, 4000, 3600));
            assertThat(only(deck).detail()).isEqualTo("An end of the edge lies 800 mm from the nearest wall, 'W2'");

            assertThat(deck.with("/site/walls/1/line", SampleDeck.line(0, 3600, 4800, 3600))
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void a_wall_edge_where_the_site_has_no_wall_is_a_fault() {
            assertThat(only(SampleDeck.complete().with("/site/walls", List.of()).without("/platforms/0/ledger")))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/edges/2/kind"),
                            "The edge is said to lie along a wall, and the site has none",
                            "'wall' along a wall that is given in /site/walls, or 'open'"));
        }

        @Test
        void an_edge_along_a_platform_that_is_not_there_is_a_fault() {
            assertThat(only(SampleDeck.complete().with("/platforms/0/edges/1/kind", "platform")))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/edges/1/kind"),
                            "The edge is said to lie along another platform, and does not on its whole length",
                            "'platform' along the outline of one other platform, within 10 mm of it, or 'open'"));
        }

        @Test
        void an_edge_lies_within_10_mm_of_the_platform_beside_it() {
            assertThat(eastPlatform(4810, 3600).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(eastPlatform(4811, 3600)).pointer().value()).isEqualTo("/platforms/0/edges/1/kind");
        }

        @Test
        void an_edge_does_not_go_on_beyond_the_platform_beside_it() {
            assertThat(eastPlatform(4800, 3590).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(eastPlatform(4800, 3589)).pointer().value()).isEqualTo("/platforms/0/edges/1/kind");
        }

        @Test
        void an_edge_is_not_compared_with_a_platform_whose_outline_is_at_fault() {
            assertThat(only(eastPlatform(4800, 3600).with("/platforms/1/outline/2", SampleDeck.point(4800, -100)))
                            .pointer()
                            .value())
                    .isEqualTo("/platforms/1/outline");
        }

        /** From x to 6000 beside the sample's east edge, up to y = top. */
        private SampleDeck eastPlatform(double x, double top) {
            return SampleDeck.complete()
                    .with("/platforms/0/edges/1/kind", "platform")
                    .withJson("/platforms/-", "{\"id\": \"east\"}")
                    .with("/platforms/1/outline", SampleDeck.points(x, 0, 6000, 0, 6000, top, x, top));
        }

        /** The sample without its ledger, and its wall elsewhere. */
        private SampleDeck wall(double x1, double y1, double x2, double y2) {
            return SampleDeck.complete()
                    .without("/platforms/0/ledger")
                    .with("/site/walls/0/line", SampleDeck.line(x1, y1, x2, y2));
        }

        private SampleDeck edge(double x1, double y1, double x2, double y2) {
            return SampleDeck.complete().with("/platforms/0/edges/0/line", SampleDeck.line(x1, y1, x2, y2));
        }
    }

    private static String item(int x, int y) {
        return "{\"id\": \"spa\", \"weight\": \"12 kN\", \"nature\": \"permanent\", \"outline\":"
                + " [[%d,%d],[%d,%d],[%d,%d],[%d,%d]]}".formatted(x, y, x + 1000, y, x + 1000, y + 1000, x, y + 1000);
    }

    /** A deck of one platform that is nothing but an outline. */
    private static SampleDeck bare(String outline) {
        return SampleDeck.complete().withJson("/platforms", "[{\"id\": \"main\", \"outline\": " + outline + "}]");
    }

    private static Fault only(SampleDeck deck) {
        List<Fault> faults = SampleDeck.faults(deck.read());
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }

    private static List<String> pointers(SampleDeck deck) {
        return SampleDeck.faults(deck.read()).stream()
                .map(f -> f.pointer().value())
                .toList();
    }
}
