package org.deckplanreview.rendering.browser;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What a browser and axe-core say of the pages that compare editions. */
@QuarkusTest
class PagesOfComparisonsTest {
    private static final List<Integer> WIDTHS_PX = List.of(390, 1280);

    @RegisterExtension
    static final Browser BROWSER = new Browser();

    private static void readsWell(String html) throws IOException {
        for (int widthPx : WIDTHS_PX) {
            BROWSER.open(html, widthPx);

            assertThat(BROWSER.sideways()).as("at %d px", widthPx).isEmpty();
            assertThat(BROWSER.requests()).isEmpty();
            assertThat(BROWSER.complaints()).isEmpty();
            assertThat(BROWSER.barriers()).as("at %d px", widthPx).isEmpty();
        }
    }

    @Test
    void the_differences_of_two_editions_read_well() throws IOException {
        readsWell(given().accept(ContentType.HTML)
                .get("/rulesets/uk-england/differences?from=2014&to=2024")
                .then()
                .statusCode(200)
                .extract()
                .asString());
    }

    @Test
    void a_submission_under_two_editions_reads_well() throws IOException {
        readsWell(given().contentType(ContentType.JSON)
                .accept(ContentType.HTML)
                .body(Files.readAllBytes(Path.of("sample-submissions", "border-deck-england.json")))
                .post("/comparisons?from=uk-england/2024&to=uk-scotland/2024")
                .then()
                .statusCode(200)
                .extract()
                .asString());
    }
}
