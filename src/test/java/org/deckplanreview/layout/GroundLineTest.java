package org.deckplanreview.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class GroundLineTest {

    @Test
    void level_ground_is_one_stretch_from_end_to_end() {
        Layout layout = Decks.rectangle(3000, 2400).levelGround(-500).layout();
        assertThat(GroundLine.along(layout, Decks.line(0, 100, 3000, 100)))
                .singleElement()
                .satisfies(
                        s -> assertThat(s).extracting(GroundLine.Place::levelMm).containsExactly(-500.0, -500.0));
    }

    /** A roof: level 0 along its ridge at x = 1000, -100 at x = 0 and at x = 2000. */
    @Test
    void the_ground_bends_where_its_survey_does() {
        Layout layout = Decks.rectangle(2000, 1000)
                .ground(0, 0, -100)
                .ground(0, 1000, -100)
                .ground(1000, 0, 0)
                .ground(1000, 1000, 0)
                .ground(2000, 0, -100)
                .ground(2000, 1000, -100)
                .layout();
        List<GroundLine.Place> line =
                GroundLine.along(layout, Decks.line(0, 400, 2000, 400)).get(0);
        assertThat(line).anySatisfy(p -> {
            assertThat(p.at().xMm()).isCloseTo(1000, within(1e-6));
            assertThat(p.levelMm()).isCloseTo(0, within(1e-6));
        });
        assertThat(line.get(0).levelMm()).isCloseTo(-100, within(1e-6));
    }

    @Test
    void ground_that_was_not_surveyed_is_left_out() {
        Layout none = Decks.rectangle(3000, 2400).layout();
        assertThat(GroundLine.along(none, Decks.line(0, 100, 3000, 100))).isEmpty();
    }
}
