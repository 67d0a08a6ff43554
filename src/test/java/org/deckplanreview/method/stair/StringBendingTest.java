package org.deckplanreview.method.stair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.method.TimberParameters.parameters;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Decks;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.TimberParameters;
import org.deckplanreview.submission.Occupancy;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.Stating;
import org.deckplanreview.submission.Strings;
import org.deckplanreview.submission.SubjectKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Strings by EN 1995-1-1 (6.11) with k_mod 0.7 (short-term) and γ_M 1.3, C24; loads 2.5 kN/m2 and 2 kN for one dwelling, 5 and
 * 3.6 for the public (UK NA to EN 1991-1-1, from memory), 0.5 kN/m2 of weight. Expected values by hand.
 */
class StringBendingTest {

    private static Evaluation evaluate(int risers, double depth, Optional<Strings> strings, Occupancy occupancy) {
        Layout layout = Decks.rectangle(4000, 3000)
                .occupancy(occupancy)
                .section("string", 47, depth)
                .stair(Stating.a(Stair.class)
                        .with("id", "S1")
                        .with("line", Decks.line(1000, 0, 2000, 0))
                        .with("risers", risers)
                        .with("rise", new Length(170))
                        .with("going", new Length(250))
                        .with("strings", strings)
                        .made())
                .layout();
        ReviewContext context = new ReviewContext(layout, TimberParameters.NO_LOADS, List.of(Derived.known("A")));
        return StairMethods.methods()
                .get(0)
                .evaluate(layout.subjects(SubjectKind.STAIRS).get(0), parameters(), context);
    }

    private static double stress(int risers, int count, Occupancy occupancy) {
        Evaluation e = evaluate(
                risers,
                220,
                Optional.of(new Strings("string", count, Optional.of(new Length(220)), Optional.empty())),
                occupancy);
        return ((Measure) ((Evaluation.Measured) e).found()).value();
    }

    private static final double MODULUS = 47 * 220 * 220 / 6.0;

    @Test
    void a_short_string_is_governed_by_the_load_on_one_place() {
        assertThat(stress(5, 2, Occupancy.SINGLE_DWELLING))
                .isCloseTo((1.35 * 0.0005 * 500 * 1e6 / 8 + 1.5 * 2000 * 1000 / 4) / MODULUS, within(1e-9));
    }

    @Test
    void a_long_string_of_a_public_stair_is_governed_by_the_load_on_each_area() {
        assertThat(stress(16, 2, Occupancy.PUBLIC))
                .isCloseTo((1.35 * 0.0005 + 1.5 * 0.005) * 500 * 3750 * 3750 / 8 / MODULUS, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"2, 2", "3, 2", "4, 3", "5, 4"})
    void an_inner_string_takes_the_width_between_its_neighbours(int count, double parts) {
        assertThat(stress(16, count, Occupancy.PUBLIC))
                .isCloseTo(
                        Math.max(
                                        (1.35 * 0.0005 + 1.5 * 0.005) * 1000 / parts * 3750 * 3750 / 8,
                                        1.35 * 0.0005 * 1000 / parts * 3750 * 3750 / 8 + 1.5 * 3600 * 3750 / 4)
                                / MODULUS,
                        within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"85, true", "84, true", "83, false"})
    void a_string_of_84_mm_just_carries_four_treads(double depth, boolean complies) {
        // 792187.5 / (47 x 84^2 / 6) = 14.33; 24 x 0.7 / 1.3 x (150 / 84)^0.2 = 14.51. At 83: 14.68 and 14.55.
        Evaluation e = evaluate(
                5,
                depth,
                Optional.of(new Strings("string", 2, Optional.of(new Length(depth)), Optional.empty())),
                Occupancy.SINGLE_DWELLING);
        assertThat(((Evaluation.Measured) e).utilisation() <= 1).isEqualTo(complies);
    }

    @Test
    void a_string_that_is_cut_to_the_steps_bends_on_what_is_left_of_it() {
        Evaluation cut = evaluate(
                5,
                220,
                Optional.of(new Strings("string", 2, Optional.of(new Length(110)), Optional.empty())),
                Occupancy.SINGLE_DWELLING);
        assertThat(((Measure) ((Evaluation.Measured) cut).found()).value())
                .isCloseTo(4 * stress(5, 2, Occupancy.SINGLE_DWELLING), within(1e-9));
    }

    @Test
    void what_cutting_leaves_of_a_string_must_be_stated() {
        assertThat(evaluate(
                        5,
                        220,
                        Optional.of(new Strings("string", 2, Optional.empty(), Optional.empty())),
                        Occupancy.SINGLE_DWELLING))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly("/platforms/0/stairs/0/strings/throatDepth"));
    }

    @Test
    void strings_must_be_described() {
        assertThat(evaluate(5, 220, Optional.empty(), Occupancy.SINGLE_DWELLING))
                .isInstanceOfSatisfying(
                        Evaluation.Missing.class,
                        m -> assertThat(m.needs())
                                .extracting(n -> n.pointer().value())
                                .containsExactly("/platforms/0/stairs/0/strings"));
    }
}
