package org.deckplanreview.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.deckplanreview.report.ReportSchema;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The service over HTTP, with a stand-in for the review. Problems have the form of RFC 9457. */
@QuarkusTest
class ServiceTest {
    private static final String SUBMISSION = "{\"reference\": \"DPR-1\"}";
    private static final String DRAWN = "{\"is\":\"drawn\"}";
    private static final int MAX_BYTES = 2 * 1024 * 1024;

    @TestHTTPResource("/reviews")
    URI reviews;

    @BeforeAll
    static void sendJsonAsItIs() {
        RestAssured.config = RestAssured.config()
                .encoderConfig(
                        EncoderConfig.encoderConfig().appendDefaultContentCharsetToContentTypeIfUndefined(false));
    }

    private static ValidatableResponse post(String body) {
        return given().contentType(ContentType.JSON).body(body).post("/reviews").then();
    }

    private static void isProblem(ValidatableResponse response, int status, String type) {
        response.statusCode(status)
                .contentType("application/problem+json")
                .body("type", equalTo("/problems/" + type))
                .body("status", equalTo(status))
                .body("title", not(equalTo("")))
                .body("detail", not(equalTo("")))
                .body(not(containsString("Exception")))
                .body(not(containsString("at org.")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "*/*", "application/*", "application/json, text/plain"})
    void a_submission_is_answered_by_a_valid_report(String accept) {
        String report = given().contentType(ContentType.JSON)
                .accept(accept)
                .body(SUBMISSION)
                .post("/reviews")
                .then()
                .statusCode(200)
                .contentType("application/json")
                .header("X-Content-Type-Options", "nosniff")
                .body("outcome", equalTo("does not comply"))
                .body("reference", equalTo("Bächlein"))
                .extract()
                .asString();

        assertThat(ReportSchema.faults(report)).isEmpty();
    }

    @Test
    void a_summary_is_a_valid_report_too() {
        String summary = given().contentType(ContentType.JSON)
                .queryParam("detail", "summary")
                .body(SUBMISSION)
                .post("/reviews")
                .then()
                .statusCode(200)
                .body("outcome", equalTo("does not comply"))
                .body("detail", equalTo("summary"))
                .body("notice", containsString("grants no approval"))
                .extract()
                .asString();

        assertThat(ReportSchema.faults(summary)).isEmpty();
        given().contentType("application/x-ndjson")
                .queryParam("detail", "summary")
                .body(SUBMISSION.getBytes(StandardCharsets.UTF_8))
                .post("/reviews")
                .then()
                .body(equalTo(summary));
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "application/x-ndjson"})
    void another_detail_is_refused(String form) {
        isProblem(
                given().contentType(form)
                        .queryParam("detail", "some")
                        .body(SUBMISSION.getBytes(StandardCharsets.UTF_8))
                        .post("/reviews")
                        .then(),
                400,
                "bad-request");
    }

    @Test
    void answers_are_compressed_for_whoever_takes_that_and_caches_are_told() throws Exception {
        HttpResponse<byte[]> compressed = vocabulary("gzip");
        HttpResponse<byte[]> plain = vocabulary("identity");

        assertThat(new GZIPInputStream(new ByteArrayInputStream(compressed.body())).readAllBytes())
                .isEqualTo(plain.body());
        assertThat(compressed.headers().firstValue("Content-Encoding")).contains("gzip");
        assertThat(plain.headers().firstValue("Content-Encoding")).isEmpty();
        assertThat(List.of(compressed, plain))
                .allSatisfy(r -> assertThat(r.headers().allValues("Vary")).contains("Accept-Encoding"));
    }

    private HttpResponse<byte[]> vocabulary(String encoding) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(reviews.resolve("/vocabulary"))
                                .header("Accept-Encoding", encoding)
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void without_accept_the_report_is_json() throws Exception {
        HttpResponse<String> response = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(reviews)
                                .header("Content-Type", "application/json")
                                .POST(HttpRequest.BodyPublishers.ofString(SUBMISSION))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());

        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/json");
    }

    @Test
    void the_report_is_plain_text_for_whoever_asks_for_it() {
        given().contentType(ContentType.JSON)
                .accept("text/plain")
                .body(SUBMISSION)
                .post("/reviews")
                .then()
                .statusCode(200)
                .contentType("text/plain;charset=UTF-8")
                .body(startsWith("DECK PLAN REVIEW\n"))
                .body(containsString("Bächlein"));
    }

    @ParameterizedTest
    @CsvSource({"plan, Plan of the frame", "section, Section A–A", "members, Members in bending"})
    void a_drawing_is_svg_for_whoever_asks_for_it(String drawing, String title) {
        given().contentType(ContentType.JSON)
                .accept("image/svg+xml")
                .queryParam("drawing", drawing)
                .body(SUBMISSION)
                .post("/reviews")
                .then()
                .statusCode(200)
                .contentType("image/svg+xml;charset=UTF-8")
                .body(startsWith("<svg"))
                .body(containsString(title))
                .body(containsString("Bächlein"));
    }

    @ParameterizedTest
    @CsvSource({"elevation, 1", "plan, 2", "plan, 0", "plan, x"})
    void another_drawing_is_a_problem(String drawing, String sheet) {
        isProblem(
                given().contentType(ContentType.JSON)
                        .accept("image/svg+xml")
                        .queryParam("drawing", drawing)
                        .queryParam("sheet", sheet)
                        .body(SUBMISSION)
                        .post("/reviews")
                        .then(),
                400,
                "bad-request");
    }

    /** Preference by quality, RFC 9110, section 12.5.1. */
    @ParameterizedTest
    @ValueSource(
            strings = {"text/html", "text/html,application/xhtml+xml,*/*;q=0.8", "text/html, application/json;q=0.5"})
    void the_report_is_a_page_for_whoever_prefers_one(String accept) {
        given().contentType(ContentType.JSON)
                .accept(accept)
                .body(DRAWN)
                .post("/reviews")
                .then()
                .statusCode(200)
                .contentType("text/html;charset=UTF-8")
                .body(startsWith("<!DOCTYPE html>"))
                .body(containsString("<svg"));
    }

    /** ISO 32000-1, 7.5.2: the first line of a PDF file. */
    @Test
    void the_report_is_pdf_for_whoever_asks_for_it() {
        byte[] pdf = given().contentType(ContentType.JSON)
                .accept("application/pdf")
                .body(DRAWN)
                .post("/reviews")
                .then()
                .statusCode(200)
                .contentType("application/pdf")
                .extract()
                .asByteArray();

        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }

    @ParameterizedTest
    @CsvSource({
        "application/sarif+json, '', application/sarif+json, '\"version\" : \"2.1.0\"'",
        "text/csv, '', text/csv;charset=UTF-8;header=present, 'number,determination,obligation'",
        "text/csv, schedule, text/csv;charset=UTF-8;header=present, 'platform,list,item,figure,value,unit'"
    })
    void findings_and_schedule_are_given_to_other_programs(
            String accept, String table, String contentType, String contains) {
        given().contentType(ContentType.JSON)
                .accept(accept)
                .queryParams(table.isEmpty() ? Map.of() : Map.of("table", table))
                .body(DRAWN)
                .post("/reviews")
                .then()
                .statusCode(200)
                .contentType(contentType)
                .body(containsString(contains));
    }

    @Test
    void another_table_is_a_problem() {
        isProblem(
                given().contentType(ContentType.JSON)
                        .accept("text/csv")
                        .queryParam("table", "prices")
                        .body(DRAWN)
                        .post("/reviews")
                        .then(),
                400,
                "bad-request");
    }

    @Test
    void a_form_that_there_is_none_of_is_refused_with_those_that_there_are() {
        given().contentType(ContentType.JSON)
                .accept("image/png")
                .body(SUBMISSION)
                .post("/reviews")
                .then()
                .statusCode(406)
                .body("detail", containsString("application/json"))
                .body("detail", containsString("text/plain"))
                .body("detail", containsString("text/html"))
                .body("detail", containsString("application/pdf"))
                .body("detail", containsString("image/svg+xml"));
    }

    @Test
    void the_same_submission_gets_the_same_bytes() {
        assertThat(post(SUBMISSION).extract().asByteArray())
                .isEqualTo(post(SUBMISSION).extract().asByteArray());
    }

    @Test
    void what_is_not_json_is_400_with_line_and_column() {
        ValidatableResponse response = post("{");

        isProblem(response, 400, "not-json");
        response.body("line", equalTo(1))
                .body("column", equalTo(2))
                .body("detail", equalTo("The document ends too early"));
    }

    /** Form of RFC 9457, section 3, second example; pointers as URI fragments by RFC 6901, section 6. */
    @Test
    void a_submission_with_faults_is_422_with_every_fault() {
        ValidatableResponse response = post("{\"is\":\"invalid\"}");

        isProblem(response, 422, "invalid-submission");
        response.body("errors[0].pointer", equalTo("#/platforms/0/joists/spacing"))
                .body("errors[0].detail", equalTo("600000 is too large"))
                .body("errors[0].accepted", equalTo("at most 2000"))
                .body("errors[1].pointer", equalTo("#/a%20b~1%C3%BC"))
                .body("detail", equalTo("The submission has 2 faults."));
    }

    @Test
    void a_submission_under_an_unknown_ruleset_is_404_and_says_where() {
        ValidatableResponse response = post("{\"is\":\"unknown\"}");

        isProblem(response, 404, "unknown-ruleset");
        response.body("errors[0].pointer", equalTo("#/ruleset/region")).body("errors[0].accepted", equalTo("shire"));
    }

    @Test
    void a_failure_is_500_and_tells_nothing_of_the_inside() {
        ValidatableResponse response = post("{\"is\":\"failing\"}");

        isProblem(response, 500, "internal-error");
        response.body(not(containsString("secret")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/nowhere",
                "/schemas",
                "/schemas/other.json",
                "/schemas/..%2Fapplication.properties",
                "/problems/none"
            })
    void an_unknown_address_is_404(String path) {
        isProblem(given().urlEncodingEnabled(false).get(path).then(), 404, "not-found");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/rulesets/atlantis", "/rulesets/atlantis/2024", "/rulesets/shire/1066"})
    void an_unknown_ruleset_is_404_and_says_which_there_are(String path) {
        ValidatableResponse response = given().get(path).then();

        isProblem(response, 404, "unknown-ruleset");
        response.body("detail", containsString(path.contains("1066") ? "2024" : "shire"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/reviews", "/reviews/"})
    void an_unknown_method_is_405_and_says_which_are_allowed(String path) {
        ValidatableResponse response = given().get(path).then();

        isProblem(response, 405, "method-not-allowed");
        response.header("Allow", containsString("POST"));
        isProblem(given().delete("/vocabulary").then(), 405, "method-not-allowed");
    }

    @Test
    void a_form_that_a_report_does_not_have_is_406() {
        isProblem(
                given().contentType(ContentType.JSON)
                        .accept("image/png")
                        .body(SUBMISSION)
                        .post("/reviews")
                        .then(),
                406,
                "not-acceptable");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/xml", "application/x-www-form-urlencoded"})
    void a_body_of_another_media_type_is_415(String type) {
        isProblem(given().contentType(type).body("a").post("/reviews").then(), 415, "unsupported-media-type");
    }

    @ParameterizedTest
    @CsvSource({
        "Content-Type, no type, 415, unsupported-media-type",
        "Content-Type, a/b/c, 415, unsupported-media-type",
        "Accept, no type, 406, not-acceptable",
        "Accept, a/b/c, 406, not-acceptable"
    })
    void a_media_type_that_is_none_is_refused(String header, String type, int status, String problem) throws Exception {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(reviews).POST(HttpRequest.BodyPublishers.ofString(SUBMISSION));
        if (!header.equals("Content-Type")) {
            request.header("Content-Type", "application/json");
        }
        HttpResponse<String> response = HttpClient.newHttpClient()
                .send(request.header(header, type).build(), HttpResponse.BodyHandlers.ofString());

        assertThat(response.statusCode()).isEqualTo(status);
        assertThat(response.body()).contains("/problems/" + problem);
    }

    @Test
    void a_body_of_2_MiB_is_read() {
        post(SUBMISSION + " ".repeat(MAX_BYTES - SUBMISSION.length())).statusCode(200);
    }

    @Test
    void a_body_that_announces_more_is_413() {
        isProblem(post(" ".repeat(MAX_BYTES + 1)), 413, "too-large");
    }

    @Test
    void a_body_that_turns_out_larger_is_413() throws Exception {
        for (int bytes : new int[] {MAX_BYTES + 1, 5 * MAX_BYTES}) {
            HttpResponse<String> response = HttpClient.newBuilder()
                    .version(HttpClient.Version.HTTP_1_1)
                    .build()
                    .send(
                            HttpRequest.newBuilder(reviews)
                                    .header("Content-Type", "application/json")
                                    .POST(HttpRequest.BodyPublishers.ofInputStream(
                                            () -> new ByteArrayInputStream(new byte[bytes])))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());

            assertThat(response.statusCode()).isEqualTo(413);
            assertThat(response.headers().firstValue("Content-Type")).contains("application/problem+json");
            assertThat(response.body()).contains("/problems/too-large");
        }
    }

    @Test
    void the_type_of_a_problem_is_the_address_of_its_explanation() {
        given().get("/problems/invalid-submission")
                .then()
                .statusCode(200)
                .contentType("text/plain;charset=UTF-8")
                .body(startsWith("Not a valid submission\n\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"submission-1", "report-1", "ruleset-1", "standard-1", "cases-1"})
    void each_schema_is_published(String name) {
        given().get("/schemas/" + name + ".json")
                .then()
                .statusCode(200)
                .contentType("application/schema+json")
                .header("Cache-Control", "public, max-age=3600")
                .header("X-Content-Type-Options", "nosniff")
                .body("'$schema'", equalTo("http://json-schema.org/draft-07/schema#"));
    }

    @Test
    void a_schema_is_given_as_plain_json_too() {
        given().accept("application/json").get("/schemas/report-1.json").then().statusCode(200);
    }

    @Test
    void rulesets_are_listed_by_region() {
        given().get("/rulesets")
                .then()
                .statusCode(200)
                .body("rulesets[0].region", equalTo("shire"))
                .body("rulesets[0].title", equalTo("The Shire"))
                .body("rulesets[0].editions[0].edition", equalTo("2024"))
                .body("rulesets[0].editions[0].from", equalTo("2024-10-01"))
                .body("rulesets[0].editions[0].href", equalTo("/rulesets/shire/2024"))
                .body(
                        "rulesets[0].editions[0].confirmed.values.keySet()",
                        containsInAnyOrder("page", "secondary page", "practice", "computed", "memory"))
                .body("rulesets[0].editions[0].confirmed.tableRows.memory", equalTo(0))
                .body(not(containsString("until")));
        given().get("/rulesets/shire").then().statusCode(200).body("editions[0].edition", equalTo("2024"));
    }

    @Test
    void an_edition_is_given_in_canonical_form_and_tagged_with_its_digest() {
        String tag = "W/\"sha256:" + "2".repeat(64) + "\"";
        given().get("/rulesets/shire/2024")
                .then()
                .statusCode(200)
                .contentType("application/json")
                .header("ETag", tag)
                .body(equalTo("{\"region\":\"shire\"}"));
        given().header("If-None-Match", tag).get("/rulesets/shire/2024").then().statusCode(304);
        given().header("If-None-Match", "\"other\"")
                .get("/rulesets/shire/2024")
                .then()
                .statusCode(200);
    }

    @Test
    void the_vocabulary_describes_methods_with_units_and_parameters() {
        given().get("/vocabulary")
                .then()
                .statusCode(200)
                .body("methods[0].name", equalTo("en1995.bending"))
                .body("methods[0].unit", equalTo("N/mm2"))
                .body("methods[0].subjects", hasItem("joists"))
                .body("methods[0].parameters[0].type", equalTo("number"))
                .body("methods[0].parameters[0].unit", equalTo("1"))
                .body("methods[0].parameters[1].type", equalTo("table"))
                .body("quantities.size()", equalTo(0));
    }

    @Test
    void head_and_options_are_answered() {
        given().head("/schemas/report-1.json").then().statusCode(200).contentType("application/schema+json");
        given().options("/reviews").then().statusCode(200).header("Allow", containsString("POST"));
    }

    @Test
    void the_service_is_ready_when_rulesets_are_loaded() {
        given().get("/q/health/ready")
                .then()
                .statusCode(200)
                .body("status", equalTo("UP"))
                .body("checks.find { it.name == 'rulesets' }.data.editions", equalTo(1));
    }

    @Test
    void metrics_and_the_interactive_description_are_served() {
        given().get("/q/metrics").then().statusCode(200).body(containsString("jvm_"));
        given().get("/q/swagger-ui/").then().statusCode(200);
    }

    @Test
    void the_description_tells_what_a_review_takes_and_gives() {
        given().accept("application/json")
                .get("/q/openapi")
                .then()
                .statusCode(200)
                .body("info.title", equalTo("Deck Plan Review"))
                .body("paths.'/reviews'.post.requestBody.content.keySet()", hasItem("application/json"))
                .body("paths.'/reviews'.post.responses.'200'.content.keySet()", hasItem("text/plain"))
                .body("paths.'/reviews'.post.responses.keySet()", hasItem("422"))
                .body("paths.'/reviews'.post.responses.'422'.content.keySet()", hasItem("application/problem+json"))
                .body("paths.'/reviews'.post.summary", equalTo("Review a deck submission"));
    }
}
