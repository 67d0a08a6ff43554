package org.deckplanreview.api;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.deckplanreview.comparison.ComparisonSchema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Comparisons over HTTP, with the rulesets that come with the service. */
@QuarkusTest
class ComparisonServiceTest {
    private static final int MAX_BYTES = 2 * 1024 * 1024;
    private static final String ENGLAND = "region=uk-england&from=2014&to=2024";
    private static final String BORDER = "from=uk-england/2024&to=uk-scotland/2024";

    @TestHTTPResource("/")
    URI service;

    private static String sample(String name) throws Exception {
        return Files.readString(Path.of("sample-submissions", name));
    }

    private static String line(String document) {
        return document.replaceAll("\\s*\\R\\s*", " ").strip();
    }

    /** Sent without a length, as a stream is. */
    private HttpResponse<String> stream(String path, String body) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(service.resolve(path))
                                .header("Content-Type", "application/x-ndjson")
                                .timeout(Duration.ofMinutes(1))
                                .POST(HttpRequest.BodyPublishers.ofInputStream(
                                        () -> new ByteArrayInputStream(body.getBytes(UTF_8))))
                                .build(),
                        HttpResponse.BodyHandlers.ofString(UTF_8));
    }

    @Test
    void the_differences_of_two_editions_are_json_as_the_published_schema_says() {
        String json = given().get("/rulesets/uk-england/differences?from=2014&to=2024")
                .then()
                .statusCode(200)
                .contentType("application/json")
                .body("from.edition", equalTo("2014"))
                .body("counts.withdrawn", equalTo(3))
                .body("provisions.find { it.provision == 'treatment.posts' }.effect", equalTo("changed"))
                .extract()
                .asString();

        assertThat(ComparisonSchema.faults("editionDifferences", json)).isEmpty();
    }

    @Test
    void the_differences_are_a_page_that_stands_alone_for_whoever_asks_for_it() throws Exception {
        String page = given().accept("text/html")
                .get("/rulesets/uk-england/differences?from=2014&to=2024")
                .then()
                .statusCode(200)
                .contentType("text/html;charset=UTF-8")
                .body(containsString("<html lang=\"en-GB\">"))
                .body(containsString("<caption>Use class of posts</caption>"))
                .body(containsString("BS 8417:2024, substructure of decks"))
                .extract()
                .asString();

        isAccessible(page);
    }

    /** No script, nothing from elsewhere, one main heading, and every table with a caption and scoped headings. */
    private static void isAccessible(String page) {
        assertThat(page).doesNotContain("<script", "http://", "https://", "javascript:");
        assertThat(page).doesNotContainPattern("<[^>]*\\son\\w+=");
        assertThat(page.split("<h1", -1)).hasSize(2);
        assertThat(page.split("<table", -1)).hasSameSizeAs(page.split("<caption", -1));
        assertThat(page.replace("<th scope=", "").contains("<th>")).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "/rulesets/uk-england/differences?from=2014, 400, bad-request, 'to'",
        "/rulesets/uk-england/differences?to=2014, 400, bad-request, 'from'",
        "/rulesets/uk-england/differences?from=2014&to=2023, 404, unknown-ruleset, 2024",
        "/rulesets/uk-engeland/differences?from=2014&to=2024, 404, unknown-ruleset, 'uk-england'",
        "/rulesets/uk-england/differences?from=uk-england/2014&to=2024, 404, unknown-ruleset, 2014",
    })
    void what_cannot_be_compared_is_a_problem_that_tells_what_can(
            String path, int status, String type, String accepted) {
        given().get(path)
                .then()
                .statusCode(status)
                .contentType("application/problem+json")
                .body("type", equalTo("/problems/" + type))
                .body("detail", containsString("Accepted: "))
                .body("detail", containsString(accepted.replace("'", "")));
    }

    @ParameterizedTest
    @CsvSource({"from=2014&to=2024, 400", "region=uk-england&from=2014, 400", "region=atlantis&from=1&to=2, 404"})
    void submissions_too_are_only_compared_under_editions_that_there_are(String query, int status) throws Exception {
        given().contentType(ContentType.JSON)
                .body(sample("small-level-deck.json"))
                .post("/comparisons?" + query)
                .then()
                .statusCode(status)
                .body("detail", containsString("Accepted: "));
        assertThat(stream("/comparisons?" + query, line(sample("small-level-deck.json")))
                        .statusCode())
                .isEqualTo(status);
    }

    @Test
    void one_submission_is_answered_by_one_comparison() throws Exception {
        String json = given().contentType(ContentType.JSON)
                .body(sample("border-deck-england.json"))
                .post("/comparisons?" + BORDER)
                .then()
                .statusCode(200)
                .contentType("application/json")
                .body("from", equalTo("uk-england/2024"))
                .body("outcome.transition", equalTo("worse"))
                .body("findings.cause.provision", hasItem("guard.needed"))
                .extract()
                .asString();

        assertThat(ComparisonSchema.faults("submissionComparison", json)).isEmpty();
    }

    @Test
    void what_the_submission_chose_is_text_on_the_page_and_nothing_else() throws Exception {
        String hostile = sample("border-deck-england.json")
                .replaceFirst("\"reference\": \"[^\"]*\"", "\"reference\": \"<script>alert(1)</script>\"")
                .replaceFirst("\"title\": \"[^\"]*\"", "\"title\": \"{foo} & </title><img src=x>\"");
        String page = given().contentType(ContentType.JSON)
                .accept("text/html")
                .body(hostile)
                .post("/comparisons?" + BORDER)
                .then()
                .statusCode(200)
                .contentType("text/html;charset=UTF-8")
                .body(containsString("&lt;script&gt;alert(1)&lt;/script&gt;"))
                .body(containsString("{foo} &amp; &lt;/title&gt;&lt;img src=x&gt;"))
                .body(not(containsString("<img")))
                .extract()
                .asString();

        isAccessible(page);
    }

    @Test
    void refusals_are_those_of_a_review() {
        given().contentType(ContentType.JSON)
                .body("{")
                .post("/comparisons?" + ENGLAND)
                .then()
                .statusCode(400);
        given().contentType(ContentType.JSON)
                .body("{\"a\":1}")
                .post("/comparisons?" + ENGLAND)
                .then()
                .statusCode(422);
        given().contentType(ContentType.JSON)
                .body(" ".repeat(MAX_BYTES + 1))
                .post("/comparisons?" + ENGLAND)
                .then()
                .statusCode(413);
        given().contentType(ContentType.XML)
                .body("<a/>")
                .post("/comparisons?" + ENGLAND)
                .then()
                .statusCode(415);
        given().contentType(ContentType.JSON)
                .accept("image/png")
                .body("{}")
                .post("/comparisons?" + ENGLAND)
                .then()
                .statusCode(406);
        given().get("/comparisons").then().statusCode(405).header("Allow", equalTo("OPTIONS, POST"));
        given().post("/rulesets/uk-england/differences")
                .then()
                .statusCode(405)
                .header("Allow", equalTo("GET, HEAD, OPTIONS"));
    }

    @Test
    void many_submissions_are_answered_line_by_line_and_summed_up() throws Exception {
        String deck = line(sample("border-deck-england.json"));
        HttpResponse<String> response = stream(
                "/comparisons?" + BORDER,
                "{\r\n\r\n" + deck + "\r\n{\"a\":1}\n" + " ".repeat(MAX_BYTES + 1) + "\n" + deck);
        List<String> lines = response.body().lines().toList();

        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Type")).hasValue("application/x-ndjson");
        assertThat(lines).hasSize(6);
        assertThat(lines.get(0)).contains("\"/problems/not-json\"").contains("\"inputLine\":1");
        assertThat(ComparisonSchema.faults("submissionComparison", lines.get(1)))
                .isEmpty();
        assertThat(lines.get(2)).contains("\"/problems/invalid-submission\"").contains("\"inputLine\":4");
        assertThat(lines.get(3)).contains("\"/problems/too-large\"").contains("\"inputLine\":5");
        assertThat(lines.get(4)).isEqualTo(lines.get(1));
        assertThat(ComparisonSchema.faults("lastLine", lines.get(5))).isEmpty();
        assertThat(lines.get(5)).contains("\"submissions\":5,\"refused\":3,\"gotWorse\":2");
    }

    @Test
    void many_submissions_are_reviewed_line_by_line() throws Exception {
        HttpResponse<String> response = stream(
                "/reviews",
                "{\"is\":\"anything\"}\n{\"is\":\"invalid\"}\n{\"is\":\"failing\"}\n{\"is\":\"unknown\"}\n\n{\"is\":\"last\"}");
        List<String> lines = response.body().lines().toList();

        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(lines).hasSize(5);
        assertThat(lines.get(0)).contains("\"outcome\":\"does not comply\"");
        assertThat(lines.get(1)).contains("\"/problems/invalid-submission\"").contains("\"inputLine\":2");
        assertThat(lines.get(2)).contains("\"/problems/internal-error\"").doesNotContain("secret");
        assertThat(lines.get(3)).contains("\"/problems/unknown-ruleset\"").contains("\"inputLine\":4");
        assertThat(lines.get(4)).isEqualTo(lines.get(0));
    }

    @Test
    void a_stream_that_is_refused_is_answered_though_it_is_not_read() throws Exception {
        assertThat(stream("/comparisons?from=atlantis/1&to=atlantis/2", (" ".repeat(MAX_BYTES / 2) + "\n").repeat(20))
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void a_stream_may_be_larger_than_a_submission() throws Exception {
        String blanks = (" ".repeat(MAX_BYTES / 2) + "\n").repeat(8);

        assertThat(stream("/reviews", blanks + "{\"is\":\"last\"}").body().lines())
                .hasSize(1);
        given().contentType("application/x-ndjson")
                .body((blanks + "{\"is\":\"last\"}").getBytes(UTF_8))
                .post("/reviews")
                .then()
                .statusCode(200)
                .body(containsString("does not comply"));
    }
}
