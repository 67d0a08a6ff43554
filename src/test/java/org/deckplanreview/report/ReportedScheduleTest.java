package org.deckplanreview.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Locale;
import org.deckplanreview.layout.Decks;
import org.deckplanreview.schedule.GivenPractice;
import org.deckplanreview.schedule.ScheduledDecks;
import org.junit.jupiter.api.Test;

/** The site schedule as JSON. */
class ReportedScheduleTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static String json(Decks deck) {
        return WrittenReport.text(ReportBuilder.report(deck.layout(), GivenPractice.parameters()));
    }

    @Test
    void a_schedule_is_valid_against_the_published_schema() {
        assertThat(ReportSchema.faults(json(ScheduledDecks.withEmbeddedPost()))).isEmpty();
    }

    @Test
    void a_schedule_in_which_much_is_missing_is_valid_too() throws Exception {
        String json = json(Decks.rectangle(3000, 2000)
                .post("A", 500, 500)
                .beam("B", 1, Decks.line(0, 500, 3000, 500), "A")
                .boards(1, 0));

        assertThat(ReportSchema.faults(json)).isEmpty();
        JsonNode schedule = JSON.readTree(json).at("/schedule");
        assertThat(schedule.has("concreteM3")).isFalse();
        assertThat(schedule.at("/platforms/0/posts/0").has("lengthMm")).isFalse();
        assertThat(schedule.at("/needs").size()).isPositive();
    }

    @Test
    void numbers_are_rounded_for_show() throws Exception {
        JsonNode schedule =
                JSON.readTree(json(ScheduledDecks.withEmbeddedPost())).at("/schedule");

        // pi * 0.04 * 0.95 - 0.0065 = 0.11288…
        assertThat(schedule.at("/concreteM3").asText()).isEqualTo("0.112881");
        assertThat(schedule.at("/platforms/0/posts/0/lengthMm").asText()).isEqualTo("1128");
    }

    @Test
    void an_edition_without_site_practice_gives_no_schedule() throws Exception {
        assertThat(JSON.readTree(WrittenReport.text(ReportBuilder.report())).has("schedule"))
                .isFalse();
    }

    @Test
    void the_same_deck_gives_the_same_bytes_in_any_locale() {
        String first = json(ScheduledDecks.withEmbeddedPost());
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(json(ScheduledDecks.withEmbeddedPost())).isEqualTo(first);
        } finally {
            Locale.setDefault(locale);
        }
    }
}
