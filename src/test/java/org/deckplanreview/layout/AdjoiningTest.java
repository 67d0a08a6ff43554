package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AdjoiningTest {

    private static Decks row(double gapMm) {
        return Decks.rectangle(3000, 3000)
                .beside(Decks.outline(3000 + gapMm, 0, 6000, 0, 6000, 3000, 3000 + gapMm, 3000))
                .beside(Decks.outline(6000, 0, 9000, 0, 9000, 3000, 6000, 3000));
    }

    @Test
    void platforms_in_a_row_are_joined_through_the_one_between_them() {
        assertThat(Adjoining.of(row(0).layout().submission(), 0)).containsExactly(0, 1, 2);
        assertThat(Adjoining.of(row(0).layout().submission(), 2)).containsExactly(0, 1, 2);
    }

    @Test
    void people_step_across_300_mm_and_no_more() {
        assertThat(Adjoining.of(row(300).layout().submission(), 0)).containsExactly(0, 1, 2);
        assertThat(Adjoining.of(row(301).layout().submission(), 0)).containsExactly(0);
        assertThat(Adjoining.of(row(301).layout().submission(), 1)).containsExactly(1, 2);
    }

    @Test
    void a_platform_above_another_is_not_joined_to_it() {
        Decks decks = Decks.rectangle(3000, 3000).beside(Decks.outline(1000, 0, 4000, 0, 4000, 3000, 1000, 3000));
        assertThat(Adjoining.of(decks.layout().submission(), 0)).containsExactly(0);
    }
}
