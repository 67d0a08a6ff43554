package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.Stating;
import org.junit.jupiter.api.Test;

/** Levels down a post, and footings. Expected values by hand: boards 28, joists 147, beam 197 deep, posts 100 square. */
class PostsAndFootingsTest {

    private static final double EXACT = 1e-9;

    private static Decks frame() {
        return Decks.rectangle(4800, 3000)
                .level(0, 0, 900)
                .noFall()
                .boards(1, 0)
                .joists(0, 1, 400)
                .post("a", 300, 2400)
                .post("z", 4500, 2400)
                .pad("a", 400, 300, 50)
                .pad("z", 400, 300, 50);
    }

    private static Decks deck() {
        return frame().beam("b", 2, line(0, 2400, 4800, 2400), "a", "z");
    }

    private static Decks deck(BeamSeating seating, JoistSeating joists) {
        return frame().beam("b", 2, line(0, 2400, 4800, 2400), seating, joists, "a", "z");
    }

    private static PostPlace post(Decks deck) {
        return deck.levelGround(100).platform().posts().get(0);
    }

    @Test
    void a_post_reaches_from_the_pad_to_the_beams_underside() {
        PostPlace post = post(deck());
        assertThat(post.topLevelMm().get()).isEqualTo(900 - 28 - 147 - 197);
        assertThat(post.groundLevelMm().get()).isEqualTo(100);
        assertThat(post.bottomLevelMm().get()).isEqualTo(150);
        assertThat(post.heightMm().get()).isEqualTo(528 - 150);
        assertThat(post.beams()).containsExactly("b");
        assertThat(post.footing().orElseThrow().posts()).containsExactly("a");
    }

    @Test
    void a_post_between_or_beside_plies_reaches_to_the_beams_top() {
        assertThat(post(deck(BeamSeating.BOTH_SIDES, JoistSeating.ON_TOP))
                        .topLevelMm()
                        .get())
                .isEqualTo(900 - 28 - 147);
        assertThat(post(deck(BeamSeating.ONE_SIDE, JoistSeating.HANGERS))
                        .topLevelMm()
                        .get())
                .isEqualTo(900 - 28);
    }

    @Test
    void a_beam_flush_with_its_joists_lies_under_the_boards() {
        assertThat(post(deck(BeamSeating.ON_POST, JoistSeating.HANGERS))
                        .topLevelMm()
                        .get())
                .isEqualTo(900 - 28 - 197);
    }

    @Test
    void a_post_under_two_beams_reaches_to_the_lower_one() {
        assertThat(post(deck().beam("c", 1, line(300, 0, 300, 2400), BeamSeating.ON_POST, JoistSeating.HANGERS, "a"))
                        .topLevelMm()
                        .get())
                .isEqualTo(528);
    }

    @Test
    void posts_on_a_slope_differ_by_the_ground_under_them() {
        // Ground falls 1 in 10 along x: 420 between posts 4200 apart.
        Decks deck = deck().ground(-100, -100, 10).ground(9900, -100, -990).ground(-100, 9900, 10);
        PlatformLayout p = deck.platform();
        assertThat(p.posts().get(1).heightMm().get()
                        - p.posts().get(0).heightMm().get())
                .isCloseTo(420, within(EXACT));
    }

    @Test
    void posts_on_a_slope_through_four_points_follow_the_triangle_they_stand_in() {
        // Level but for one corner, 600 lower; the lower diagonal runs from it, so that both triangles fall towards it.
        Decks deck = deck().ground(0, 0, 0)
                .ground(6000, 0, 0)
                .ground(6000, 6000, -600)
                .ground(0, 6000, 0);
        PlatformLayout p = deck.platform();
        // (300, 2400) lies above the diagonal, where the level is -x / 10; (4500, 2400) below it, -y / 10.
        assertThat(p.posts().get(0).groundLevelMm().get()).isCloseTo(-30, within(EXACT));
        assertThat(p.posts().get(1).groundLevelMm().get()).isCloseTo(-240, within(EXACT));
    }

    @Test
    void the_fall_lowers_the_top_of_a_post() {
        assertThat(post(deck().fall(80, 0, 1)).topLevelMm().get()).isCloseTo(528 - 30, within(EXACT));
    }

    @Test
    void an_embedded_post_ends_below_the_ground_and_stands_clear_from_the_ground() {
        PostPlace post = post(deckWith(embedded(Optional.of(600.0), Optional.empty())));
        assertThat(post.bottomLevelMm().get()).isEqualTo(100 - 600);
        assertThat(post.heightMm().get()).isEqualTo(528 - 100);
    }

    private static Decks deckWith(Footing footing) {
        return Decks.rectangle(4800, 3000)
                .level(0, 0, 900)
                .noFall()
                .boards(1, 0)
                .joists(0, 1, 400)
                .beam("b", 2, line(0, 2400, 4800, 2400), "a")
                .post("a", 300, 2400)
                .footing(footing);
    }

    private static Footing embedded(Optional<Double> embedment, Optional<Double> thickness) {
        return Stating.a(Footing.class)
                .with("id", "a")
                .with("kind", FootingKind.EMBEDDED_POST)
                .with("shape", FootingShape.ROUND)
                .with("breadth", new Length(400))
                .with("depth", new Length(750))
                .with("thickness", thickness.map(Length::new))
                .with("embedment", embedment.map(Length::new))
                .with("topAboveGround", new Length(50))
                .made();
    }

    @Test
    void a_post_without_footing_or_beam_asks_for_it() {
        PostPlace post = Decks.rectangle(4800, 3000)
                .levelGround(0)
                .post("a", 300, 2400, Optional.empty())
                .platform()
                .posts()
                .get(0);
        assertThat(post.footing()).isEmpty();
        assertThat(pointers(post.topLevelMm())).containsExactly("/platforms/0/beams");
        assertThat(pointers(post.bottomLevelMm())).containsExactly("/platforms/0/posts/0/footing");
        assertThat(pointers(post.heightMm())).containsExactly("/platforms/0/beams", "/platforms/0/posts/0/footing");
    }

    @Test
    void without_boards_or_joists_the_levels_under_them_are_not_known() {
        PostPlace post = Decks.rectangle(4800, 3000)
                .level(0, 0, 900)
                .levelGround(0)
                .beam("b", 2, line(0, 2400, 4800, 2400), "a")
                .post("a", 300, 2400)
                .platform()
                .posts()
                .get(0);
        assertThat(pointers(post.topLevelMm())).containsExactly("/platforms/0/boards", "/platforms/0/joists");
    }

    private static Iterable<String> pointers(Derived<?> derived) {
        return derived.needs().stream()
                .map(Need::pointer)
                .map(Object::toString)
                .distinct()
                .toList();
    }

    @Test
    void a_pad_holds_its_area_times_its_thickness() {
        FootingPlace footing = deck().levelGround(100).platform().footings().get(1);
        assertThat(footing.areaMm2()).isEqualTo(160_000);
        assertThat(footing.concreteVolumeMm3().get()).isEqualTo(160_000 * 300);
        assertThat(footing.groundLevelMm().get()).isEqualTo(100);
        assertThat(footing.posts()).containsExactly("z");
        assertThat(footing.label()).isEqualTo("footing z");
        assertThat(footing.pointer().value()).isEqualTo("/platforms/0/footings/1");
    }

    @Test
    void a_rectangular_pad_has_two_sides() {
        Footing pad = Stating.a(Footing.class)
                .with("id", "a")
                .with("label", "strip")
                .with("kind", FootingKind.PAD)
                .with("shape", FootingShape.RECTANGULAR)
                .with("breadth", new Length(400))
                .with("length", new Length(900))
                .made();
        FootingPlace footing =
                deckWith(pad).levelGround(0).platform().footings().get(0);
        assertThat(footing.areaMm2()).isEqualTo(360_000);
        assertThat(footing.label()).isEqualTo("strip");
        assertThat(pointers(footing.concreteVolumeMm3())).containsExactly("/platforms/0/footings/0/thickness");
        assertThat(pointers(
                        deckWith(pad).levelGround(0).platform().posts().get(0).heightMm()))
                .containsExactly("/platforms/0/footings/0/topAboveGround");
    }

    @Test
    void concrete_around_a_post_goes_from_its_top_to_its_depth_less_the_post() {
        // Round 400: pi / 4 x 400^2 x (750 + 50) less 100 x 100 x (600 + 50).
        FootingPlace footing = deckWith(embedded(Optional.of(600.0), Optional.empty()))
                .platform()
                .footings()
                .get(0);
        assertThat(footing.areaMm2()).isCloseTo(125_663.706, within(1e-3));
        assertThat(footing.concreteVolumeMm3().get()).isCloseTo(125_663.7061 * 800 - 6_500_000, within(1.0));
    }

    @Test
    void concrete_less_thick_than_the_embedment_holds_no_more_of_the_post_than_its_thickness() {
        FootingPlace footing = deckWith(embedded(Optional.of(600.0), Optional.of(300.0)))
                .platform()
                .footings()
                .get(0);
        assertThat(footing.concreteVolumeMm3().get()).isCloseTo((125_663.7061 - 10_000) * 300, within(1.0));
    }

    @Test
    void an_embedded_post_of_unknown_embedment_asks_for_it() {
        PlatformLayout p = deckWith(embedded(Optional.empty(), Optional.empty()))
                .levelGround(0)
                .platform();
        assertThat(pointers(p.footings().get(0).concreteVolumeMm3()))
                .containsExactly("/platforms/0/footings/0/embedment");
        assertThat(pointers(p.posts().get(0).bottomLevelMm())).containsExactly("/platforms/0/footings/0/embedment");
        assertThat(p.posts().get(0).heightMm().get()).isEqualTo(528);
    }

    @Test
    void a_footing_without_a_post_asks_for_one() {
        FootingPlace footing = Decks.rectangle(4800, 3000)
                .levelGround(0)
                .pad("f", 400, 300, 50)
                .platform()
                .footings()
                .get(0);
        assertThat(footing.posts()).isEmpty();
        assertThat(pointers(footing.groundLevelMm())).containsExactly("/platforms/0/footings/0");
    }
}
