package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Joists and tributary areas in outlines that are no rectangles. Expected values by hand, from the drawing's dimensions. */
class OutlineShapesTest {

    private static final double EXACT = 1e-6;

    /**
     * An L: 4000 long in x and 2000 in y, with a leg from x = 0 to 2000 up to y = 3500. Joists along x, from the
     * smaller y; the short ones of the leg above y = 2000.
     */
    private static Decks lShape() {
        return Decks.outline(0, 0, 4000, 0, 4000, 2000, 2000, 2000, 2000, 3500, 0, 3500)
                .joists(1, 0, 450);
    }

    private static List<Double> across(List<JoistLine> joists) {
        return joists.stream().map(j -> j.line().from().yMm()).toList();
    }

    private static double area(JoistLine joist) {
        return joist.strips().stream().mapToDouble(AreaStrip::areaMm2).sum();
    }

    private static double area(List<JoistLine> joists) {
        return joists.stream().mapToDouble(OutlineShapesTest::area).sum();
    }

    @Test
    void a_re_entrant_side_has_its_own_joist_just_inside() {
        // 23.5 + k x 450 up to 3476.5, and 2000 - 23.5 inside the side at y = 2000.
        assertThat(across(lShape().platform().joists()))
                .containsExactly(23.5, 473.5, 923.5, 1373.5, 1823.5, 1976.5, 2273.5, 2723.5, 3173.5, 3476.5);
    }

    @Test
    void joists_end_where_the_outline_does() {
        List<JoistLine> joists = lShape().platform().joists();
        assertThat(joists.subList(0, 6)).allMatch(j -> j.lengthMm() == 4000);
        assertThat(joists.subList(6, 10)).allMatch(j -> j.lengthMm() == 2000);
    }

    @Test
    void a_joist_of_one_leg_carries_nothing_of_the_other() {
        List<JoistLine> joists = lShape().platform().joists();
        assertThat(area(joists)).isCloseTo(4000.0 * 2000 + 2000.0 * 1500, within(EXACT));
        // In the leg up to midway to the joist at 2273.5, beyond it up to the side at 2000.
        assertThat(joists.get(5).strips()).hasSize(2);
        AreaStrip inLeg = joists.get(5).strips().get(0);
        AreaStrip beyond = joists.get(5).strips().get(1);
        assertThat(inLeg.fromMm()).isZero();
        assertThat(inLeg.toMm()).isEqualTo(2000);
        assertThat(inLeg.widthToMm()).isCloseTo((2273.5 - 1823.5) / 2, within(EXACT));
        assertThat(beyond.fromMm()).isEqualTo(2000);
        assertThat(beyond.toMm()).isEqualTo(4000);
        assertThat(beyond.widthFromMm()).isCloseTo((1976.5 - 1823.5) / 2 + 23.5, within(EXACT));
        // The first joist of the leg has the leg's length only.
        assertThat(area(joists.get(6))).isCloseTo(2000 * (2723.5 - 1976.5) / 2, within(EXACT));
    }

    @Test
    void a_joist_of_the_field_that_would_stick_out_over_a_side_is_set_back() {
        // The field has a joist at 1823.5; the side at 1830 needs one at 1806.5, closer than a breadth.
        List<Double> across = across(Decks.outline(0, 0, 4000, 0, 4000, 1830, 2000, 1830, 2000, 3500, 0, 3500)
                .joists(1, 0, 450)
                .platform()
                .joists());
        assertThat(across).contains(1806.5).doesNotContain(1823.5).hasSize(9);
    }

    @Test
    void a_joist_of_the_field_just_inside_a_side_serves_it() {
        // 1823.5 lies 36.5 inside the side at 1860, more than half a breadth.
        List<Double> across = across(Decks.outline(0, 0, 4000, 0, 4000, 1860, 2000, 1860, 2000, 3500, 0, 3500)
                .joists(1, 0, 450)
                .platform()
                .joists());
        assertThat(across).contains(1823.5).doesNotContain(1836.5).hasSize(9);
    }

    @Test
    void one_line_gives_two_joists_where_a_recess_parts_the_outline() {
        // A U open upwards: legs from x = 0 to 1000 and from 3000 to 4000 above y = 1000.
        List<JoistLine> joists = Decks.outline(
                        0, 0, 4000, 0, 4000, 2000, 3000, 2000, 3000, 1000, 1000, 1000, 1000, 2000, 0, 2000)
                .joists(1, 0, 500)
                .platform()
                .joists();
        List<JoistLine> ofOneLine =
                joists.stream().filter(j -> j.line().from().yMm() == 1523.5).toList();
        assertThat(ofOneLine.stream().map(j -> j.line().from().xMm())).containsExactly(0.0, 3000.0);
        assertThat(ofOneLine).allMatch(j -> j.lengthMm() == 1000);
        assertThat(area(joists)).isCloseTo(4000.0 * 2000 - 2000.0 * 1000, within(EXACT));
        // The field's joist at 1023.5 misses the recess's bottom, which has its own at 976.5.
        assertThat(across(joists)).containsExactly(23.5, 523.5, 976.5, 1023.5, 1023.5, 1523.5, 1523.5, 1976.5, 1976.5);
        assertThat(joists.stream().map(JoistLine::number)).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9);
    }

    /** A trapezoid: 3000 along the lower side, 4000 along the upper, 1600 between; the right side is slanted. */
    private static Decks trapezoid() {
        return Decks.outline(0, 0, 3000, 0, 4000, 1600, 0, 1600).joists(1, 0, 400);
    }

    @Test
    void joists_under_a_slanted_side_differ_in_length() {
        // The slanted side: x = 3000 + y x 1000 / 1600.
        assertThat(trapezoid().platform().joists())
                .hasSize(5)
                .allSatisfy(j -> assertThat(j.lengthMm())
                        .isCloseTo(3000 + j.line().from().yMm() / 1.6, within(EXACT)));
        assertThat(across(trapezoid().platform().joists())).containsExactly(23.5, 423.5, 823.5, 1223.5, 1576.5);
    }

    @Test
    void beyond_the_end_of_a_joist_its_neighbour_carries_up_to_the_slanted_side() {
        List<JoistLine> joists = trapezoid().platform().joists();
        assertThat(area(joists)).isCloseTo((3000 + 4000) / 2.0 * 1600, within(EXACT));
        // The last joist alone carries from the fourth's end on; there its width starts at its whole distance to the
        // fourth joist plus 23.5 and shrinks to 23.5 at its own end.
        List<AreaStrip> last = joists.get(4).strips();
        AreaStrip taper = last.get(last.size() - 2);
        assertThat(taper.fromMm()).isCloseTo(3000 + 1223.5 / 1.6, within(EXACT));
        assertThat(taper.toMm()).isCloseTo(3000 + 1576.5 / 1.6, within(EXACT));
        assertThat(taper.widthFromMm()).isCloseTo(353 + 23.5, within(EXACT));
        assertThat(taper.widthToMm()).isCloseTo(23.5, within(EXACT));
        assertThat(taper.areaMm2()).isCloseTo((353 + 23.5 + 23.5) / 2 * 353 / 1.6, within(EXACT));
    }

    @Test
    void the_tip_beyond_all_joists_is_carried_at_the_nearest_end() {
        List<JoistLine> joists = trapezoid().platform().joists();
        List<AreaStrip> last = joists.get(4).strips();
        AreaStrip tip = last.get(last.size() - 1);
        // A triangle 23.5 high with its tip at the upper right corner.
        assertThat(tip.areaMm2()).isCloseTo(23.5 * 23.5 / 1.6 / 2, within(EXACT));
        assertThat(tip.fromMm()).isEqualTo(tip.toMm()).isCloseTo(joists.get(4).lengthMm(), within(EXACT));
    }

    @Test
    void a_sliver_shorter_than_a_joists_breadth_holds_no_joist() {
        // Below the apex of a triangle of 90 degrees a line half a breadth away cuts just a breadth; a sharper apex
        // less.
        assertThat(Decks.outline(0, 0, 1000, 0, 500, 1000)
                        .joists(1, 0, 400)
                        .platform()
                        .joists())
                .allMatch(j -> j.lengthMm() >= 47)
                .hasSize(3);
    }

    @Test
    void a_heavy_item_is_shared_by_the_joists_under_it() {
        // 400 to 900 in y, 1000 to 2000 in x: joists at 423.5 (200 on either side) and 823.5.
        List<JoistLine> joists = trapezoid()
                .heavyItem("planter", 2, 1000, 400, 2000, 400, 2000, 900, 1000, 900)
                .platform()
                .joists();
        List<AreaStrip> onSecond = item(joists.get(1), 0);
        List<AreaStrip> onThird = item(joists.get(2), 0);
        assertThat(onSecond).singleElement().satisfies(s -> {
            assertThat(s.fromMm()).isCloseTo(1000, within(EXACT));
            assertThat(s.toMm()).isCloseTo(2000, within(EXACT));
            assertThat(s.widthFromMm()).isCloseTo(623.5 - 400, within(EXACT));
            assertThat(s.areaMm2()).isCloseTo(1000 * 223.5, within(EXACT));
        });
        assertThat(onThird.stream().mapToDouble(AreaStrip::areaMm2).sum())
                .isCloseTo(1000 * (900 - 623.5), within(EXACT));
        assertThat(joists.stream().filter(j -> !item(j, 0).isEmpty())).hasSize(2);
    }

    @Test
    void of_a_heavy_item_only_what_stands_on_the_platform_counts() {
        // Half of a square of 1000 overhangs the lower side; a second item stands elsewhere.
        List<JoistLine> joists = trapezoid()
                .heavyItem("bath", 12, 1000, -500, 2000, -500, 2000, 500, 1000, 500)
                .heavyItem("shed", 12, 9000, 9000, 9500, 9000, 9500, 9500)
                .platform()
                .joists();
        assertThat(joists.stream()
                        .flatMap(j -> item(j, 0).stream())
                        .mapToDouble(AreaStrip::areaMm2)
                        .sum())
                .isCloseTo(500 * 1000, within(EXACT));
        assertThat(joists).allMatch(j -> item(j, 1).isEmpty());
    }

    private static List<AreaStrip> item(JoistLine joist, int index) {
        return joist.strips().stream()
                .filter(s -> s.heavyItem().equals(Optional.of(index)))
                .toList();
    }

    @Test
    void joists_on_either_side_of_a_recess_are_no_neighbours() {
        // Legs of 1000 with two joists each between the recess's bottom and their ends.
        PlatformLayout p = Decks.outline(
                        0, 0, 4000, 0, 4000, 2000, 3000, 2000, 3000, 1000, 1000, 1000, 1000, 2000, 0, 2000)
                .joists(0, 1, 400)
                .platform();
        // From x = 4000 downwards: 3976.5, 3576.5, 3176.5 and 3023.5 inside the recess's side stand in the right leg.
        List<JoistLine> right =
                p.joists().stream().filter(j -> j.line().from().xMm() >= 3000).toList();
        assertThat(right.stream().map(j -> j.line().from().xMm()))
                .usingElementComparator((a, b) -> Math.abs(a - b) < EXACT ? 0 : Double.compare(a, b))
                .containsExactly(3976.5, 3576.5, 3176.5, 3023.5);
        assertThat(right.get(3).lengthMm()).isCloseTo(2000, within(EXACT));
        AreaStrip atRecess = right.get(3).strips().get(1);
        assertThat(atRecess.fromMm()).isCloseTo(1000, within(EXACT));
        assertThat(atRecess.widthFromMm()).isCloseTo(23.5 + (3176.5 - 3023.5) / 2, within(EXACT));
    }
}
