package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.JoistSeating;
import org.junit.jupiter.api.Test;

/**
 * A deck of 4800 by 3000 along a wall: joists away from the wall at 400, a ledger at the wall, a beam of two plies 600
 * inside the outer edge. Expected values by hand: sums and differences of the drawing's dimensions.
 */
class RectangleTest {

    private static final double EXACT = 1e-9;

    private static Decks deck() {
        return Decks.rectangle(4800, 3000)
                .joists(0, 1, 400)
                .ledger(line(0, 0, 4800, 0), Optional.of(45.0))
                .beam("b", 2, line(0, 2400, 4800, 2400), "a", "m", "z")
                .post("z", 4500, 2400)
                .post("a", 300, 2400)
                .post("m", 2400, 2400);
    }

    private final PlatformLayout platform = deck().platform();
    private final List<JoistLine> joists = platform.joists();

    @Test
    void joists_start_half_a_breadth_inside_and_follow_at_the_spacing() {
        // Along (0, 1) the axis across is (-1, 0): the first joist lies at the largest x.
        assertThat(joists.stream().map(j -> j.line().from().xMm()))
                .usingElementComparator((a, b) -> Math.abs(a - b) < EXACT ? 0 : Double.compare(a, b))
                .containsExactly(
                        4776.5, 4376.5, 3976.5, 3576.5, 3176.5, 2776.5, 2376.5, 1976.5, 1576.5, 1176.5, 776.5, 376.5,
                        23.5);
    }

    @Test
    void joists_are_numbered_and_named() {
        assertThat(joists.get(2).number()).isEqualTo(3);
        assertThat(joists.get(2).label()).isEqualTo("joist 3 of terrace");
        assertThat(joists.get(2).pointer().value()).isEqualTo("/platforms/0/joists");
    }

    @Test
    void the_last_joist_takes_the_place_of_one_closer_than_half_a_breadth() {
        // 47 + 2 x 400 + 23 leaves 23 to the last place, 47 + 2 x 400 + 24 leaves 24.
        assertThat(Decks.rectangle(870, 3000).joists(0, 1, 400).platform().joists())
                .hasSize(3)
                .last()
                .satisfies(j -> assertThat(j.line().from().xMm()).isCloseTo(23.5, within(EXACT)));
        assertThat(Decks.rectangle(871, 3000).joists(0, 1, 400).platform().joists())
                .hasSize(4);
    }

    @Test
    void a_strip_no_wider_than_a_joist_has_one_joist_in_its_middle() {
        assertThat(Decks.rectangle(40, 3000).joists(0, 1, 400).platform().joists())
                .singleElement()
                .satisfies(j -> assertThat(j.line().from().xMm()).isCloseTo(20, within(EXACT)))
                .satisfies(j -> assertThat(j.spacingMm()).isZero())
                .satisfies(j -> assertThat(j.fieldSize()).isEqualTo(1));
    }

    @Test
    void a_joist_spans_from_the_ledgers_face_to_the_beam_and_cantilevers_beyond() {
        // The ledger of 47 lies on the wall's face at y = 0.
        assertThat(joists).allSatisfy(j -> {
            assertThat(j.line().from().yMm()).isCloseTo(47, within(EXACT));
            assertThat(j.lengthMm()).isCloseTo(2953, within(EXACT));
            assertThat(j.spans())
                    .containsExactly(
                            new Span(Span.Kind.BETWEEN_SUPPORTS, 0, 2353),
                            new Span(Span.Kind.CANTILEVER_AT_END, 2353, 2953));
        });
    }

    @Test
    void a_joist_bears_on_the_whole_breadth_of_the_beam_and_on_the_ledger_as_stated() {
        MemberSupport ledger = joists.get(0).supports().get(0);
        MemberSupport beam = joists.get(0).supports().get(1);
        assertThat(ledger.kind()).isEqualTo(MemberSupport.Kind.LEDGER);
        assertThat(ledger.contactLengthMm()).hasValue(45);
        assertThat(ledger.seating()).isEqualTo(JoistSeating.HANGERS);
        assertThat(beam.kind()).isEqualTo(MemberSupport.Kind.BEAM);
        assertThat(beam.id()).isEqualTo("b");
        assertThat(beam.pointer().value()).isEqualTo("/platforms/0/beams/0");
        assertThat(beam.contactLengthMm()).hasValue(94);
    }

    @Test
    void a_joist_that_ends_over_the_beam_bears_only_up_to_its_end() {
        // The beam's centre 20 inside the joists' end: 47 of half the beam plus 20.
        assertThat(contactWithBeamAt(2980)).hasValueCloseTo(67.0, within(EXACT));
        // The beam's centre at the joists' end.
        assertThat(contactWithBeamAt(3000)).hasValueCloseTo(47.0, within(EXACT));
        // The beam's centre 40 outside: 7 of the beam's half are left.
        assertThat(contactWithBeamAt(3040)).hasValueCloseTo(7.0, within(EXACT));
    }

    @Test
    void a_joist_is_carried_by_a_beam_only_where_it_overlaps_it() {
        // The beam of 94 begins 47 before its line, so that the joists' ends at 3000 touch it where the line is at
        // 3047.
        assertThat(supportsWithBeamAt(3047 - 40)).isEqualTo(1);
        assertThat(supportsWithBeamAt(3047 - 1)).isEqualTo(1);
        assertThat(supportsWithBeamAt(3047 - 1e-6)).isEqualTo(1);
        assertThat(supportsWithBeamAt(3047)).isZero();
        assertThat(supportsWithBeamAt(3047 + 1e-6)).isZero();
        assertThat(supportsWithBeamAt(3047 + 1)).isZero();
        assertThat(supportsWithBeamAt(3047 + 40)).isZero();
        assertThat(deckWithBeamAt(3047).platform().joists().get(0).spans()).isEmpty();
    }

    private static int supportsWithBeamAt(double y) {
        return deckWithBeamAt(y).platform().joists().get(0).supports().size();
    }

    @Test
    void a_joist_hangs_on_a_ledger_only_where_it_reaches_its_face() {
        // The ledger's back lies at its line, its face 47 towards the joists; these end at y = 3000.
        assertThat(hungOnLedgerAt(3000)).allMatch(j -> j.supports().size() == 1 && near(j.lengthMm(), 2953));
        assertThat(hungOnLedgerAt(3046)).allMatch(j -> j.supports().size() == 1 && near(j.lengthMm(), 2999));
        assertThat(hungOnLedgerAt(3047)).allMatch(j -> j.supports().size() == 1 && near(j.lengthMm(), 3000));
        assertThat(hungOnLedgerAt(3047 + 1e-6)).allMatch(j -> j.supports().isEmpty());
        assertThat(hungOnLedgerAt(3048)).allMatch(j -> j.supports().isEmpty());
        assertThat(hungOnLedgerAt(3060)).allMatch(j -> j.supports().isEmpty());
    }

    @Test
    void a_joist_that_is_drawn_past_the_back_of_its_ledger_ends_at_its_face() {
        assertThat(hungOnLedgerAt(2941)).allMatch(j -> j.supports().size() == 1 && near(j.lengthMm(), 2894));
    }

    private static boolean near(double actual, double expected) {
        return Math.abs(actual - expected) < EXACT;
    }

    private static List<JoistLine> hungOnLedgerAt(double y) {
        return Decks.rectangle(4800, 3000)
                .joists(0, 1, 400)
                .ledger(line(-1000, y, 6000, y), Optional.of(45.0))
                .platform()
                .joists();
    }

    private static Decks deckWithBeamAt(double y) {
        return Decks.rectangle(4800, 3000).joists(0, 1, 400).beam("b", 2, line(0, y, 4800, y));
    }

    private static OptionalDouble contactWithBeamAt(double y) {
        return deckWithBeamAt(y).platform().joists().get(0).supports().get(0).contactLengthMm();
    }

    @Test
    void a_beam_drawn_at_a_skew_of_30_degrees_gives_twice_its_breadth_to_a_joist() {
        // Crossing angle 30 degrees: 94 / sin 30 = 188.
        double rise = 4800 / StrictMath.tan(StrictMath.toRadians(30));
        JoistLine middle = Decks.rectangle(4800, 12000)
                .joists(0, 1, 400)
                .beam("b", 2, line(0, 1000, 4800, 1000 + rise))
                .platform()
                .joists()
                .get(6);
        assertThat(middle.supports().get(0).contactLengthMm()).hasValueCloseTo(188.0, within(1e-6));
        assertThat(middle.supports().get(0).atMm())
                .isCloseTo(1000 + 2376.5 / StrictMath.tan(StrictMath.toRadians(30)), within(1e-6));
    }

    private static List<JoistLine> hungOnBeamAt(double y, double fromX, double toX) {
        return Decks.rectangle(4800, 3000)
                .joists(0, 1, 400)
                .beam("b", 2, line(fromX, y, toX, y), BeamSeating.ON_POST, JoistSeating.HANGERS)
                .platform()
                .joists();
    }

    @Test
    void joists_in_hangers_are_pieces_on_each_side_of_their_beam() {
        // A beam of 94 with its middle at 1800: 1753 before it, 3000 - 1847 = 1153 behind it.
        List<JoistLine> pieces = hungOnBeamAt(1800, 0, 4800);
        assertThat(pieces).hasSize(26);
        assertThat(pieces.get(0).lengthMm()).isCloseTo(1753, within(EXACT));
        assertThat(pieces.get(1).lengthMm()).isCloseTo(1153, within(EXACT));
        assertThat(pieces.get(0).line().from().xMm())
                .isEqualTo(pieces.get(1).line().from().xMm());
        assertThat(pieces.get(0).supports()).singleElement().satisfies(s -> {
            assertThat(s.atMm()).isCloseTo(1753, within(EXACT));
            assertThat(s.contactLengthMm()).isEmpty();
            assertThat(s.seating()).isEqualTo(JoistSeating.HANGERS);
        });
        assertThat(pieces.get(1).supports())
                .singleElement()
                .satisfies(s -> assertThat(s.atMm()).isZero());
        assertThat(pieces.stream().map(JoistLine::number)).doesNotHaveDuplicates();
        assertThat(pieces.stream()
                        .flatMap(j -> j.strips().stream())
                        .mapToDouble(AreaStrip::areaMm2)
                        .sum())
                .isCloseTo(4800.0 * 3000, within(1e-3));
    }

    @Test
    void a_hung_joist_carries_the_deck_to_the_middle_of_its_beam() {
        JoistLine second = hungOnBeamAt(1800, 0, 4800).get(2);
        assertThat(second.strips().stream().mapToDouble(AreaStrip::areaMm2).sum())
                .isCloseTo(400.0 * 1800, within(1e-3));
    }

    @Test
    void a_beam_names_the_hung_joists_of_both_its_sides() {
        PlatformLayout p = Decks.rectangle(4800, 3000)
                .joists(0, 1, 400)
                .beam("b", 2, line(0, 1800, 4800, 1800), BeamSeating.ON_POST, JoistSeating.HANGERS)
                .platform();
        assertThat(p.beams().get(0).joists()).hasSize(26);
    }

    @Test
    void what_overhangs_a_beam_by_less_than_a_joists_breadth_is_no_joist() {
        // Behind the beam's face at 2953 + 0.5 there are 46.5 left, at 2952.5 + 0.5 there are 47.
        assertThat(hungOnBeamAt(2906.5, 0, 4800)).hasSize(13);
        assertThat(hungOnBeamAt(2906, 0, 4800)).hasSize(26);
        assertThat(hungOnBeamAt(2906.5, 0, 4800).stream()
                        .flatMap(j -> j.strips().stream())
                        .mapToDouble(AreaStrip::areaMm2)
                        .sum())
                .isCloseTo(4800.0 * 3000, within(1e-3));
    }

    @Test
    void a_beam_carries_a_joist_as_far_as_it_lies_under_it() {
        // The joists at x = 23.5 and 376.5, the second from 353 to 400.
        assertThat(carriedFrom(400 - 1e-6)).containsExactly(1, 0);
        assertThat(carriedFrom(400)).containsExactly(0, 0);
        assertThat(carriedFrom(353)).containsExactly(1, 0);
    }

    @Test
    void a_joist_half_beside_the_end_of_its_beam_bears_with_half() {
        // The joist from 353 to 400 on a beam of 94 that begins at 376.5.
        JoistLine joist = Decks.rectangle(4800, 3000)
                .joists(0, 1, 400)
                .beam("b", 2, line(376.5, 2400, 4800, 2400))
                .platform()
                .joists()
                .get(11);
        assertThat(joist.supports().get(0).contactLengthMm()).hasValueCloseTo(47.0, within(EXACT));
    }

    private static List<Integer> carriedFrom(double x) {
        return Decks.rectangle(4800, 3000)
                .joists(0, 1, 400)
                .beam("b", 1, line(x, 2400, 4800, 2400))
                .platform()
                .joists()
                .subList(11, 13)
                .stream()
                .map(j -> j.supports().size())
                .toList();
    }

    @Test
    void a_beam_along_the_joists_carries_none() {
        PlatformLayout p = Decks.rectangle(4800, 3000)
                .joists(0, 1, 400)
                .beam("b", 1, line(776.5, 0, 776.5, 3000))
                .platform();
        assertThat(p.joists()).allSatisfy(j -> assertThat(j.supports()).isEmpty());
        assertThat(p.beams().get(0).joists()).isEmpty();
    }

    @Test
    void two_beams_at_one_place_support_a_joist_once() {
        assertThat(deck().beam("c", 1, line(0, 2400.5, 4800, 2400.5))
                        .platform()
                        .joists()
                        .get(0)
                        .supports())
                .hasSize(2);
    }

    @Test
    void the_tributary_width_reaches_midway_to_the_neighbours_and_to_the_outline() {
        assertThat(widths()).hasSize(13);
        assertThat(widths().get(0)).isCloseTo(23.5 + 200, within(EXACT));
        assertThat(widths().get(1)).isCloseTo(400, within(EXACT));
        assertThat(widths().get(11)).isCloseTo(200 + 353 / 2.0, within(EXACT));
        assertThat(widths().get(12)).isCloseTo(353 / 2.0 + 23.5, within(EXACT));
        assertThat(joists.stream()
                        .flatMap(j -> j.strips().stream())
                        .mapToDouble(AreaStrip::areaMm2)
                        .sum())
                .isCloseTo(4800.0 * 3000, within(1e-3));
        assertThat(platform.areaMm2()).isEqualTo(4800.0 * 3000);
    }

    private List<Double> widths() {
        return joists.stream()
                .map(j -> {
                    // Over the ledger, and along the joist.
                    assertThat(j.strips()).hasSize(2);
                    AreaStrip s = j.strips().get(1);
                    assertThat(s.widthFromMm()).isEqualTo(s.widthToMm());
                    assertThat(s.toMm() - s.fromMm()).isCloseTo(2953, within(EXACT));
                    assertThat(j.strips().get(0).areaMm2()).isCloseTo(47 * s.widthFromMm(), within(1e-6));
                    return s.widthFromMm();
                })
                .toList();
    }

    @Test
    void spacing_is_the_largest_to_a_neighbour_and_the_field_counts_all() {
        assertThat(joists.get(0).spacingMm()).isCloseTo(400, within(EXACT));
        assertThat(joists.get(12).spacingMm()).isCloseTo(353, within(EXACT));
        assertThat(joists.get(0).fieldSize()).isEqualTo(13);
    }

    @Test
    void a_beam_spans_between_its_posts_and_cantilevers_beyond() {
        BeamLine beam = platform.beams().get(0);
        assertThat(beam.supports().stream().map(MemberSupport::id)).containsExactly("a", "m", "z");
        assertThat(beam.supports().stream().map(MemberSupport::pointer).map(Object::toString))
                .containsExactly("/platforms/0/posts/1", "/platforms/0/posts/2", "/platforms/0/posts/0");
        assertThat(beam.spans())
                .containsExactly(
                        new Span(Span.Kind.CANTILEVER_AT_START, 0, 300),
                        new Span(Span.Kind.BETWEEN_SUPPORTS, 300, 2400),
                        new Span(Span.Kind.BETWEEN_SUPPORTS, 2400, 4500),
                        new Span(Span.Kind.CANTILEVER_AT_END, 4500, 4800));
        assertThat(beam.supports())
                .allSatisfy(s -> assertThat(s.contactLengthMm()).hasValue(100));
    }

    @Test
    void a_beam_bears_on_a_post_at_its_end_with_half_the_post() {
        BeamLine beam = Decks.rectangle(4800, 3000)
                .beam("b", 2, line(0, 2400, 4800, 2400), "a", "z")
                .post("a", 0, 2400)
                .post("z", 4780, 2400)
                .platform()
                .beams()
                .get(0);
        assertThat(beam.supports().get(0).contactLengthMm()).hasValue(50);
        assertThat(beam.supports().get(1).contactLengthMm()).hasValue(70);
        assertThat(beam.spans())
                .containsExactly(
                        new Span(Span.Kind.BETWEEN_SUPPORTS, 0, 4780),
                        new Span(Span.Kind.CANTILEVER_AT_END, 4780, 4800));
    }

    @Test
    void a_beam_bolted_to_its_posts_does_not_bear_on_them() {
        BeamLine beam = Decks.rectangle(4800, 3000)
                .beam("b", 2, line(0, 2400, 4800, 2400), BeamSeating.BOTH_SIDES, JoistSeating.ON_TOP, "a")
                .post("a", 300, 2400)
                .platform()
                .beams()
                .get(0);
        assertThat(beam.supports()).singleElement().satisfies(s -> {
            assertThat(s.contactLengthMm()).isEmpty();
            assertThat(s.seating()).isEqualTo(JoistSeating.HANGERS);
        });
    }

    @Test
    void beam_and_ledger_name_the_joists_on_them_in_order() {
        List<JoistBearing> onBeam = platform.beams().get(0).joists();
        List<JoistBearing> onLedger = platform.ledger().orElseThrow().joists();
        assertThat(onBeam).hasSize(13).first().satisfies(b -> {
            assertThat(b.joist()).isEqualTo(12);
            assertThat(b.joistSupport()).isEqualTo(1);
            assertThat(b.atMm()).isCloseTo(23.5, within(EXACT));
        });
        assertThat(onLedger).hasSize(13).last().satisfies(b -> {
            assertThat(b.joist()).isZero();
            assertThat(b.joistSupport()).isZero();
            assertThat(b.atMm()).isCloseTo(4776.5, within(EXACT));
        });
    }

    @Test
    void a_cantilever_of_a_millimetre_counts_and_a_shorter_one_does_not() {
        assertThat(deckWithBeamAt(2999).platform().joists().get(0).spans()).hasSize(2);
        assertThat(deckWithBeamAt(2999.5).platform().joists().get(0).spans()).hasSize(1);
    }

    @Test
    void the_same_deck_gives_the_same_layout() {
        assertThat(deck().layout()).isEqualTo(deck().layout());
    }
}
