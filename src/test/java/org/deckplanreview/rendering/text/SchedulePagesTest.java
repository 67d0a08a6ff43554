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

    /** 500 mm = 19.685 in, 1128 mm = 44.409 in, 600 mm = 23.622 in, 528 mm = 20.787 in. */
    @Test
    void in_feet_and_inches_a_post_has_one_line_with_place_and_length_and_one_with_its_levels() {
        assertThat(text(ScheduledDecks.withEmbeddedPost().writtenInInches()).lines())
                .contains(
                        "Posts                             along         offset         length",
                        "post A                      1'-7 11/16\"    1'-7 11/16\"     3'-8 7/16\"",
                        "Levels of posts                  bottom            top",
                        "post A                      -1'-11 5/8\"    1'-8 13/16\"");
    }

    /** 47 x 197 mm = 1.850 x 7.756 in, 6 m = 19.685 ft, 3000 mm = 118.110 in, 2400 mm = 94.488 in, 1.272 m = 4.173 ft. */
    @Test
    void in_feet_and_inches_pieces_are_told_with_what_to_buy_and_the_waste() {
        assertThat(text(ScheduledDecks.withEmbeddedPost().writtenInInches()).lines())
                .contains(
                        "beam for frame, 1 7/8\" x 7 3/4\": 19.69 ft in all",
                        "    2 x 9'-10 1/8\"      beam B",
                        "    1 x 7'-10 1/2\"      each into 3'-8 7/16\"",
                        "  Stock 7.87 ft, waste 4.17 ft (53.0 %)");
    }

    /** A round of 400 mm, 950 mm high, without 100 x 100 x 650 mm of post, is 0.112881 m3 or 3.986 ft3. */
    @Test
    void in_feet_and_inches_concrete_is_in_cubic_feet() {
        assertThat(text(ScheduledDecks.withEmbeddedPost().writtenInInches()))
                .contains("concrete in all                3.99 ft3");
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
