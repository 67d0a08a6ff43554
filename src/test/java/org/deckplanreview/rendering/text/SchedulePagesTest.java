package org.deckplanreview.rendering.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.deckplanreview.layout.Decks;
import org.deckplanreview.report.ReportBuilder;
import org.deckplanreview.schedule.GivenPractice;
import org.deckplanreview.schedule.ScheduledDecks;
import org.junit.jupiter.api.Test;

class SchedulePagesTest {

    private static String text(Decks deck) {
        return TextRendering.render(
                ReportBuilder.report(deck.layout(), GivenPractice.parameters()), WorkingShown.GOVERNING);
    }

    @Test
    void a_post_has_one_line_with_its_place_length_and_levels() {
        assertThat(text(ScheduledDecks.withEmbeddedPost()).lines())
                .contains(
                        "Posts                        along    offset    length    bottom       top",
                        "post A                         500       500      1128      -600       528");
    }

    @Test
    void hold_points_stand_out_in_the_order_of_work() {
        assertThat(text(ScheduledDecks.withEmbeddedPost()).lines())
                .contains("1.  Set out the posts.", "2.  HOLD: Measure the diagonals before the posts are concreted.");
    }

    @Test
    void pieces_are_told_with_what_to_buy_and_the_waste() {
        assertThat(text(ScheduledDecks.withEmbeddedPost()).lines())
                .contains(
                        "beam for frame, 47 x 197: 6.00 m in all",
                        "    2 x 3000    beam B",
                        "    1 x 2400    each into 1128",
                        "  Stock 2.40 m, waste 1.27 m (53.0 %)");
    }

    @Test
    void what_cannot_be_told_shows_as_a_question_mark_with_what_to_give() {
        assertThat(text(Decks.rectangle(3000, 2000).post("A", 500, 500)))
                .contains("post A                         500       500         ?         ?         ?")
                .containsPattern("the footings of terrace: /platforms/0/footings");
    }

    @Test
    void no_line_is_longer_than_80_characters_whatever_the_labels() {
        String text = text(ScheduledDecks.withEmbeddedPost().label("w".repeat(300)));

        assertThat(text.lines()).allMatch(l -> l.length() <= 80);
    }

    @Test
    void a_hostile_label_can_neither_forge_a_line_nor_steer_a_terminal() {
        String text = text(ScheduledDecks.withEmbeddedPost().label("deck\u001b[2J\r\npost A  1\u202e"));

        assertThat(text.codePoints())
                .noneMatch(c -> c != '\n' && (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT));
        assertThat(text.lines()).noneMatch(l -> l.startsWith("post A  1"));
    }
}
