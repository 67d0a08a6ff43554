package org.deckplanreview.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.Decks;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.Boards;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.PostEnd;
import org.deckplanreview.submission.Submission;
import org.junit.jupiter.api.Test;

/** Lengths, boards, volumes and cut ends against the layout and against figures worked by hand. */
class TimberAndConcreteTest {

    private static final Offset<Double> EXACT = within(1e-6);

    private static Decks framed(double width, double depth, double spacing, int plies) {
        return Decks.rectangle(width, depth)
                .levelGround(0)
                .level(0, 0, 900)
                .fall(80, 0, 1)
                .boards(1, 0)
                .joists(0, 1, spacing)
                .ledger(line(0, 0, width, 0), Optional.of(45.0))
                .post("A", 300, depth - 300)
                .post("B", width - 300, depth - 300)
                .pad("A", 400, 900, 50)
                .pad("B", 500, 700, 50)
                .beam("front", plies, line(0, depth - 300, width, depth - 300), "A", "B");
    }

    private static Layout withGap(Decks deck, double gapMm, double dx, double dy) {
        return change(
                deck.submission(),
                p -> new Platform(
                        p.id(),
                        p.label(),
                        p.outline(),
                        p.level(),
                        p.fall(),
                        p.finishes(),
                        Optional.of(new Boards(
                                "board",
                                new Direction(dx, dy),
                                Optional.of(new Length(gapMm)),
                                Optional.empty(),
                                Optional.empty())),
                        p.joists(),
                        p.beams(),
                        p.ledger(),
                        p.posts(),
                        p.footings(),
                        p.edges(),
                        p.guards(),
                        p.braces(),
                        p.stairs(),
                        p.overRoom(),
                        p.coversVents()));
    }

    private static Layout change(Submission s, java.util.function.UnaryOperator<Platform> change) {
        return Layout.derive(new Submission(
                s.reference(),
                s.title(),
                s.units(),
                s.reviewOn(),
                s.ruleset(),
                s.use(),
                s.site(),
                s.timbers(),
                s.platforms().stream().map(change).toList(),
                s.protection(),
                s.siteMeasurements()));
    }

    private static SiteSchedule schedule(Layout layout) {
        return SiteSchedule.derive(layout, GivenPractice.practice());
    }

    @Property(tries = 60)
    void the_timber_list_is_as_long_as_the_layouts_members(
            @ForAll @IntRange(min = 1500, max = 9000) int width,
            @ForAll @IntRange(min = 1500, max = 7000) int depth,
            @ForAll @IntRange(min = 300, max = 700) int spacing,
            @ForAll @IntRange(min = 1, max = 3) int plies) {
        Layout layout = framed(width, depth, spacing, plies).layout();
        PlatformLayout p = layout.platforms().get(0);
        double members = p.joists().stream().mapToDouble(JoistLine::lengthMm).sum()
                + p.beams().stream()
                        .mapToDouble((BeamLine b) -> b.lengthMm() * b.plies())
                        .sum()
                + p.ledger().orElseThrow().lengthMm()
                + p.posts().stream()
                        .mapToDouble(post ->
                                post.topLevelMm().get() - post.bottomLevelMm().get())
                        .sum();

        List<TimberOrder> orders = schedule(layout).timber();

        assertThat(orders.stream().mapToDouble(TimberOrder::lengthMm).sum())
                .isCloseTo(members, within(members * 1e-12));
        for (TimberOrder order : orders) {
            double pieces = total(order.pieces());
            double cut = order.stock().stream()
                    .mapToDouble(s ->
                            s.count() * s.cutsMm().stream().mapToDouble(c -> c).sum())
                    .sum();
            assertThat(pieces)
                    .isCloseTo(order.lengthMm(), within(0.1 * p.joists().size()));
            assertThat(cut + total(order.overlong())).isCloseTo(pieces, EXACT);
            assertThat(order.stock().stream()
                            .mapToDouble(s -> s.count() * s.lengthMm())
                            .sum())
                    .isCloseTo(order.stockLengthMm(), EXACT);
            assertThat(order.wasteMm()).isCloseTo(order.stockLengthMm() - cut, EXACT);
        }
    }

    private static double total(List<TimberOrder.Pieces> pieces) {
        return pieces.stream().mapToDouble(p -> p.count() * p.lengthMm()).sum();
    }

    @Test
    void waste_is_told_in_percent_of_the_stock() {
        // 11 joists of 3500 from 3600 each: 1100 of 39600 is 2.777… percent.
        TimberOrder joists = schedule(
                        Decks.rectangle(4047, 3500).joists(0, 1, 400).layout())
                .timber()
                .get(0);

        assertThat(joists.pieces()).containsExactly(new TimberOrder.Pieces("joists of terrace", 3500, 11));
        assertThat(joists.stock()).containsExactly(new TimberOrder.Stock(3600, 11, List.of(3500.0)));
        assertThat(joists.wasteMm()).isCloseTo(1100, EXACT);
        assertThat(joists.wastePercent()).isCloseTo(100.0 * 1100 / 39600, EXACT);
    }

    @Test
    void a_joist_longer_than_any_stock_is_told_and_planned_for_no_stock() {
        TimberOrder joists = schedule(
                        Decks.rectangle(500, 6001).joists(0, 1, 453).layout())
                .timber()
                .get(0);

        assertThat(joists.stock()).isEmpty();
        assertThat(joists.overlong()).isEqualTo(joists.pieces());
        assertThat(joists.wastePercent()).isZero();
    }

    @Test
    void boards_lie_in_rows_from_edge_to_edge() {
        // 145 wide with gaps of 6: 23 rows cover 23 * 145 + 22 * 6 = 3467, so 3500 needs 24; 24 * 4000 mm.
        BoardCount.Laid laid = laid(withGap(Decks.rectangle(4000, 3500).joists(0, 1, 400), 6, 1, 0));

        assertThat(laid.rows()).isEqualTo(24);
        assertThat(laid.pieces()).isEqualTo(24);
        assertThat(laid.lengthMm()).isCloseTo(24 * 4000, EXACT);
        // Joists at 23.5, 423.5, … 3623.5 and 3976.5: 11, each under every board, two fixings each.
        assertThat(laid.crossings()).isEqualTo(24 * 11);
        assertThat(laid.fixings()).isEqualTo(2 * 24 * 11);
    }

    @Test
    void boards_that_fill_the_outline_exactly_need_no_further_row() {
        assertThat(laid(withGap(Decks.rectangle(1000, 4 * 145 + 3 * 5).joists(0, 1, 400), 5, 1, 0))
                        .rows())
                .isEqualTo(4);
        assertThat(laid(withGap(Decks.rectangle(1000, 4 * 145 + 3 * 5 + 6).joists(0, 1, 400), 5, 1, 0))
                        .rows())
                .isEqualTo(5);
    }

    @Test
    void a_notch_in_the_outline_shortens_or_parts_the_boards_beside_it() {
        // U-shape: 3000 x 1500 with a notch 1000 wide, 750 deep from the top: 5 rows of 150 whole, 5 rows in two
        // pieces.
        Layout u = withGap(
                Decks.outline(0, 0, 3000, 0, 3000, 1500, 2000, 1500, 2000, 750, 1000, 750, 1000, 1500, 0, 1500)
                        .joists(0, 1, 400),
                5,
                1,
                0);
        BoardCount.Laid laid = laid(u);

        assertThat(laid.rows()).isEqualTo(10);
        assertThat(laid.pieces()).isEqualTo(15);
        assertThat(laid.lengthMm()).isCloseTo(5 * 3000 + 5 * 2 * 1000, EXACT);
    }

    @Property(tries = 40)
    void boards_cover_at_least_the_outline(
            @ForAll @IntRange(max = 359) int degrees, @ForAll @IntRange(min = 2, max = 10) int gap) {
        double a = StrictMath.toRadians(degrees);
        Layout layout = withGap(
                Decks.outline(0, 0, 4000, 0, 4000, 2000, 2500, 3500, 0, 3000).joists(0, 1, 400),
                gap,
                StrictMath.cos(a),
                StrictMath.sin(a));
        double area = layout.platforms().get(0).areaMm2();

        assertThat(laid(layout).lengthMm() * (145 + gap)).isGreaterThan(area * (1 - 1e-9));
    }

    private static BoardCount.Laid laid(Layout layout) {
        return schedule(layout).platforms().get(0).boards().get(0).laid().get();
    }

    @Property(tries = 20)
    void the_concrete_is_that_of_the_geometry(@ForAll @IntRange(min = 300, max = 900) int side) {
        Layout layout = framed(4000, 3000, 400, 2)
                .post("C", 2000, 2700)
                .pad("C", side, 800, 50)
                .layout();
        double geometry = layout.platforms().get(0).footings().stream()
                .map(FootingPlace::concreteVolumeMm3)
                .mapToDouble(v -> v.get() / 1e9)
                .sum();

        SiteSchedule schedule = schedule(layout);

        assertThat(schedule.concreteM3().get()).isCloseTo(geometry, within(1e-12));
        // 0.4^2 * 0.9 + 0.5^2 * 0.7 + side^2 * 0.8
        assertThat(schedule.concreteM3().get()).isCloseTo(0.144 + 0.175 + side / 1e3 * side / 1e3 * 0.8, within(1e-9));
    }

    @Test
    void concrete_around_an_embedded_post_leaves_out_the_post() {
        FootingConcrete footing = schedule(ScheduledDecks.withEmbeddedPost().layout())
                .platforms()
                .get(0)
                .concrete()
                .get(0);

        // A cylinder of 0.4 m, 0.95 m high, less 0.1 x 0.1 x 0.65 m of post.
        assertThat(footing.volumeM3().get()).isCloseTo(Math.PI * 0.04 * 0.95 - 0.0065, within(1e-9));
    }

    @Test
    void both_ends_of_each_piece_are_cut_ends_but_for_a_posts_uncut_end_in_the_ground() {
        Decks deck = framed(4000, 3000, 400, 2);
        int posts = ends(schedule(deck.layout()), "posts");
        Layout uncut = change(
                deck.submission(),
                p -> new Platform(
                        p.id(),
                        p.label(),
                        p.outline(),
                        p.level(),
                        p.fall(),
                        p.finishes(),
                        p.boards(),
                        p.joists(),
                        p.beams(),
                        p.ledger(),
                        p.posts().stream()
                                .map(o -> new Post(
                                        o.id(),
                                        o.label(),
                                        o.timber(),
                                        o.at(),
                                        o.footing(),
                                        Optional.of(PostEnd.UNCUT),
                                        o.top(),
                                        Optional.empty(),
                                        o.holdDownResistance()))
                                .toList(),
                        p.footings(),
                        p.edges(),
                        p.guards(),
                        p.braces(),
                        p.stairs(),
                        p.overRoom(),
                        p.coversVents()));

        assertThat(posts).isEqualTo(4);
        assertThat(ends(schedule(uncut), "posts")).isEqualTo(2);
        assertThat(ends(schedule(uncut), "beams")).isEqualTo(4);
        assertThat(ends(schedule(uncut), "ledgers")).isEqualTo(2);
        assertThat(ends(schedule(uncut), "joists"))
                .isEqualTo(2 * uncut.platforms().get(0).joists().size());
    }

    private static int ends(SiteSchedule schedule, String of) {
        return schedule.cutEnds().stream()
                .filter(c -> c.of().equals(of))
                .findFirst()
                .orElseThrow()
                .ends()
                .get();
    }

    @Test
    void the_cut_ends_in_all_are_those_of_the_kinds_and_unknown_without_the_boards_gap() {
        SiteSchedule whole = schedule(withGap(framed(4000, 3000, 400, 2), 6, 1, 0));

        assertThat(whole.cutEndsInAll().get())
                .isEqualTo(
                        whole.cutEnds().stream().mapToInt(c -> c.ends().get()).sum());
        assertThat(schedule(framed(4000, 3000, 400, 2).layout()).cutEndsInAll().isKnown())
                .isFalse();
    }

    @Test
    void the_membrane_is_as_large_as_the_outline() {
        assertThat(schedule(framed(4000, 3000, 400, 2).layout())
                        .platforms()
                        .get(0)
                        .membraneAreaM2())
                .isCloseTo(12, EXACT);
    }

    @Test
    void one_deck_has_one_schedule() {
        Layout layout = withGap(framed(4321, 2987, 413, 2), 6, 3, 1);

        assertThat(schedule(layout)).isEqualTo(schedule(withGap(framed(4321, 2987, 413, 2), 6, 3, 1)));
        assertThat(Stream.of(schedule(layout)).map(SiteSchedule::orderOfWork))
                .containsExactly(List.of(
                        new WorkStep("Set out the posts.", false),
                        new WorkStep("Measure the diagonals before the posts are concreted.", true)));
    }

    /** Named here so that the beams' plies are seen to be counted. */
    @Test
    void each_ply_of_a_beam_is_a_piece() {
        Decks deck = framed(4000, 3000, 400, 3);
        Beam beam = deck.submission().platforms().get(0).beams().get(0);

        assertThat(schedule(deck.layout()).timber())
                .filteredOn(o -> o.label().equals("beam"))
                .singleElement()
                .satisfies(o ->
                        assertThat(o.pieces()).containsExactly(new TimberOrder.Pieces(beam.displayLabel(), 4000, 3)));
    }
}
