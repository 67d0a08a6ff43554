package org.deckplanreview.rendering.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.rendering.html.Form;
import org.deckplanreview.rendering.html.HtmlRendering;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a browser and axe-core say of the reports. axe-core's rules include contrast, WCAG 2.2, success criterion 1.4.3. */
class PagesOfSamplesTest {
    private static final int PHONE_PX = 390;
    private static final int DESKTOP_PX = 1280;
    private static final int LONGEST = 80;

    @RegisterExtension
    static final Browser BROWSER = new Browser();

    static List<String> samples() {
        return ReviewedDecks.names();
    }

    private static String html(DrawnDeck deck) {
        return HtmlRendering.render(deck, Form.SCREEN);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_sample_reads_without_moving_sideways_overlaps_barriers_or_outside_help(String sample) throws IOException {
        String html = html(ReviewedDecks.sample(sample));
        SoftAssertions softly = new SoftAssertions();
        for (int widthPx : List.of(DESKTOP_PX, PHONE_PX)) {
            BROWSER.open(html, widthPx);
            softly.assertThat(BROWSER.overlaps())
                    .as("labels that overlap at %d px", widthPx)
                    .isEmpty();
            BROWSER.setDetails(false);
            softly.assertThat(BROWSER.sideways())
                    .as("wider than %d px, closed", widthPx)
                    .isEmpty();
            BROWSER.setDetails(true);
            softly.assertThat(BROWSER.sideways())
                    .as("wider than %d px, open", widthPx)
                    .isEmpty();
            softly.assertThat(BROWSER.requests()).as("requests").isEmpty();
            softly.assertThat(BROWSER.complaints()).as("console").isEmpty();
        }
        BROWSER.thin();
        softly.assertThat(BROWSER.barriers()).as("axe-core").isEmpty();
        softly.assertAll();
    }

    @ParameterizedTest
    @CsvSource({PHONE_PX + ", true", DESKTOP_PX + ", false", DESKTOP_PX + ", true"})
    void a_whole_report_has_no_barriers(int widthPx, boolean open) throws IOException {
        BROWSER.open(html(ReviewedDecks.sample("first-sketch")), widthPx);
        BROWSER.setDetails(open);

        assertThat(BROWSER.barriers()).isEmpty();
    }

    @Test
    void what_is_closed_on_the_screen_is_printed_all_the_same() throws IOException {
        DrawnDeck deck = ReviewedDecks.sample("small-level-deck");
        BROWSER.open(html(deck), DESKTOP_PX);
        BROWSER.setDetails(false);

        assertThat(BROWSER.printed())
                .contains(deck.report().findings().stream()
                        .filter(f -> f.determination() != Determination.NOT_APPLICABLE)
                        .map(f -> f.citation().source().title())
                        .toList())
                .contains("Values from")
                .doesNotContain("Skip to the outcome");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script><script>console.error(1)</script><img src=x>=1+1&amp;'\"",
                "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW"
            })
    void a_hostile_label_of_the_greatest_length_does_nothing_and_fits(String label) throws IOException {
        assertThat(label).hasSizeLessThanOrEqualTo(LONGEST);
        DrawnDeck deck = ReviewedDecks.sample("many-faults", submission -> {
            submission.put("reference", label).put("title", label);
            ((ObjectNode) submission.at("/platforms/0")).put("label", label);
        });
        for (int widthPx : List.of(PHONE_PX, DESKTOP_PX)) {
            BROWSER.open(html(deck), widthPx);
            BROWSER.setDetails(true);

            assertThat(BROWSER.title()).startsWith("Deck plan review " + label + ": ");
            assertThat(BROWSER.sideways()).isEmpty();
            assertThat(BROWSER.overlaps()).isEmpty();
            assertThat(BROWSER.requests()).isEmpty();
            assertThat(BROWSER.complaints()).isEmpty();
        }
    }

    @Test
    void what_is_wrong_with_a_page_is_found() throws IOException {
        BROWSER.open("""
                <!DOCTYPE html><html><head><title>wrong</title></head><body>
                <p style="width: 2000px; color: #aaa; background: #fff">pale and wide</p>
                <img src="http://outside.invalid/picture.png">
                <svg viewBox="0 0 100 100" font-size="10"><text x="10" y="50">level</text>
                <text x="10" y="50" transform="rotate(45 10 50)">turned</text><text x="50" y="90">apart</text></svg>
                </body></html>
                """, PHONE_PX);

        assertThat(BROWSER.sideways()).singleElement().asString().contains("pale and wide");
        assertThat(BROWSER.overlaps()).containsExactly("\"level\" over \"turned\"");
        assertThat(BROWSER.requests()).containsExactly("http://outside.invalid/picture.png");
        assertThat(BROWSER.complaints()).singleElement().asString().contains("outside.invalid");
        assertThat(BROWSER.barriers())
                .anyMatch(b -> b.startsWith("color-contrast: "))
                .anyMatch(b -> b.startsWith("html-has-lang: "));
    }
}
