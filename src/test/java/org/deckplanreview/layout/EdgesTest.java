package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.junit.jupiter.api.Test;

/** Edges and the drop along them. Expected values by hand, from levels linear in plan. */
class EdgesTest {

    private static final double EXACT = 1e-9;
    private static final String LEVEL_GROUND =
            "The ground is taken as level, as at the one place where it was surveyed: x = 0 mm, y = 0 mm.";
    private static final PlanLine FAR_SIDE = line(4000, 3000, 0, 3000);

    private static Decks deck() {
        return Decks.rectangle(4000, 3000).level(0, 0, 500).noFall();
    }

    @Test
    void a_side_that_is_not_described_is_a_run_of_its_own() {
        List<EdgeRun> edges = deck().levelGround(0)
                .edge(EdgeKind.WALL, line(0, 0, 4000, 0))
                .edge(EdgeKind.OPEN, line(4000, 3000, 0, 3000))
                .platform()
                .edges();
        assertThat(edges.stream().map(EdgeRun::edgeKind))
                .containsExactly(
                        Optional.of(EdgeKind.WALL), Optional.empty(), Optional.of(EdgeKind.OPEN), Optional.empty());
        assertThat(edges.stream().map(EdgeRun::pointer).map(Pointer::value))
                .containsExactly(
                        "/platforms/0/edges/0", "/platforms/0/edges", "/platforms/0/edges/1", "/platforms/0/edges");
        assertThat(edges.stream().map(EdgeRun::label))
                .containsExactly(
                        "edge 1 of terrace",
                        "edge of terrace from (4000, 0) to (4000, 3000) mm",
                        "edge 2 of terrace",
                        "edge of terrace from (0, 3000) to (0, 0) mm");
    }

    @Test
    void a_side_is_split_where_its_neighbour_changes() {
        List<EdgeRun> edges = deck().levelGround(0)
                .edge(EdgeKind.WALL, line(0, 0, 1500, 0))
                .edge(EdgeKind.OPEN, line(2500, 0, 4000, 0))
                .platform()
                .edges();
        assertThat(edges.subList(0, 3).stream().map(EdgeRun::line))
                .containsExactly(line(0, 0, 1500, 0), line(1500, 0, 2500, 0), line(2500, 0, 4000, 0));
        assertThat(edges.get(1).edgeKind()).isEmpty();
        assertThat(edges).hasSize(6);
    }

    @Test
    void an_edge_drawn_ten_millimetres_off_counts_and_eleven_does_not() {
        assertThat(deck().levelGround(0)
                        .edge(EdgeKind.WALL, line(0, -10, 4000, -10))
                        .platform()
                        .edges()
                        .get(0)
                        .edgeKind())
                .contains(EdgeKind.WALL);
        assertThat(deck().levelGround(0)
                        .edge(EdgeKind.WALL, line(0, -11, 4000, -11))
                        .platform()
                        .edges())
                .allMatch(e -> e.edgeKind().isEmpty());
    }

    @Test
    void ten_millimetres_left_at_a_corner_belong_to_the_edge_beside_it() {
        List<EdgeRun> edges = deck().levelGround(0)
                .edge(EdgeKind.WALL, line(10, 0, 3990, 0))
                .platform()
                .edges();
        assertThat(edges).hasSize(4);
        assertThat(edges.get(0).line()).isEqualTo(line(0, 0, 4000, 0));
        assertThat(deck().levelGround(0)
                        .edge(EdgeKind.WALL, line(11, 0, 3989, 0))
                        .platform()
                        .edges())
                .hasSize(6);
    }

    @Test
    void a_corner_that_does_not_turn_splits_no_edge() {
        assertThat(Decks.outline(0, 0, 2000, 0, 4000, 0, 4000, 3000, 0, 3000)
                        .edge(EdgeKind.WALL, line(0, 0, 4000, 0))
                        .platform()
                        .edges())
                .hasSize(4);
    }

    @Test
    void where_described_edges_overlap_the_one_that_starts_first_goes_on() {
        List<EdgeRun> edges = deck().levelGround(0)
                .edge(EdgeKind.OPEN, line(1000, 0, 4000, 0))
                .edge(EdgeKind.WALL, line(0, 0, 2000, 0))
                .platform()
                .edges();
        assertThat(edges.get(0).line()).isEqualTo(line(0, 0, 2000, 0));
        assertThat(edges.get(0).edgeKind()).contains(EdgeKind.WALL);
        assertThat(edges.get(1).line()).isEqualTo(line(2000, 0, 4000, 0));
    }

    @Test
    void an_edge_has_the_guard_that_it_names() {
        EdgeRun edge = deck().levelGround(0)
                .guard("g1", 900)
                .guard("g2", 1100)
                .edge(EdgeKind.OPEN, line(0, 0, 4000, 0), Optional.of("g2"))
                .platform()
                .edges()
                .get(0);
        assertThat(edge.guard().orElseThrow().height().orElseThrow().mm()).isEqualTo(1100);
        assertThat(edge.guardPointer()).contains(Pointer.of("/platforms/0/guards/1"));
    }

    @Test
    void on_level_ground_the_drop_is_the_difference_of_levels() {
        PlatformLayout p = deck().levelGround(-101).platform();
        assertThat(p.edges()).allMatch(e -> e.drop().get().largestMm() == 601);
        assertThat(p.edges().get(0).drop().get().at()).isEqualTo(new PlanPoint(0, 0));
        assertThat(p.largestDropMm().get()).isEqualTo(601);
    }

    @Test
    void on_a_slope_the_largest_drop_is_at_the_lower_end() {
        // Ground through three points: -y / 10. The far side at y = 3000 lies 300 lower than the near one.
        PlatformLayout p = deck().ground(-100, -100, 10)
                .ground(9900, -100, 10)
                .ground(-100, 9900, -990)
                .platform();
        assertThat(p.edges().get(0).drop().get().largestMm()).isCloseTo(500, within(EXACT));
        assertThat(p.edges().get(1).drop().get().largestMm()).isCloseTo(800, within(EXACT));
        assertThat(p.edges().get(1).drop().get().at()).isEqualTo(new PlanPoint(4000, 3000));
        assertThat(p.largestDropMm().get()).isCloseTo(800, within(EXACT));
    }

    @Test
    void a_hollow_beside_an_edge_is_found_between_its_ends() {
        // A hollow 450 deep at (1000, -500), outside the deck: the near side crosses the triangles' edges that run to
        // it.
        PlatformLayout p = deck().ground(-1000, -1000, 0)
                .ground(5000, -1000, 0)
                .ground(5000, 4000, 0)
                .ground(-1000, 4000, 0)
                .ground(1000, -500, -450)
                .platform();
        Drop drop = p.edges().get(0).drop().get();
        // At y = 0 the edges from the hollow to the far corners are at x = 1000 + 4000 x 500 / 4500 and at
        // x = 1000 - 2000 x 500 / 4500; both lie 450 x 4000 / 4500 = 400 below the rim. The first one met counts.
        assertThat(drop.largestMm()).isCloseTo(900, within(EXACT));
        assertThat(drop.at().xMm()).isCloseTo(1000 - 1000000 / 4500.0, within(1e-6));
        assertThat(drop.at().yMm()).isZero();
    }

    @Test
    void the_fall_of_the_deck_lowers_the_drop_downhill() {
        // 1 in 80 along y over 3000: 37.5.
        PlatformLayout p = Decks.rectangle(4000, 3000)
                .level(0, 0, 500)
                .fall(80, 0, 5)
                .levelGround(0)
                .edge(EdgeKind.WALL, line(0, 0, 4000, 0))
                .platform();
        assertThat(p.edges().get(2).drop().get().largestMm()).isCloseTo(462.5, within(EXACT));
        assertThat(p.edges().get(1).drop().get().largestMm()).isCloseTo(500, within(EXACT));
        assertThat(p.assumptions()).containsExactly(LEVEL_GROUND);
    }

    @Test
    void without_a_fall_levels_are_taken_as_level_and_this_is_said() {
        PlatformLayout p =
                Decks.rectangle(4000, 3000).level(0, 0, 500).levelGround(0).platform();
        assertThat(p.largestDropMm().get()).isEqualTo(500);
        assertThat(p.assumptions())
                .containsExactly(
                        "The fall of terrace is not given: its levels are taken as if it were level.", LEVEL_GROUND);
    }

    @Test
    void walls_beside_do_not_count_for_the_largest_drop() {
        // Ground falls along y; all sides but the near one have a wall beside them.
        PlatformLayout p = deck().ground(-100, -100, 10)
                .ground(9900, -100, 10)
                .ground(-100, 9900, -990)
                .edge(EdgeKind.WALL, line(4000, 0, 4000, 3000))
                .edge(EdgeKind.WALL, line(4000, 3000, 0, 3000))
                .edge(EdgeKind.WALL, line(0, 3000, 0, 0))
                .platform();
        assertThat(p.largestDropMm().get()).isCloseTo(500, within(EXACT));
    }

    @Test
    void a_deck_between_walls_drops_nowhere() {
        PlatformLayout p = deck().edge(EdgeKind.WALL, line(0, 0, 4000, 0))
                .edge(EdgeKind.WALL, line(4000, 0, 4000, 3000))
                .edge(EdgeKind.WALL, line(4000, 3000, 0, 3000))
                .edge(EdgeKind.WALL, line(0, 3000, 0, 0))
                .platform();
        assertThat(p.largestDropMm().get()).isZero();
    }

    /** Beyond the deck's far side, from x = 0 to 4000 and y = 3000 to 5000. */
    private static Decks beyond() {
        return Decks.outline(0, 3000, 4000, 3000, 4000, 5000, 0, 5000).label("lower terrace");
    }

    @Test
    void between_platforms_the_drop_is_the_step_down_and_not_the_height_above_the_ground() {
        List<PlatformLayout> platforms = deck().levelGround(-200)
                .edge(EdgeKind.PLATFORM, FAR_SIDE)
                .beside(beyond().level(0, 3000, 380).noFall().edge(EdgeKind.PLATFORM, FAR_SIDE))
                .layout()
                .platforms();
        EdgeRun down = platforms.get(0).edges().get(2);
        assertThat(down.drop().get()).isEqualTo(new Drop(120, new PlanPoint(4000, 3000)));
        EdgeRun up = platforms.get(1).edges().get(0);
        assertThat(up.edgeKind()).contains(EdgeKind.PLATFORM);
        assertThat(up.drop().get().largestMm()).isZero();
        // The sides beside the ground: 500 and 380 above -200.
        assertThat(platforms.get(0).largestDropMm().get()).isEqualTo(700);
        assertThat(platforms.get(1).largestDropMm().get()).isEqualTo(580);
    }

    @Test
    void the_step_counts_the_fall_of_both_platforms() {
        // The upper one falls 1 in 80 along -x: 500 + 50 at x = 4000. The lower one falls 1 in 40 along +x from 300:
        // 300 at x = 0, 200 at x = 4000. Steps: 200 at x = 0, 350 at x = 4000.
        PlatformLayout upper = Decks.rectangle(4000, 3000)
                .level(0, 0, 500)
                .fall(80, -1, 0)
                .edge(EdgeKind.PLATFORM, line(0, 3000, 4000, 3000))
                .beside(beyond().level(0, 3000, 300).fall(40, 2, 0))
                .platform();
        assertThat(upper.edges().get(2).drop().get().largestMm()).isCloseTo(350, within(EXACT));
        assertThat(upper.edges().get(2).drop().get().at()).isEqualTo(new PlanPoint(4000, 3000));
    }

    @Test
    void seen_from_the_lower_platform_there_is_no_drop() {
        // Both lie at 500 at x = 0; this one is level, the other falls 1 in 100 along x: 40 lower at x = 4000. Seen
        // from
        // the other one, this lies as high or higher everywhere.
        List<PlatformLayout> platforms = deck().edge(EdgeKind.PLATFORM, FAR_SIDE)
                .beside(beyond().level(0, 3000, 500).fall(100, 1, 0).edge(EdgeKind.PLATFORM, FAR_SIDE))
                .layout()
                .platforms();
        assertThat(platforms.get(0).edges().get(2).drop().get().largestMm()).isCloseTo(40, within(EXACT));
        assertThat(platforms.get(1).edges().get(0).drop().get().largestMm()).isZero();
    }

    @Test
    void a_large_step_counts_for_the_largest_drop() {
        PlatformLayout upper = deck().levelGround(400)
                .edge(EdgeKind.PLATFORM, FAR_SIDE)
                .beside(beyond().level(0, 3000, -101).noFall())
                .platform();
        assertThat(upper.largestDropMm().get()).isEqualTo(601);
    }

    @Test
    void of_two_platforms_beside_one_side_each_edge_sees_its_own() {
        // They lap by 8 mm beside the second edge, as a drawing may.
        List<EdgeRun> edges = deck().edge(EdgeKind.PLATFORM, line(4000, 3000, 2000, 3000))
                .edge(EdgeKind.PLATFORM, line(2000, 3000, 0, 3000))
                .beside(Decks.outline(1992, 3000, 4000, 3000, 4000, 5000, 1992, 5000)
                        .level(0, 0, -500)
                        .noFall())
                .beside(Decks.outline(0, 3000, 2000, 3000, 2000, 5000, 0, 5000)
                        .level(0, 0, 350)
                        .noFall())
                .platform()
                .edges();
        assertThat(edges.get(2).drop().get().largestMm()).isEqualTo(1000);
        assertThat(edges.get(3).drop().get().largestMm()).isEqualTo(150);
    }

    @Test
    void platforms_drawn_twenty_millimetres_apart_are_beside_each_other() {
        // The edge lies in the middle, 10 off both outlines.
        PlatformLayout upper = deck().levelGround(0)
                .edge(EdgeKind.PLATFORM, line(4000, 3010, 0, 3010))
                .beside(Decks.outline(0, 3020, 4000, 3020, 4000, 5000, 0, 5000)
                        .level(0, 0, 450)
                        .noFall())
                .platform();
        assertThat(upper.edges().get(2).drop().get().largestMm()).isEqualTo(50);
    }

    @Test
    void the_drop_of_an_open_or_undescribed_edge_goes_to_the_ground_whatever_lies_beside() {
        Decks lower = beyond().level(0, 3000, 380).noFall();
        assertThat(deck().levelGround(-200)
                        .beside(lower)
                        .platform()
                        .edges()
                        .get(2)
                        .drop()
                        .get()
                        .largestMm())
                .isEqualTo(700);
        assertThat(deck().levelGround(-200)
                        .edge(EdgeKind.OPEN, FAR_SIDE)
                        .beside(lower)
                        .platform()
                        .edges()
                        .get(2)
                        .drop()
                        .get()
                        .largestMm())
                .isEqualTo(700);
    }

    @Test
    void a_step_to_a_platform_of_unknown_level_asks_for_that_level() {
        PlatformLayout upper = deck().levelGround(0)
                .edge(EdgeKind.PLATFORM, FAR_SIDE)
                .beside(beyond())
                .platform();
        assertThat(upper.edges().get(2).drop().needs()).singleElement().satisfies(n -> {
            assertThat(n.pointer().value()).isEqualTo("/platforms/1/level");
            assertThat(n.what()).isEqualTo("the finished level of lower terrace at a point, mm");
        });
        assertThat(upper.largestDropMm().isKnown()).isFalse();
    }

    @Test
    void an_edge_that_finds_no_platform_beside_it_drops_to_the_ground() {
        PlatformLayout p =
                deck().levelGround(-101).edge(EdgeKind.PLATFORM, FAR_SIDE).platform();
        assertThat(p.edges().get(2).drop().get().largestMm()).isEqualTo(601);
    }

    @Test
    void an_edge_outside_the_survey_has_no_known_drop() {
        PlatformLayout p = deck().ground(0, 0, 0)
                .ground(4000, 0, 0)
                .ground(4000, 2000, 0)
                .ground(0, 2000, 0)
                .platform();
        assertThat(p.edges().get(0).drop().isKnown()).isTrue();
        assertThat(p.edges().get(1).drop().needs())
                .singleElement()
                .extracting(n -> n.pointer().value())
                .isEqualTo("/site/groundLevels");
        assertThat(p.largestDropMm().isKnown()).isFalse();
    }

    @Test
    void without_a_level_there_is_no_drop_and_the_level_is_asked_for() {
        assertThat(Decks.rectangle(4000, 3000)
                        .levelGround(0)
                        .platform()
                        .largestDropMm()
                        .needs())
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.pointer().value()).isEqualTo("/platforms/0/level");
                    assertThat(n.what()).isEqualTo("the finished level of terrace at a point, mm");
                });
    }

    @Test
    void a_document_in_inches_is_asked_for_inches_and_its_undrawn_edges_are_named_in_feet_and_inches() {
        PlatformLayout p =
                Decks.rectangle(3048, 3657.6).levelGround(0).writtenInInches().platform();

        assertThat(p.largestDropMm().needs())
                .extracting(Need::what)
                .containsExactly("the finished level of terrace at a point, in");
        assertThat(p.edges().get(1).label()).isEqualTo("edge of terrace from (10'-0\", 0\") to (10'-0\", 12'-0\")");
    }

    @Test
    void an_open_edge_is_cut_where_a_stair_leaves() {
        PlatformLayout p = deck().levelGround(-100)
                .guard("g1", 1100)
                .edge(EdgeKind.OPEN, line(0, 0, 4000, 0), Optional.of("g1"))
                .stair("s1", 4, line(2000, 0, 1000, 0))
                .platform();
        List<EdgeRun> near = p.edges().subList(0, 3);
        assertThat(near.stream().map(EdgeRun::line))
                .containsExactly(line(0, 0, 1000, 0), line(1000, 0, 2000, 0), line(2000, 0, 4000, 0));
        assertThat(near.stream().map(e -> e.edgeKind().orElseThrow()))
                .containsExactly(EdgeKind.OPEN, EdgeKind.STAIR, EdgeKind.OPEN);
        assertThat(near.get(1).pointer()).isEqualTo(Pointer.of("/platforms/0/stairs/0"));
        assertThat(near.get(1).label()).isEqualTo("the head of stair s1");
        assertThat(near.get(1).guard()).isEmpty();
        assertThat(p.guards().get(0).edges()).containsExactly(near.get(0), near.get(2));
        assertThat(p.guards().get(0).lengthMm()).isEqualTo(3000);
        assertThat(p.edges()).hasSize(6);
    }

    @Test
    void a_stair_may_leave_an_edge_that_is_not_described() {
        List<EdgeRun> edges = deck().levelGround(0)
                .edge(EdgeKind.OPEN, line(0, 0, 3000, 0))
                .stair("s1", 4, line(3000, 0, 4000, 0))
                .platform()
                .edges();
        assertThat(edges.get(0).edgeKind()).contains(EdgeKind.OPEN);
        assertThat(edges.get(1).edgeKind()).contains(EdgeKind.STAIR);
        assertThat(edges).hasSize(5);
    }

    @Test
    void a_stair_across_two_described_edges_cuts_both() {
        List<EdgeRun> edges = deck().levelGround(0)
                .edge(EdgeKind.OPEN, line(0, 0, 1500, 0))
                .edge(EdgeKind.OPEN, line(1500, 0, 4000, 0))
                .stair("s1", 4, line(1000, 0, 2000, 0))
                .platform()
                .edges();
        assertThat(edges.subList(0, 4).stream().map(EdgeRun::line))
                .containsExactly(
                        line(0, 0, 1000, 0), line(1000, 0, 1500, 0), line(1500, 0, 2000, 0), line(2000, 0, 4000, 0));
        assertThat(edges.get(1).edgeKind()).contains(EdgeKind.STAIR);
        assertThat(edges.get(2).edgeKind()).contains(EdgeKind.STAIR);
    }

    @Test
    void two_stairs_cut_one_edge_in_its_own_order() {
        List<EdgeRun> edges = deck().levelGround(0)
                .edge(EdgeKind.OPEN, line(0, 0, 4000, 0))
                .stair("s1", 4, line(2500, 0, 3500, 0))
                .stair("s2", 4, line(500, 0, 1500, 0))
                .platform()
                .edges();
        assertThat(edges.subList(0, 5).stream().map(e -> e.edgeKind().orElseThrow()))
                .containsExactly(EdgeKind.OPEN, EdgeKind.STAIR, EdgeKind.OPEN, EdgeKind.STAIR, EdgeKind.OPEN);
        assertThat(edges.get(1).pointer()).isEqualTo(Pointer.of("/platforms/0/stairs/1"));
    }

    @Test
    void no_sliver_of_ten_millimetres_is_left_beside_a_stair() {
        List<EdgeRun> wide = deck().levelGround(0)
                .edge(EdgeKind.OPEN, line(0, 0, 4000, 0))
                .stair("s1", 4, line(10, 0, 3990, 0))
                .platform()
                .edges();
        assertThat(wide).hasSize(4);
        assertThat(wide.get(0).line()).isEqualTo(line(0, 0, 4000, 0));
        assertThat(wide.get(0).edgeKind()).contains(EdgeKind.STAIR);
        assertThat(deck().levelGround(0)
                        .edge(EdgeKind.OPEN, line(0, 0, 4000, 0))
                        .stair("s1", 4, line(11, 0, 3989, 0))
                        .platform()
                        .edges())
                .hasSize(6);
    }

    @Test
    void a_stair_does_not_leave_through_a_wall() {
        assertThat(deck()
                        .levelGround(0)
                        .edge(EdgeKind.WALL, line(0, 0, 4000, 0))
                        .stair("s1", 4, line(1000, 0, 2000, 0))
                        .platform()
                        .edges()
                        .stream()
                        .map(EdgeRun::edgeKind))
                .doesNotContain(Optional.of(EdgeKind.STAIR))
                .hasSize(4);
    }

    @Test
    void a_stair_may_lead_down_to_another_platform() {
        List<EdgeRun> edges = deck().levelGround(0)
                .edge(EdgeKind.PLATFORM, line(0, 0, 4000, 0))
                .stair("s1", 4, line(1000, 0, 2000, 0))
                .platform()
                .edges();
        assertThat(edges.subList(0, 3).stream().map(e -> e.edgeKind().orElseThrow()))
                .containsExactly(EdgeKind.PLATFORM, EdgeKind.STAIR, EdgeKind.PLATFORM);
    }

    @Test
    void the_drop_at_a_stair_still_counts_for_the_height_of_the_platform() {
        PlatformLayout p = deck().levelGround(-100)
                .edge(EdgeKind.WALL, line(4000, 0, 4000, 3000))
                .edge(EdgeKind.WALL, line(4000, 3000, 0, 3000))
                .edge(EdgeKind.WALL, line(0, 3000, 0, 0))
                .stair("s1", 4, line(0, 0, 4000, 0))
                .platform();
        assertThat(p.largestDropMm().get()).isEqualTo(600);
    }
}
