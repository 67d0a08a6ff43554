package org.deckplanreview.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.quantity.QuantitiesTest.joint;
import static org.deckplanreview.quantity.QuantitiesTest.observe;
import static org.deckplanreview.quantity.QuantitiesTest.spaBath;
import static org.deckplanreview.quantity.QuantitiesTest.stair;
import static org.deckplanreview.quantity.QuantitiesTest.value;

import java.util.List;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a quantity is more than a member of the submission. The wall of the deck lies at y = 3600, the deck below it. */
class ObservingTest {

    private static final String FALL = "/platforms/0/fall";

    @ParameterizedTest
    @CsvSource({"0, -1, true", "0, 1, false", "1, 0, true", "-1, 0, true", "100, -1, true", "100, 1, false"})
    void a_fall_may_run_away_from_the_wall_or_along_it(double dx, double dy, boolean away) {
        PaperDeck deck = new PaperDeck().with(FALL + "/direction", new double[] {dx, dy});
        assertThat(value(observe("fall away from building", SubjectKind.PLATFORMS, deck)))
                .isEqualTo(new Flag(away));
    }

    @Test
    void a_fall_towards_a_wall_without_ledger_is_seen_too() {
        PaperDeck deck = new PaperDeck().without("/platforms/0/ledger").with(FALL + "/direction", new int[] {0, 1});
        assertThat(value(observe("fall away from building", SubjectKind.PLATFORMS, deck)))
                .isEqualTo(new Flag(false));
    }

    @Test
    void the_ledger_tells_of_the_wall_where_edges_are_not_described() {
        PaperDeck deck = new PaperDeck().edgesUndescribed().with(FALL + "/direction", new int[] {0, 1});
        assertThat(value(observe("fall away from building", SubjectKind.PLATFORMS, deck)))
                .isEqualTo(new Flag(false));
    }

    @Test
    void a_deck_on_its_own_has_no_building_to_fall_away_from() {
        PaperDeck deck = new PaperDeck().without("/platforms/0/ledger").with("/platforms/0/edges/2/kind", "open");
        assertThat(observe("fall away from building", SubjectKind.PLATFORMS, deck))
                .isEqualTo(new Observation.NotApplicable("the platform meets no wall"));
    }

    @Test
    void a_level_platform_falls_by_nothing_and_nowhere() {
        PaperDeck deck = new PaperDeck().withJson(FALL, "{\"gradient\": \"level\"}");
        assertThat(value(observe("fall gradient", SubjectKind.PLATFORMS, deck)))
                .isEqualTo(Measure.of(0, MeasureUnit.RATIO));
        assertThat(observe("fall away from building", SubjectKind.PLATFORMS, deck))
                .isInstanceOf(Observation.NotApplicable.class);
        assertThat(observe("angle of boards to fall", SubjectKind.BOARDS, deck))
                .isInstanceOf(Observation.NotApplicable.class);
    }

    @ParameterizedTest
    @CsvSource({"1:80, 0.0125", "1:100, 0.01", "1:40, 0.025"})
    void a_gradient_is_one_over_its_run(String gradient, double expected) {
        PaperDeck deck = new PaperDeck().with(FALL + "/gradient", gradient);
        assertThat(value(observe("fall gradient", SubjectKind.PLATFORMS, deck)))
                .isEqualTo(Measure.of(expected, MeasureUnit.RATIO));
    }

    @Test
    void an_open_edge_without_guard_has_a_guard_of_no_height() {
        PaperDeck deck = new PaperDeck().without("/platforms/0/edges/0/guard");
        Observation.Found height = (Observation.Found) observe("guard height", SubjectKind.EDGES, deck);
        assertThat(height.value()).isEqualTo(Measure.mm(0));
        assertThat(height.remark()).isEqualTo("no guard");
        assertThat(value(observe("guard present", SubjectKind.EDGES, deck))).isEqualTo(new Flag(false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"guard infill", "largest opening", "guard climbable"})
    void a_guard_that_is_not_there_has_neither_infill_nor_openings(String quantity) {
        PaperDeck deck = new PaperDeck().without("/platforms/0/edges/0/guard");
        assertThat(observe(quantity, SubjectKind.EDGES, deck)).isInstanceOf(Observation.NotApplicable.class);
    }

    @Test
    void a_guard_without_infill_is_one_large_opening() {
        PaperDeck deck = new PaperDeck().with("/platforms/0/guards/0/infill", "none");
        assertThat(value(observe("largest opening", SubjectKind.EDGES, deck))).isEqualTo(Measure.mm(1100));
    }

    @Test
    void horizontal_rails_give_a_foothold_whatever_is_claimed() {
        PaperDeck deck = new PaperDeck()
                .with("/platforms/0/guards/0/infill", "horizontal-rails")
                .with("/platforms/0/guards/0/climbable", false);
        assertThat(value(observe("guard climbable", SubjectKind.EDGES, deck))).isEqualTo(new Flag(true));
    }

    @Test
    void sand_does_not_shrink() {
        PaperDeck deck =
                new PaperDeck().without("/site/soil/volumeChange").with("/site/soil/soilClass", "medium-dense-sand");
        assertThat(value(observe("volume change", SubjectKind.FOOTINGS, deck))).isEqualTo(new Word("none"));
    }

    @Test
    void a_post_on_a_pad_has_no_end_in_the_ground_and_no_embedment() {
        PaperDeck deck = new PaperDeck().without("/platforms/0/posts/0/groundEnd");
        assertThat(value(observe("ground end of post", SubjectKind.POSTS, deck)))
                .isEqualTo(new Word("not-in-ground"));
        assertThat(observe("embedment", SubjectKind.POSTS, deck)).isInstanceOf(Observation.NotApplicable.class);
    }

    @Test
    void an_embedded_post_cannot_have_its_end_out_of_the_ground() {
        PaperDeck deck = new PaperDeck()
                .with("/platforms/0/footings/0/kind", "embedded-post")
                .with("/platforms/0/posts/0/groundEnd", "not-in-ground");
        assertThat(observe("ground end of post", SubjectKind.POSTS, deck)).isInstanceOf(Observation.Missing.class);
    }

    @Test
    void the_length_of_a_post_counts_what_stands_in_the_ground() {
        PaperDeck deck = new PaperDeck().postLevels(-600, 1200);
        assertThat(value(observe("post length", SubjectKind.POSTS, deck))).isEqualTo(Measure.mm(1800));
    }

    @Test
    void durable_timber_left_untreated_has_no_treatment_to_judge() {
        PaperDeck deck = untreated();
        assertThat(value(observe("treated", SubjectKind.JOISTS, deck))).isEqualTo(new Flag(false));
        assertThat(observe("use class of treatment", SubjectKind.JOISTS, deck))
                .isInstanceOf(Observation.NotApplicable.class);
        assertThat(observe("service life", SubjectKind.JOISTS, deck)).isInstanceOf(Observation.NotApplicable.class);
        assertThat(observe("cut ends treated", SubjectKind.DECK, deck)).isInstanceOf(Observation.NotApplicable.class);
        assertThat(value(observe("treated timber in the deck", SubjectKind.DECK, deck)))
                .isEqualTo(new Flag(false));
    }

    @Test
    void treated_timber_needs_no_natural_durability() {
        assertThat(observe("heartwood class", SubjectKind.JOISTS, new PaperDeck()))
                .isInstanceOf(Observation.NotApplicable.class);
    }

    @Test
    void a_plate_has_a_thickness_and_a_screw_a_diameter() {
        PaperDeck plate = new PaperDeck().without("/protection/fixings/0");
        assertThat(observe("fixing diameter", SubjectKind.FIXINGS, plate))
                .isInstanceOf(Observation.NotApplicable.class);
        assertThat(observe("plate thickness", SubjectKind.FIXINGS, new PaperDeck()))
                .isInstanceOf(Observation.NotApplicable.class);
    }

    @Test
    void words_with_an_order_stand_in_it() {
        assertThat(Quantities.all().stream().map(Quantity::description).filter(QuantityDescription::ordered))
                .as(
                        "EN 335:2013 and AWPA U1, mildest first; volume change potential from none to high; grades, weakest first")
                .extracting(QuantityDescription::words)
                .containsExactly(
                        List.of("none", "low", "medium", "high"),
                        List.of("no.3", "no.2", "no.1", "select-structural"),
                        List.of("UC1", "UC2", "UC3.1", "UC3.2", "UC4", "UC5"),
                        List.of("UC3A", "UC3B", "UC4A", "UC4B", "UC4C"));
    }

    private static PaperDeck untreated() {
        PaperDeck deck = new PaperDeck();
        for (int i = 0; i < 4; i++) {
            deck.without("/timbers/" + i + "/treatment")
                    .withJson(
                            "/timbers/" + i + "/naturalDurability", "{\"heartwoodClass\": 1, \"heartwoodOnly\": true}");
        }
        return deck;
    }

    @Test
    void the_place_of_the_largest_drop_is_told() {
        Observation.Found drop = (Observation.Found) observe("drop", SubjectKind.EDGES, new PaperDeck().drop(601));
        Value expected = Measure.mm(601);
        assertThat(drop.value()).isEqualTo(expected);
        assertThat(drop.remark()).isEqualTo("at x = 0 mm, y = 0 mm");
    }

    @Test
    void the_working_says_whether_the_drop_goes_to_the_ground_or_to_a_platform() {
        Observation.Found open = (Observation.Found) observe("drop", SubjectKind.EDGES, new PaperDeck().drop(601));
        assertThat(open.working())
                .extracting(WorkingStep::meaning)
                .containsExactly("height of the boards above the ground beside the edge");
        Observation.Found step = (Observation.Found)
                observe("drop", SubjectKind.EDGES, new PaperDeck().drop(601).besidePlatform());
        Value expected = Measure.mm(601);
        assertThat(step.value()).isEqualTo(expected);
        assertThat(step.working())
                .extracting(WorkingStep::meaning)
                .containsExactly("step down to the boards of the platform beside the edge");
        assertThat(value(observe("edge kind", SubjectKind.EDGES, new PaperDeck().besidePlatform())))
                .isEqualTo(new Word("platform"));
    }

    @Test
    void closed_risers_have_neither_overlap_nor_opening() {
        for (String quantity : List.of("tread overlap", "riser opening")) {
            assertThat(observe(quantity, SubjectKind.STAIRS, stair(new PaperDeck())))
                    .as(quantity)
                    .isEqualTo(new Observation.NotApplicable("the risers are closed"));
        }
    }

    @Test
    void a_flight_without_handrail_has_no_height_of_it() {
        PaperDeck deck = stair(new PaperDeck()).withJson("/platforms/0/stairs/0/handrails", "{\"sides\": \"none\"}");
        assertThat(value(observe("handrail sides", SubjectKind.STAIRS, deck))).isEqualTo(new Word("none"));
        assertThat(observe("handrail height", SubjectKind.STAIRS, deck))
                .isEqualTo(new Observation.NotApplicable("the flight has no handrail"));
    }

    @Test
    void a_flight_without_guard_has_no_height_and_no_opening_of_it() {
        PaperDeck deck = stair(new PaperDeck()).without("/platforms/0/stairs/0/guard");
        assertThat(value(observe("flight guard present", SubjectKind.STAIRS, deck)))
                .isEqualTo(new Flag(false));
        for (String quantity : List.of("flight guard height", "opening in flight guard")) {
            assertThat(observe(quantity, SubjectKind.STAIRS, deck))
                    .as(quantity)
                    .isEqualTo(new Observation.NotApplicable("no guard stands beside the flight"));
        }
    }

    @Test
    void headroom_counts_where_something_stands_above() {
        assertThat(value(observe("headroom", SubjectKind.STAIRS, stair(new PaperDeck()))))
                .isEqualTo(Measure.mm(2400));
        assertThat(observe(
                        "headroom",
                        SubjectKind.STAIRS,
                        stair(new PaperDeck()).without("/platforms/0/stairs/0/headroom")))
                .isEqualTo(new Observation.NotApplicable("nothing is said to stand above the stair"));
    }

    @Test
    void risers_may_miss_the_climb_either_way() {
        assertThat(value(observe(
                        "difference between risers and climb",
                        SubjectKind.STAIRS,
                        stair(new PaperDeck()).with("/platforms/0/stairs/0/rise", 185))))
                .as("5 times 185 mm for a climb of 900 mm")
                .isEqualTo(Measure.mm(25));
    }

    @Test
    void a_beam_on_its_posts_has_no_joint_at_their_sides() {
        assertThat(observe("fasteners in joint", SubjectKind.BEAMS, new PaperDeck()))
                .isEqualTo(new Observation.NotApplicable("it rests on its posts"));
    }

    @Test
    void bolts_have_washers_and_screws_a_penetration() {
        assertThat(observe("screw penetration over diameter", SubjectKind.BEAMS, joint(new PaperDeck(), "bolt", 12)))
                .isEqualTo(new Observation.NotApplicable("no screw holds it at its posts"));
        for (String quantity : List.of("washer diameter over bolt diameter", "washer thickness over bolt diameter")) {
            assertThat(observe(quantity, SubjectKind.BEAMS, joint(new PaperDeck(), "screw", 8)))
                    .as(quantity)
                    .isEqualTo(new Observation.NotApplicable("no bolt holds it at its posts"));
        }
    }

    @ParameterizedTest
    @CsvSource({"on-post, 1", "one-side, 1", "both-sides, 2"})
    void plies_that_do_not_touch_are_not_fixed_to_each_other(String seating, int plies) {
        PaperDeck deck =
                new PaperDeck().with("/platforms/0/beams/0/seating", seating).with("/platforms/0/beams/0/plies", plies);
        assertThat(observe("ply fixing spacing", SubjectKind.BEAMS, deck))
                .isEqualTo(new Observation.NotApplicable("no two of its plies touch"));
    }

    @ParameterizedTest
    @CsvSource({"on-post, 2", "one-side, 2", "both-sides, 4"})
    void plies_that_touch_ask_for_their_fixings(String seating, int plies) {
        PaperDeck deck =
                new PaperDeck().with("/platforms/0/beams/0/seating", seating).with("/platforms/0/beams/0/plies", plies);
        assertThat(observe("ply fixing spacing", SubjectKind.BEAMS, deck)).isInstanceOf(Observation.Missing.class);
    }

    @Test
    void a_spa_bath_is_told_from_other_heavy_items() {
        assertThat(value(observe("spa bath", SubjectKind.DECK, new PaperDeck())))
                .isEqualTo(new Flag(false));
        assertThat(value(observe(
                        "spa bath",
                        SubjectKind.DECK,
                        spaBath(new PaperDeck()).with("/use/heavyItems/0/kind", "planter"))))
                .isEqualTo(new Flag(false));
    }
}
