package org.deckplanreview.submission;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.deckplanreview.kernel.Pointer;
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
            "/platforms/0/beams, beam",
            "/platforms/0/braces, brace"
        })
        void an_id_given_twice_is_a_fault_of_the_second(String list, String kind) {
            SampleDeck deck = SampleDeck.everyMember();
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
        void a_stair_has_an_id_of_its_own() {
            SampleDeck deck = SampleDeck.everyMember()
                    .without("/use/heavyItems")
                    .withStair("S1", SampleDeck.line(4800, 600, 4800, 1600), 5, 180, 250);

            assertThat(only(deck))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/stairs/1/id"),
                            "'S1' is already the id of /platforms/0/stairs/0",
                            "an id that no other stair has"));
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
            "/platforms/0/edges/0/guard, guard, G2",
            "/platforms/0/beams/0/plyFixing/fixing, fixing, SD",
            "/platforms/0/braces/0/timber, timber, K",
            "/platforms/0/braces/0/post, post, P9",
            "/platforms/0/stairs/0/strings/timber, timber, K",
            "/platforms/0/stairs/0/treadTimber, timber, BE",
            "/platforms/0/stairs/0/guard, guard, G2",
            "/platforms/0/guards/0/posts/timber, timber, PP",
            "/platforms/0/guards/0/rail, timber, R",
            "/platforms/0/guards/0/infillTimber, timber, I",
            "/siteMeasurements/diagonals/0/from, post, P9",
            "/siteMeasurements/diagonals/0/to, post, P9"
        })
        void a_reference_to_nothing_is_a_fault(String pointer, String kind, String id) {
            Fault fault = only(SampleDeck.everyMember().with(pointer, id));

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
    class Timbers {

        @Test
        void a_timber_is_graded_by_class_or_by_species_and_grade_but_not_by_both() {
            SampleDeck deck = SampleDeck.complete()
                    .with("/timbers/0/species", "southern-pine")
                    .with("/timbers/0/grade", "no.2");

            assertThat(SampleDeck.faults(deck.read()))
                    .containsExactly(
                            new Fault(
                                    Pointer.of("/timbers/0/grade"),
                                    "The timber is 'no.2' and has the strength class 'C24' too",
                                    "either strengthClass, or species and grade"),
                            new Fault(
                                    Pointer.of("/timbers/0/species"),
                                    "The timber is 'southern-pine' and has the strength class 'C24' too",
                                    "either strengthClass, or species and grade"));
            assertThat(deck.without("/timbers/0/strengthClass")
                            .submission()
                            .timbers()
                            .get(0)
                            .stiffnessName())
                    .contains("southern-pine no.2");
        }

        @Test
        void a_grade_is_of_a_species_but_a_species_may_lack_its_grade_for_now() {
            SampleDeck deck =
                    SampleDeck.complete().without("/timbers/0/strengthClass").with("/timbers/0/grade", "no.1");

            assertThat(only(deck))
                    .isEqualTo(new Fault(
                            Pointer.of("/timbers/0/species"),
                            "The member is missing, though the timber has the grade 'no.1'",
                            "the species that the grade is of"));
            assertThat(deck.with("/timbers/0/species", "hem-fir")
                            .without("/timbers/0/grade")
                            .submission()
                            .timbers()
                            .get(0)
                            .stiffnessName())
                    .isEmpty();
        }

        @Test
        void a_treatment_has_a_use_class_or_a_use_category_or_both() {
            SampleDeck deck = SampleDeck.complete().without("/timbers/0/treatment/useClass");

            assertThat(only(deck))
                    .isEqualTo(new Fault(
                            Pointer.of("/timbers/0/treatment"),
                            "The treatment has neither a use class nor a use category",
                            "a treatment with useClass, useCategory, or both"));
            assertThat(deck.with("/timbers/0/treatment/useCategory", "UC4A").read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(deck.with("/timbers/0/treatment/useClass", "UC4").read()).isInstanceOf(ReadResult.Read.class);
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
                            .without("/site/walls")
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(bare("[[0,4000],[2000,4000],[2000,2000],[4000,2000],[4000,0],[0,0]]")
                            .without("/site/walls")
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
                            "platforms that lie beside each other, with at most 10 mm of overlap, or whose levels are at"
                                    + " least 1500 mm apart"));
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
        void platforms_lie_over_each_other_only_with_room_to_stand_between() {
            assertThat(stacked(2400).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(stacked(-600).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(stacked(2399)).detail()).isEqualTo("The platform overlaps /platforms/0");
            assertThat(only(stacked(2400).without("/platforms/1/level")).detail())
                    .isEqualTo("The platform overlaps /platforms/0");
        }

        @Test
        void what_lies_on_either_of_two_platforms_lies_on_none() {
            SampleDeck item = stacked(3600)
                    .withHeavyItem("T", "planter", "3 kN", SampleDeck.points(500, 1500, 1500, 1500, 1500, 2500));
            assertThat(only(item))
                    .isEqualTo(new Fault(
                            Pointer.of("/use/heavyItems/0/outline"),
                            "The heavy item may stand on any of the platforms that lie over each other there",
                            "an area within the outline of one platform alone"));
            assertThat(only(stacked(3600).withMeasuredLevel(1000, 1500, 890)))
                    .isEqualTo(new Fault(
                            Pointer.of("/siteMeasurements/levels/0/at"),
                            "The level may be of any of the platforms that lie over each other there",
                            "a place within the outline of one platform alone"));
            assertThat(stacked(3600).withMeasuredLevel(3000, 1000, 890).read()).isInstanceOf(ReadResult.Read.class);
        }

        /** The deck at 900 with another platform over its corner, or under it. */
        private SampleDeck stacked(double level) {
            return SampleDeck.complete()
                    .withJson(
                            "/platforms/-",
                            "{\"id\": \"other\", \"outline\": [[0, 1000], [2000, 1000], [2000, 3000], [0, 3000]],"
                                    + " \"level\": {\"at\": [0, 0], \"z\": " + level + "}}");
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

        @Test
        void no_site_has_a_wind_pressure_of_0() {
            Fault fault = only(SampleDeck.complete().withJson("/site/windPressure", "\"0 kN/m2\""));
            assertThat(fault.pointer().value()).isEqualTo("/site/windPressure");
            assertThat(fault.accepted()).startsWith("over 0");
            assertThat(SampleDeck.complete()
                            .withJson("/site/windPressure", "\"0.0001 kN/m2\"")
                            .read())
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
        @ValueSource(
                strings = {
                    "/platforms/0/beams/0/line",
                    "/platforms/0/ledger/line",
                    "/platforms/0/edges/0/line",
                    "/platforms/0/stairs/0/line"
                })
        void a_line_between_one_point_has_no_length(String pointer) {
            assertThat(only(SampleDeck.everyMember().with(pointer, SampleDeck.line(4800, 3600, 4800, 3600.5))))
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
                    "/platforms/0/fall/direction",
                    "/platforms/0/braces/0/direction"
                })
        void a_direction_is_not_zero(String pointer) {
            assertThat(only(SampleDeck.everyMember().with(pointer, SampleDeck.point(0, 0))))
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
            assertThat(only(ledgerOnWall(3661)).detail())
                    .isEqualTo("An end of the ledger lies 61 mm outside the outline");
        }

        @Test
        void both_ends_of_a_ledger_lie_by_the_outline() {
            SampleDeck longer = SampleDeck.complete()
                    .with("/site/walls/0/line", SampleDeck.line(0, 3600, 6000, 3600))
                    .with("/platforms/0/ledger/line", SampleDeck.line(0, 3600, 4861, 3600));
            assertThat(only(longer).detail()).isEqualTo("An end of the ledger lies 61 mm outside the outline");
        }

        /** The ledger is 4800 mm long. */
        @Test
        void a_lateral_connection_lies_along_the_ledger() {
            String at = "/platforms/0/ledger/lateralConnections/1/at";
            assertThat(SampleDeck.everyMember().with(at, 4800).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(SampleDeck.everyMember().with(at, 4802)))
                    .isEqualTo(new Fault(
                            Pointer.of(at),
                            "The lateral connection lies 4802 mm along the ledger, and so beyond its end",
                            "a distance of at most the ledger's length, 4800 mm"));
        }

        /** 51 mm to the upper edge and 20 mm to the lower one leave 99 mm of the ledger's 170 mm. */
        @Test
        void the_rows_of_fixings_fit_the_ledger() {
            String rows = "/platforms/0/ledger/fixings/rowDistance";
            assertThat(SampleDeck.everyMember().with(rows, 99).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(SampleDeck.everyMember().with(rows, 101)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/ledger/fixings"),
                            "The distances of the fixings from the ledger's edges and of their rows add up to 172 mm",
                            "topEdgeDistance, rowDistance and bottomEdgeDistance that add up to at most the ledger's"
                                    + " depth, 170 mm"));
        }

        @ParameterizedTest
        @CsvSource({
            "pad, embedded, 'The post is embedded, and its footing is a pad that carries it on top', connector or none",
            "embedded-post, connector, 'The post stands in a connector, and its footing is one that embeds it', embedded"
        })
        void the_base_of_a_post_suits_its_footing(String footing, String base, String detail, String accepted) {
            SampleDeck deck = SampleDeck.complete()
                    .with("/platforms/0/footings/0/kind", footing)
                    .with("/platforms/0/posts/0/base", base);

            assertThat(only(deck)).isEqualTo(new Fault(Pointer.of("/platforms/0/posts/0/base"), detail, accepted));
            assertThat(deck.with("/platforms/0/posts/0/base", "none").read()).isInstanceOf(ReadResult.Read.class);
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

        /** Joists along y lie side by side over 4800 mm: 400 of them at 12 mm. */
        @Test
        void more_than_400_joists_are_a_fault_of_their_spacing() {
            assertThat(SampleDeck.complete()
                            .with("/platforms/0/joists/spacing", 12)
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(only(SampleDeck.complete().with("/platforms/0/joists/spacing", 11.99)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/joists/spacing"),
                            "The platform would have 401 joists",
                            "a spacing, or a smaller platform, with at most 400 joists"));
        }

        @Test
        void no_post_stands_inside_another() {
            String post = "{\"id\": \"P9\", \"timber\": \"P\", \"at\": [%s, 600]}";
            assertThat(SampleDeck.complete()
                            .withJson("/platforms/0/posts/-", post.formatted(2499))
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(only(SampleDeck.complete().withJson("/platforms/0/posts/-", post.formatted(2498))))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/posts/3/at"),
                            "The post stands 98 mm from post P2, and so inside it",
                            "a place at least 100 mm from every other post"));
        }

        @Test
        void a_board_may_be_wider_than_thick_and_a_post_square() {
            assertThat(SampleDeck.complete().with("/timbers/3/depth", 145).read())
                    .isInstanceOf(ReadResult.Read.class);
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

    @Nested
    class Joints {

        @ParameterizedTest
        @CsvSource({"1, 1", "3, 1", "4, 2", "6, 3", "2, 2"})
        void every_row_of_a_joint_has_as_many_fasteners(int count, int rows) {
            assertThat(joint(count, rows).read()).isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void three_fasteners_do_not_stand_in_two_rows() {
            assertThat(only(joint(3, 2)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/beams/0/joint/rows"),
                            "3 fasteners cannot stand in 2 rows of equally many",
                            "a number of rows that divides the number of fasteners"));
        }

        @Test
        void a_joint_has_no_more_rows_than_fasteners() {
            assertThat(only(joint(1, 2)).detail()).isEqualTo("1 fastener cannot stand in 2 rows of equally many");
        }

        private SampleDeck joint(int count, int rows) {
            return SampleDeck.complete().withJoint(0, "bolt", 12, count, rows);
        }
    }

    @Nested
    class Stairs {

        @Test
        void a_stair_leaves_the_platform_within_10_mm_of_the_outline() {
            assertThat(stair(1000, -10, 2000, -10).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(stair(1000, -11, 2000, -11)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/stairs/0/line"),
                            "The stair does not leave the platform along its outline",
                            "a line along one side of the outline, within 10 mm of it"));
        }

        @Test
        void a_stair_does_not_cut_across_the_platform_or_go_beyond_a_corner() {
            assertThat(only(stair(0, 0, 4800, 3600)).pointer().value()).isEqualTo("/platforms/0/stairs/0/line");
            assertThat(only(stair(4000, 0, 4811, 0)).pointer().value()).isEqualTo("/platforms/0/stairs/0/line");
            assertThat(stair(4000, 0, 4810, 0).read()).isInstanceOf(ReadResult.Read.class);
        }

        @Test
        void a_stair_is_not_compared_with_an_outline_at_fault() {
            assertThat(pointers(stair(1000, -500, 2000, -500)
                            .with("/platforms/0/outline/2", SampleDeck.point(4800, -100))
                            .with("/platforms/0/edges", List.of())))
                    .containsExactly("/platforms/0/outline");
        }

        @Test
        void stairs_share_at_most_10_mm() {
            assertThat(stair(1000, 0, 2000, 0)
                            .withStair("S2", SampleDeck.line(2990, 0, 1990, 0), 5, 180, 250)
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(only(stair(1000, 0, 2000, 0).withStair("S2", SampleDeck.line(2989, 0, 1989, 0), 5, 180, 250)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/stairs/1/line"),
                            "The stair shares 11 mm with /platforms/0/stairs/0",
                            "stairs that leave the platform beside each other"));
        }

        @Test
        void a_stair_does_not_leave_through_a_wall() {
            assertThat(only(stair(1000, 3600, 2000, 3600)))
                    .isEqualTo(new Fault(
                            Pointer.of("/platforms/0/stairs/0/line"),
                            "The stair shares 1000 mm with /platforms/0/edges/2, which lies along a wall",
                            "a stair that leaves the platform where no wall stands"));
        }

        @Test
        void a_stair_may_lap_10_mm_over_the_edge_at_a_wall() {
            assertThat(besideWall(3010).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(besideWall(3011)).detail())
                    .isEqualTo("The stair shares 11 mm with /platforms/0/edges/1, which lies along a wall");
        }

        @Test
        void a_foot_above_the_deck_is_for_the_rules_to_tell() {
            assertThat(stair(1000, 0, 2000, 0)
                            .with("/platforms/0/stairs/0/footLevel", 5000)
                            .read())
                    .isInstanceOf(ReadResult.Read.class);
        }

        /** On the east side, where a second wall begins at y = 3000. */
        private SampleDeck besideWall(double end) {
            return SampleDeck.complete()
                    .withJson("/site/walls/-", "{\"id\": \"W2\"}")
                    .with("/site/walls/1/line", SampleDeck.line(4800, 3000, 4800, 6000))
                    .with("/platforms/0/edges/1/kind", "wall")
                    .with("/platforms/0/edges/1/line", SampleDeck.line(4800, 3000, 4800, 3600))
                    .withStair("S1", SampleDeck.line(4800, 2000, 4800, end), 5, 180, 250);
        }

        private SampleDeck stair(double x1, double y1, double x2, double y2) {
            return SampleDeck.complete().withStair("S1", SampleDeck.line(x1, y1, x2, y2), 5, 180, 250);
        }
    }

    @Nested
    class Measurements {

        @Test
        void a_diagonal_runs_between_two_posts() {
            assertThat(SampleDeck.complete().withDiagonal("P1", "P3", 4200).read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(only(SampleDeck.complete().withDiagonal("P1", "P1", 4200)))
                    .isEqualTo(new Fault(
                            Pointer.of("/siteMeasurements/diagonals/0/to"),
                            "The diagonal ends at the post 'P1' where it begins",
                            "the ids of two posts of one platform"));
        }

        @Test
        void a_diagonal_does_not_run_from_one_platform_to_another() {
            assertThat(only(low("Q1").withDiagonal("P1", "Q1", 4200)))
                    .isEqualTo(new Fault(
                            Pointer.of("/siteMeasurements/diagonals/0/to"),
                            "No platform has both a post 'P1' and a post 'Q1'",
                            "the ids of two posts of one platform"));
        }

        @Test
        void a_diagonal_tells_its_platform() {
            assertThat(low("P1", "Q2").withDiagonal("P1", "P3", 4200).read()).isInstanceOf(ReadResult.Read.class);
            assertThat(only(low("P1", "P3").withDiagonal("P1", "P3", 4200)))
                    .isEqualTo(new Fault(
                            Pointer.of("/siteMeasurements/diagonals/0"),
                            "2 platforms have both a post 'P1' and a post 'P3'",
                            "posts whose ids tell which platform was measured"));
        }

        @Test
        void a_level_is_measured_within_10_mm_of_a_platform() {
            assertThat(SampleDeck.complete().withMeasuredLevel(2400, -10, 900).read())
                    .isInstanceOf(ReadResult.Read.class);
            assertThat(only(SampleDeck.complete().withMeasuredLevel(2400, -11, 900)))
                    .isEqualTo(new Fault(
                            Pointer.of("/siteMeasurements/levels/0/at"),
                            "The level was measured beside the deck",
                            "a place within the outline of a platform"));
            assertThat(low("Q1").withMeasuredLevel(9800, 100, 300).read()).isInstanceOf(ReadResult.Read.class);
        }

        /** The sample beside a second platform with posts of those ids. */
        private SampleDeck low(String... posts) {
            SampleDeck deck = SampleDeck.complete()
                    .withJson(
                            "/platforms/-",
                            "{\"id\": \"low\", \"outline\": [[9000,0],[9900,0],[9900,900]], \"posts\": []}");
            for (int i = 0; i < posts.length; i++) {
                deck.withJson(
                        "/platforms/1/posts/-",
                        "{\"id\": \"" + posts[i] + "\", \"timber\": \"P\", \"at\": [" + (9300 + 200 * i) + ", 100]}");
            }
            return deck;
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
