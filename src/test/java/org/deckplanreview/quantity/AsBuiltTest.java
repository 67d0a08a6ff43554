package org.deckplanreview.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.quantity.QuantitiesTest.observe;

import org.assertj.core.data.Offset;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Observation;
import org.deckplanreview.submission.SubjectKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Posts at (300, 600), (2400, 600) and (4500, 600); the platform falls 1 in 80 towards y = 0. */
class AsBuiltTest {

    private static final Offset<Double> EXACT = within(1e-9);

    private static PaperDeck levels(String levels) {
        return new PaperDeck().withJson("/siteMeasurements", "{\"levels\": [" + levels + "]}");
    }

    private static PaperDeck diagonals(String diagonals) {
        return new PaperDeck().withJson("/siteMeasurements", "{\"diagonals\": [" + diagonals + "]}");
    }

    private static double value(Observation seen) {
        return ((Measure) ((Observation.Found) seen).value()).value();
    }

    private static Observation fall(PaperDeck deck) {
        return observe("measured fall", SubjectKind.PLATFORMS, deck);
    }

    @Test
    void the_measured_fall_is_drop_over_run_along_the_drawn_fall() {
        // 50 mm over 3000 mm along y; the 1000 mm sideways are no run.
        assertThat(value(fall(levels("{\"at\": [1000, 3500], \"z\": 900}, {\"at\": [2000, 500], \"z\": 850}"))))
                .isCloseTo(50.0 / 3000, EXACT);
    }

    @Test
    void the_flatter_half_counts() {
        assertThat(
                        value(
                                fall(
                                        levels(
                                                "{\"at\": [0, 3600], \"z\": 900}, {\"at\": [0, 1800], \"z\": 860}, {\"at\": [0, 0], \"z\": 850}"))))
                .isCloseTo(10.0 / 1800, EXACT);
    }

    @Test
    void two_levels_close_to_each_other_tell_no_fall_beside_a_long_run() {
        assertThat(
                        value(
                                fall(
                                        levels(
                                                "{\"at\": [0, 3600], \"z\": 900}, {\"at\": [0, 3500], \"z\": 900}, {\"at\": [0, 0], \"z\": 855}"))))
                .isCloseTo(45.0 / 3600, EXACT);
    }

    @Test
    void a_fall_the_wrong_way_is_negative() {
        assertThat(value(fall(levels("{\"at\": [0, 3600], \"z\": 900}, {\"at\": [0, 0], \"z\": 936}"))))
                .isCloseTo(-0.01, EXACT);
    }

    @Test
    void levels_beside_the_platform_are_not_its_own() {
        assertThat(fall(levels("{\"at\": [-10, 3600], \"z\": 900}, {\"at\": [-10, 0], \"z\": 850}")))
                .isEqualTo(new Observation.NotApplicable("no levels were measured on it"));
    }

    @Test
    void a_platform_drawn_level_is_not_measured_for_fall() {
        assertThat(fall(levels("{\"at\": [0, 3600], \"z\": 900}, {\"at\": [0, 0], \"z\": 850}")
                        .withJson("/platforms/0/fall", "{\"gradient\": \"level\"}")))
                .isEqualTo(new Observation.NotApplicable("the platform is level"));
    }

    @Test
    void a_measured_platform_without_a_drawn_fall_asks_for_it() {
        assertThat(fall(levels("{\"at\": [0, 3600], \"z\": 900}, {\"at\": [0, 0], \"z\": 850}")
                        .without("/platforms/0/fall")))
                .isInstanceOfSatisfying(
                        Observation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly("/platforms/0/fall"));
    }

    @ParameterizedTest
    @CsvSource({"2100, 0", "2105, 5", "2090, 10"})
    void a_measured_diagonal_is_held_against_the_posts_as_drawn(double measured, double deviation) {
        Observation seen = observe(
                "deviation of measured diagonals",
                SubjectKind.PLATFORMS,
                diagonals("{\"from\": \"P1\", \"to\": \"P2\", \"length\": " + measured + "}"));

        assertThat(value(seen)).isCloseTo(deviation, EXACT);
        assertThat(((Observation.Found) seen).remark()).isEqualTo("post P1 to post P2");
    }

    @Test
    void a_deck_without_measurements_has_neither() {
        for (String quantity :
                new String[] {"difference of measured diagonals", "deviation of measured diagonals", "measured fall"}) {
            assertThat(observe(quantity, SubjectKind.PLATFORMS, new PaperDeck()))
                    .as(quantity)
                    .isInstanceOf(Observation.NotApplicable.class);
        }
    }

    @Test
    void two_measurements_that_are_no_diagonals_of_one_rectangle_are_not_compared() {
        assertThat(observe(
                        "difference of measured diagonals",
                        SubjectKind.PLATFORMS,
                        diagonals("{\"from\": \"P1\", \"to\": \"P2\", \"length\": 2100},"
                                + "{\"from\": \"P2\", \"to\": \"P3\", \"length\": 2190}")))
                .isEqualTo(new Observation.NotApplicable("no two diagonals of one rectangle were measured on it"));
    }

    @Test
    void both_diagonals_of_a_rectangle_of_posts_are_compared() {
        PaperDeck deck = diagonals("{\"from\": \"P1\", \"to\": \"P5\", \"length\": 2580},"
                        + "{\"from\": \"P4\", \"to\": \"P2\", \"length\": 2587}")
                .withJson(
                        "/platforms/0/posts",
                        "[{\"id\": \"P1\", \"timber\": \"P\", \"at\": [300, 600]},"
                                + "{\"id\": \"P2\", \"timber\": \"P\", \"at\": [2400, 600]},"
                                + "{\"id\": \"P3\", \"timber\": \"P\", \"at\": [4500, 600]},"
                                + "{\"id\": \"P4\", \"timber\": \"P\", \"at\": [300, 2100]},"
                                + "{\"id\": \"P5\", \"timber\": \"P\", \"at\": [2400, 2100]}]");

        Observation seen = observe("difference of measured diagonals", SubjectKind.PLATFORMS, deck);

        assertThat(value(seen)).isCloseTo(7, EXACT);
    }
}
