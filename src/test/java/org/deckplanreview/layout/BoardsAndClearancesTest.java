package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.util.Optional;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.JoistSeating;
import org.junit.jupiter.api.Test;

/** Boards over the joists, and timber over the ground. Expected values by plain trigonometry and sums of depths. */
class BoardsAndClearancesTest {

    private static final double EXACT = 1e-9;

    private static Decks deck() {
        return Decks.rectangle(4847, 3000).level(0, 0, 500).fall(80, 0, 1).joists(0, 1, 400);
    }

    private static BoardField boards(Decks deck) {
        return deck.platform().boards().orElseThrow();
    }

    @Test
    void boards_square_to_the_joists_span_the_spacing() {
        BoardField boards = boards(deck().boards(1, 0));
        assertThat(boards.spanMm().get()).isCloseTo(400, within(EXACT));
        assertThat(boards.overhangMm().get()).isCloseTo(23.5, within(EXACT));
        assertThat(boards.label()).isEqualTo("boards of terrace");
        assertThat(boards.pointer().value()).isEqualTo("/platforms/0/boards");
    }

    @Test
    void boards_at_45_degrees_span_the_spacing_times_the_root_of_two() {
        BoardField boards = boards(deck().boards(-1, 1));
        assertThat(boards.spanMm().get()).isCloseTo(400 * Math.sqrt(2), within(EXACT));
        assertThat(boards.overhangMm().get()).isCloseTo(23.5 * Math.sqrt(2), within(EXACT));
        assertThat(boards.angleToFallDegrees().get()).isCloseTo(45, within(EXACT));
    }

    @Test
    void boards_at_30_degrees_to_the_joists_span_twice_the_spacing() {
        assertThat(boards(deck().boards(0.5, Math.sqrt(3) / 2)).spanMm().get()).isCloseTo(800, within(1e-6));
    }

    @Test
    void boards_along_the_joists_span_nothing_that_can_be_told() {
        BoardField boards = boards(deck().boards(0, -1));
        assertThat(boards.spanMm().needs()).singleElement().satisfies(n -> {
            assertThat(n.pointer().value()).isEqualTo("/platforms/0/boards/direction");
            assertThat(n.what()).isEqualTo("a direction of the boards that crosses the joists");
        });
    }

    @Test
    void boards_without_joists_or_on_one_joist_ask_for_joists() {
        assertThat(boards(Decks.rectangle(4800, 3000).boards(1, 0)).spanMm().needs())
                .singleElement()
                .extracting(n -> n.pointer().value())
                .isEqualTo("/platforms/0/joists");
        assertThat(boards(Decks.rectangle(40, 3000).boards(1, 0).joists(0, 1, 400))
                        .spanMm()
                        .needs())
                .singleElement()
                .extracting(n -> n.what())
                .isEqualTo("two or more joists side by side under the boards");
    }

    @Test
    void boards_beyond_the_end_of_a_joist_overhang_up_to_the_slanted_side() {
        BoardField boards = boards(Decks.outline(0, 0, 3000, 0, 4000, 1600, 0, 1600)
                .joists(1, 0, 400)
                .boards(0, 1));
        // From a joist down to the slanted side, at the end of the joist below: the spacing.
        assertThat(boards.overhangMm().get()).isCloseTo(400, within(1e-6));
    }

    @Test
    void boards_along_and_across_the_fall() {
        assertThat(boards(deck().boards(0, -3)).angleToFallDegrees().get()).isEqualTo(0);
        assertThat(boards(deck().boards(2, 0)).angleToFallDegrees().get()).isEqualTo(90);
    }

    @Test
    void the_angle_to_the_fall_needs_a_fall() {
        assertThat(boards(Decks.rectangle(4800, 3000).boards(1, 0))
                        .angleToFallDegrees()
                        .needs())
                .singleElement()
                .extracting(n -> n.pointer().value())
                .isEqualTo("/platforms/0/fall");
        assertThat(boards(Decks.rectangle(4800, 3000).noFall().boards(1, 0))
                        .angleToFallDegrees()
                        .isKnown())
                .isFalse();
    }

    @Test
    void clear_heights_follow_from_the_layers() {
        PlatformLayout p = Decks.rectangle(4800, 3000)
                .level(0, 0, 500)
                .noFall()
                .levelGround(-100)
                .boards(1, 0)
                .joists(0, 1, 400)
                .ledger(line(0, 0, 4800, 0), Optional.empty())
                .beam("b", 2, line(0, 2400, 4800, 2400))
                .beam("c", 2, line(0, 1000, 4800, 1000), BeamSeating.ON_POST, JoistSeating.HANGERS)
                .platform();
        assertThat(p.boards().orElseThrow().groundClearanceMm().get()).isEqualTo(600 - 28);
        assertThat(p.joists()).allMatch(j -> j.groundClearanceMm().get() == 600 - 28 - 147);
        assertThat(p.beams().get(0).groundClearanceMm().get()).isEqualTo(600 - 28 - 147 - 197);
        assertThat(p.beams().get(1).groundClearanceMm().get()).isEqualTo(600 - 28 - 197);
        assertThat(p.ledger().orElseThrow().groundClearanceMm().get()).isEqualTo(600 - 28 - 147);
        assertThat(p.ledger().orElseThrow().joists().get(0).atMm()).isCloseTo(23.5, within(EXACT));
    }

    @Test
    void a_mound_under_the_deck_is_the_least_clearance_of_boards_and_of_the_joist_over_it() {
        Decks deck = Decks.rectangle(4800, 3000)
                .level(0, 0, 500)
                .noFall()
                .boards(1, 0)
                .joists(0, 1, 400)
                .ground(-100, -100, 0)
                .ground(4900, -100, 0)
                .ground(4900, 3100, 0)
                .ground(-100, 3100, 0)
                .ground(2376.5, 1500, 120);
        PlatformLayout p = deck.platform();
        assertThat(p.boards().orElseThrow().groundClearanceMm().get()).isCloseTo(500 - 28 - 120, within(EXACT));
        assertThat(p.joists().get(6).groundClearanceMm().get()).isCloseTo(500 - 28 - 147 - 120, within(EXACT));
        // The outermost joist at x = 23.5 passes lower ground: on the way from the rim at -100 to the mound.
        double outer = 120 * (23.5 + 100) / (2376.5 + 100);
        assertThat(p.joists().get(12).groundClearanceMm().get()).isCloseTo(500 - 28 - 147 - outer, within(1e-6));
    }

    @Test
    void clearance_outside_the_survey_is_not_known() {
        PlatformLayout p = Decks.rectangle(4800, 3000)
                .level(0, 0, 500)
                .noFall()
                .boards(1, 0)
                .joists(0, 1, 400)
                .ground(0, 0, 0)
                .ground(4800, 0, 0)
                .ground(0, 3000, 0)
                .platform();
        assertThat(p.joists().get(0).groundClearanceMm().isKnown()).isFalse();
        assertThat(p.boards().orElseThrow().groundClearanceMm().needs())
                .singleElement()
                .extracting(n -> n.pointer().value())
                .isEqualTo("/site/groundLevels");
    }
}
