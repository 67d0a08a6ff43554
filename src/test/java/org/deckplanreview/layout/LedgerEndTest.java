package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.deckplanreview.layout.Decks.line;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Joists of 47 mm at the end of a ledger. */
class LedgerEndTest {

    private static final double EXACT = 1e-9;

    private static PlatformLayout deck(double end) {
        return Decks.rectangle(4800, 3000)
                .joists(0, 1, 400)
                .ledger(line(0, 0, end, 0), Optional.of(45.0))
                .beam("b", 2, line(0, 2400, 4800, 2400))
                .platform();
    }

    private static JoistLine first(PlatformLayout deck) {
        return deck.joists().get(0);
    }

    @Test
    void a_joist_wholly_in_front_of_the_ledger_stays() {
        assertThat(first(deck(4800)).line().from().xMm()).isCloseTo(4776.5, within(EXACT));
        assertThat(deck(4800).assumptions()).isEmpty();
    }

    @Test
    void a_joist_half_beside_the_ledgers_end_is_set_in_front_of_it() {
        // The ledger ends at 4780, 27 mm into the joist from 4753 to 4800.
        PlatformLayout deck = deck(4780);
        assertThat(first(deck).line().from().xMm()).isCloseTo(4756.5, within(EXACT));
        assertThat(first(deck).supports()).hasSize(2);
        assertThat(deck.assumptions())
                .containsExactly("The joist 1 of terrace is set aside by 20 mm, wholly in front of the end of ledger of"
                        + " terrace, because only a part of its breadth would meet it.");
    }

    @Test
    void a_joist_beside_the_ledgers_end_does_not_hang_on_it() {
        for (double gap : new double[] {0, 1e-6, 1, 40}) {
            assertThat(first(deck(4753 - gap)).supports())
                    .as("ledger that ends " + gap + " mm beside the joist")
                    .hasSize(1);
        }
    }

    /** A house at x < 0 and y < 0; the ledger on its wall at y = 0 goes 20 mm past its corner. */
    @Test
    void the_joist_at_a_houses_corner_runs_on_beside_the_ledgers_end() {
        PlatformLayout deck = Decks.outline(-3000, 0, 0, 0, 0, -3000, 3000, -3000, 3000, 3000, -3000, 3000)
                .joists(0, 1, 400)
                .ledger(line(-3000, 0, 20, 0), Optional.of(45.0))
                .beam("outer", 2, line(-3000, 2800, 3000, 2800))
                .beam("corner", 2, line(0, 100, 3000, 100))
                .beam("inner", 2, line(0, -2800, 3000, -2800))
                .platform();
        assertThat(deck.joists()).allSatisfy(j -> assertThat(j.supports()).hasSizeGreaterThanOrEqualTo(2));
        assertThat(deck.joists())
                .anySatisfy(j -> assertThat(j.line().from().xMm()).isCloseTo(43.5, within(EXACT)));
        assertThat(deck.assumptions()).singleElement().asString().contains("20 mm, wholly beside the end of ledger");
    }
}
