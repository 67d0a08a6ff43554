package org.deckplanreview.method.decking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Decks;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.GivenParameters;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.TimberParameters;
import org.deckplanreview.submission.ManufacturedBoards;
import org.deckplanreview.submission.Stating;
import org.deckplanreview.submission.SubjectKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Joists along y under boards whose maker states 400 mm square to them and 300 mm at 45 degrees; plane trigonometry. */
class StatedJoistSpacingTest {

    private static final ManufacturedBoards MADE = Stating.a(ManufacturedBoards.class)
            .with("joistSpacing", Length.ofMm(400))
            .with("diagonalJoistSpacing", Length.ofMm(300))
            .made();

    private static Evaluation evaluate(Decks deck) {
        Layout layout = deck.layout();
        return new StatedJoistSpacing()
                .evaluate(
                        layout.subjects(SubjectKind.BOARDS).get(0),
                        new GivenParameters().with("leastJoists", "3").with("largestOverhang", "50 mm"),
                        new ReviewContext(layout, TimberParameters.NO_LOADS, List.of(Derived.known("A"))));
    }

    private static Evaluation.Measured measured(Decks deck) {
        Evaluation e = evaluate(deck);
        assertThat(e).isInstanceOf(Evaluation.Measured.class);
        return (Evaluation.Measured) e;
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 400, 1.0", "1, 0, 360, 0.9", "1, 1, 300, 1.0", "1, -1, 400, 1.33333", "1, 0.5, 400, 1.33333"})
    void the_spacing_that_counts_follows_from_the_angle(double dx, double dy, double spacing, double utilisation) {
        Decks deck = Decks.rectangle(3647, 2000).boards(dx, dy, MADE).joists(0, 1, spacing);
        assertThat(measured(deck).utilisation()).isCloseTo(utilisation, within(1e-5));
        assertThat(((Measure) measured(deck).found()).value()).isCloseTo(spacing, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0.999, 1", "0, 1"})
    void boards_nearly_along_the_joists_are_out_of_scope(double dx, double dy) {
        assertThat(evaluate(Decks.rectangle(3647, 2000).boards(dx, dy, MADE).joists(0, 1, 300)))
                .isInstanceOf(Evaluation.OutOfScope.class);
    }

    @Test
    void boards_on_two_joists_are_out_of_scope_and_on_three_are_not() {
        assertThat(evaluate(Decks.rectangle(447, 2000).boards(1, 0, MADE).joists(0, 1, 400)))
                .isInstanceOf(Evaluation.OutOfScope.class);
        assertThat(evaluate(Decks.rectangle(847, 2000).boards(1, 0, MADE).joists(0, 1, 400)))
                .isInstanceOf(Evaluation.Measured.class);
    }

    @Test
    void joists_and_the_spacing_that_counts_are_needed() {
        assertThat(evaluate(Decks.rectangle(3647, 2000).boards(1, 0, MADE))).isInstanceOf(Evaluation.Missing.class);
        ManufacturedBoards silent = Stating.a(ManufacturedBoards.class)
                .with("joistSpacing", MADE.joistSpacing())
                .made();
        Evaluation diagonal =
                evaluate(Decks.rectangle(3647, 2000).boards(1, 1, silent).joists(0, 1, 300));
        assertThat(((Evaluation.Missing) diagonal).needs())
                .extracting(need -> need.pointer().value())
                .containsExactly("/platforms/0/boards/manufactured/diagonalJoistSpacing");
    }

    @Test
    void boards_of_timber_are_not_its_affair() {
        assertThat(evaluate(Decks.rectangle(3647, 2000).boards(1, 0).joists(0, 1, 400)))
                .isInstanceOf(Evaluation.NotApplicable.class);
    }
}
