package org.deckplanreview;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.deckplanreview.report.ApprovedReports;
import org.deckplanreview.report.ApprovedReports.JsonDigest;
import org.deckplanreview.report.ReportSchema;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The packaged service as a user starts it: one process that serves, and others that run one command each. */
class PackagedServiceIT {
    private static final Path SAMPLES = Path.of("sample-submissions");
    private static final String JSON = "application/json";
    private static final String TEXT = "text/plain";

    /** Where a report in each form names the version of the service. */
    private static final Map<String, String> VERSION =
            Map.of(JSON, "\"service\":\"%s\"", TEXT, "Version of the service: %s\n");

    /** More than a pipe holds, so that it has gone only when the command reads. */
    private static final int MORE_THAN_A_PIPE = 1_000_000;

    @TempDir
    static Path folder;

    private static PackagedService service;
    private static String version;

    @BeforeAll
    static void start() throws Exception {
        service = PackagedService.started(folder);
        PackagedService.Run asked = service.run("--version");
        assertThat(asked.exit()).isZero();
        assertThat(asked.out()).matches("\\d+\\.\\d+\\.\\d+\\S*\\R");
        version = asked.out().strip();
    }

    @AfterAll
    static void stop() throws Exception {
        service.close();
    }

    static List<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
        }
    }

    private static byte[] sample(String name) throws IOException {
        return Files.readAllBytes(SAMPLES.resolve(name));
    }

    /** To the last byte, but for the version of the service, which no digest covers. */
    private static void isApprovedText(Path sample, String report) throws IOException {
        assertThat(asInTests(TEXT, report)).isEqualTo(Files.readString(ApprovedReports.text(name(sample))));
    }

    private static void isApprovedJson(Path sample, String report) {
        JsonDigest approved = ApprovedReports.json().get(name(sample));
        assertThat(JsonDigest.of(
                        approved.sample(),
                        approved.edition(),
                        asInTests(JSON, report).getBytes(UTF_8)))
                .isEqualTo(approved);
    }

    private static String asInTests(String form, String report) {
        String line = VERSION.get(form).formatted(version);
        assertThat(report.split(Pattern.quote(line), -1)).as(line).hasSize(2);
        return report.replace(line, VERSION.get(form).formatted("test"));
    }

    private static String name(Path sample) {
        return sample.getFileName().toString().replaceFirst("\\.json$", "");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_posted_sample_is_answered_by_its_approved_report_in_both_forms(Path sample) throws Exception {
        byte[] submission = Files.readAllBytes(sample);
        HttpResponse<String> json = service.review(submission, JSON);
        HttpResponse<String> text = service.review(submission, TEXT);

        assertThat(json.statusCode()).isEqualTo(200);
        isApprovedJson(sample, json.body());
        assertThat(text.statusCode()).isEqualTo(200);
        isApprovedText(sample, text.body());
    }

    @Test
    void a_report_is_valid_against_the_schema_that_the_service_publishes() throws Exception {
        assertThat(service.get("/schemas/report-1.json").body())
                .isEqualTo(Files.readString(Path.of("schema", "report-1.json")));
        assertThat(ReportSchema.faults(
                        service.review(sample("small-level-deck.json"), JSON).body()))
                .isEmpty();
    }

    @Test
    void submissions_posted_at_the_same_time_get_the_reports_that_they_get_alone() throws Exception {
        Map<Path, CompletableFuture<HttpResponse<String>>> answers = new TreeMap<>();
        for (Path sample : samples()) {
            answers.put(sample, service.reviewLater(Files.readAllBytes(sample), TEXT));
        }

        for (Map.Entry<Path, CompletableFuture<HttpResponse<String>>> answer : answers.entrySet()) {
            isApprovedText(answer.getKey(), answer.getValue().join().body());
        }
    }

    static Stream<Arguments> bodiesThatAreNotJson() {
        return Stream.of(
                Arguments.of("no JSON at all", "A deck of 4 m by 3 m", "Unrecognized token 'A'"),
                Arguments.of("NaN", "{\"units\": NaN}", "NaN"),
                Arguments.of("a member twice", "{\"units\": \"mm\", \"units\": \"in\"}", "units"),
                Arguments.of("lists 10 000 deep", "[".repeat(10_000) + "]".repeat(10_000), "nesting depth"),
                Arguments.of("an exponent of a million", "{\"units\": 1e1000000}", "exponent"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bodiesThatAreNotJson")
    void what_is_not_json_is_400_with_line_and_column(String what, String body, String told) throws Exception {
        HttpResponse<String> response = service.review(body.getBytes(UTF_8), JSON);

        isProblem(response, 400, "not-json");
        assertThat(response.body()).contains(told, "\"line\":1", "\"column\":");
    }

    @Test
    void eleven_megabytes_are_413() throws Exception {
        isProblem(service.review(new byte[11_000_000], JSON), 413, "too-large");
    }

    @Test
    void what_is_no_submission_is_422_with_the_members_that_it_lacks() throws Exception {
        HttpResponse<String> response = service.review("{}".getBytes(UTF_8), JSON);

        isProblem(response, 422, "invalid-submission");
        assertThat(response.body()).contains("\"#/platforms\"", "\"#/timbers\"", "\"accepted\"");
    }

    @Test
    void outlines_without_an_area_are_422_with_a_pointer_to_each() throws Exception {
        String flat = "\"outline\": [[0, 0], [4800, 0], [2400, 0]]";
        HttpResponse<String> response = service.review("""
                {"reference": "Otter Lane 14", "units": "mm", "reviewOn": "2026-03-31",
                 "ruleset": {"region": "uk-england"}, "use": {"occupancy": "single-dwelling"},
                 "timbers": [{"id": "joist", "breadth": 47, "depth": 150}],
                 "platforms": [{"id": "upper", %s}, {"id": "lower", %s}]}
                """.formatted(flat, flat).getBytes(UTF_8), JSON);

        isProblem(response, 422, "invalid-submission");
        assertThat(response.body()).contains("\"#/platforms/0/outline\"", "\"#/platforms/1/outline\"", "no area");
    }

    @Test
    void a_region_without_a_ruleset_is_404_with_the_regions_that_there_are() throws Exception {
        String elsewhere = new String(sample("small-level-deck.json"), UTF_8).replace("uk-england", "uk-englnad");
        HttpResponse<String> response = service.review(elsewhere.getBytes(UTF_8), JSON);

        isProblem(response, 404, "unknown-ruleset");
        assertThat(response.body()).contains("\"#/ruleset/region\"", "Is 'uk-england' meant?", "uk-scotland");
    }

    @Test
    void a_body_of_another_media_type_is_415_and_a_report_of_another_one_406() throws Exception {
        byte[] submission = sample("small-level-deck.json");

        isProblem(service.post(submission, "application/yaml", JSON), 415, "unsupported-media-type");
        isProblem(service.post(submission, JSON, "image/png"), 406, "not-acceptable");
    }

    /** In the form of RFC 9457, and without a word on how the service is made. */
    private static void isProblem(HttpResponse<String> response, int status, String type) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        assertThat(response.headers().firstValue("Content-Type")).contains("application/problem+json");
        assertThat(response.body())
                .contains("\"type\":\"/problems/" + type + "\"", "\"status\":" + status)
                .doesNotContain("Exception", "org.deckplanreview", "com.fasterxml");
    }

    @ParameterizedTest
    @CsvSource({
        "/rulesets, uk-scotland",
        "/rulesets/uk-england, House rules of a design office",
        "/rulesets/uk-england/2024?amendment=office-stiffer-decks, amendments/office-stiffer-decks.yaml",
        "/rulesets/uk-scotland/2024, guard.height",
        "/vocabulary, en1995.bending",
        "/schemas/submission-1.json, draft-07",
        "/schemas/report-1.json, draft-07",
        "/schemas/ruleset-1.json, draft-07",
        "/schemas/standard-1.json, draft-07",
        "/schemas/cases-1.json, draft-07",
        "/problems/not-json, RFC 8259",
        "/q/health, rulesets",
        "/q/metrics, http_server_requests",
        "/q/openapi, /reviews",
        "/q/swagger-ui/, <html"
    })
    void each_address_that_the_readme_names_is_served(String path, String told) throws Exception {
        HttpResponse<String> response = service.get(path);

        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.body()).contains(told);
    }

    /** The service holds the port that these commands are told. */
    @ParameterizedTest
    @CsvSource({"small-level-deck, 0", "border-deck-scotland, 1", "first-sketch, 2"})
    void a_command_prints_the_approved_report_and_exits_by_the_outcome(String name, int exit) throws Exception {
        Path sample = SAMPLES.resolve(name + ".json");
        PackagedService.Run run = service.run("review", sample.toString());

        assertThat(service.isListening()).isTrue();
        isApprovedText(sample, run.out());
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isEqualTo(exit);
    }

    /** The digest of what was received is checked against the platform's own SHA-256. */
    @Test
    void a_command_reads_standard_input_and_opens_no_port_meanwhile() throws Exception {
        Path sample = SAMPLES.resolve("small-level-deck.json");
        byte[] submission = Files.readAllBytes(sample);
        byte[] padded = (" ".repeat(MORE_THAN_A_PIPE) + new String(submission, UTF_8)).getBytes(UTF_8);
        int port = PackagedService.freePort();
        PackagedService.Running command = service.begin(port, "review", "-", "--json");
        try (OutputStream input = command.input()) {
            input.write(padded, 0, MORE_THAN_A_PIPE);
            input.flush();
            assertThat(PackagedService.isListening(port)).isFalse();
            input.write(padded, MORE_THAN_A_PIPE, submission.length);
        }
        PackagedService.Run run = command.ended();

        assertThat(run.out()).contains(sha256(padded));
        isApprovedJson(sample, run.out().replace(sha256(padded), sha256(submission)));
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
    }

    /** First words by the HTML standard, ISO 32000-1 and SVG 1.1. */
    @Test
    void a_command_writes_page_pdf_and_plan_in_one_run() throws Exception {
        Path sample = SAMPLES.resolve("small-level-deck.json");
        Path html = folder.resolve("out.html");
        Path pdf = folder.resolve("out.pdf");
        Path svg = folder.resolve("plan.svg");
        PackagedService.Run run = service.run(
                "review", sample.toString(), "--json", "--html", "" + html, "--pdf", "" + pdf, "--svg", "" + svg);

        assertThat(run.err()).isEmpty();
        isApprovedJson(sample, run.out());
        assertThat(run.exit()).isZero();
        assertThat(Files.readString(html)).startsWith("<!DOCTYPE html>");
        assertThat(Files.readString(svg)).startsWith("<svg");
        assertThat(new String(Files.readAllBytes(pdf), ISO_8859_1)).startsWith("%PDF-");
    }

    @Test
    void the_service_answers_with_pdf_and_html() throws Exception {
        byte[] submission = Files.readAllBytes(SAMPLES.resolve("small-level-deck.json"));

        assertThat(service.review(submission, "application/pdf").body()).startsWith("%PDF-");
        assertThat(service.review(submission, "text/html").body()).startsWith("<!DOCTYPE html>");
    }

    @Test
    void a_page_that_cannot_be_written_exits_with_70_and_says_why() throws Exception {
        Path nowhere = folder.resolve("nowhere").resolve("out.html");
        PackagedService.Run run =
                service.run("review", SAMPLES.resolve("small-level-deck.json").toString(), "--html", "" + nowhere);

        assertThat(run.exit()).isEqualTo(70);
        assertThat(run.err()).isEqualTo(nowhere + " cannot be written: there is no such directory\n");
    }

    private static String sha256(byte[] bytes) throws NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }

    @Test
    void the_rulesets_of_the_directory_and_their_cases_are_well() throws Exception {
        PackagedService.Run run = service.run("check-rulesets", "rulesets");

        assertThat(run.err()).isEmpty();
        assertThat(run.out()).matches("All \\d+ editions are valid; \\d,\\d{3} cases passed\\.\n");
        assertThat(run.exit()).isZero();
    }

    @Test
    void rulesets_that_are_not_there_exit_with_1() throws Exception {
        PackagedService.Run run =
                service.run("check-rulesets", folder.resolve("nowhere").toString());

        assertThat(run.err()).contains("cannot be listed");
        assertThat(run.out()).isEmpty();
        assertThat(run.exit()).isEqualTo(1);
    }

    static Stream<Arguments> refusedFiles() {
        return Stream.of(
                Arguments.of("empty.json", "{}", "is not a valid submission:\n/platforms\n"),
                Arguments.of("broken.json", "{\n\"a\": }", "is not JSON: line 2"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusedFiles")
    void a_command_exits_with_3_and_says_why_where_there_is_no_submission(String name, String content, String told)
            throws Exception {
        PackagedService.Run run = service.run(
                "review", Files.writeString(folder.resolve(name), content).toString());

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(told).doesNotContain("Exception");
    }

    @Test
    void a_file_that_is_not_there_exits_with_3() throws Exception {
        PackagedService.Run run =
                service.run("review", folder.resolve("nowhere.json").toString());

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.err()).contains("there is no such file").doesNotContain("Exception");
    }

    /** 1 and 2 would pass for outcomes of a review. */
    @ParameterizedTest
    @ValueSource(strings = {"review", "review - --working some", "revue", "serve now"})
    void a_wrong_command_line_exits_with_64(String line) throws Exception {
        assertThat(service.run(line.split(" ")).exit()).isEqualTo(64);
    }

    @Test
    void a_service_whose_port_is_taken_says_so_and_exits_with_70() throws Exception {
        PackagedService.Run run = service.run("serve");

        assertThat(run.out()).contains("in use");
        assertThat(run.exit()).isEqualTo(70);
    }

    @ParameterizedTest
    @ValueSource(strings = {"serve", "review sample-submissions/small-level-deck.json"})
    void rulesets_with_faults_are_told_without_a_stack_trace_and_exit_with_70(String line) throws Exception {
        Path added = folder.resolve("added");
        Files.createDirectories(added.resolve("uk-england/amendments"));
        Files.writeString(added.resolve("uk-england/amendments/office.yaml"), "region: uk-england\n");
        PackagedService.Run run = service.run((line + " --rulesets " + added).split(" "));

        assertThat(run.exit()).isEqualTo(70);
        assertThat(run.out() + run.err())
                .contains("uk-england/amendments/office.yaml:1: 'amends' is missing")
                .doesNotContain("\tat ");
    }

    private PackagedService.Run compare(String input, String from, String to, String... more) throws Exception {
        return service.run(Stream.concat(Stream.of("compare", input, "--from", from, "--to", to), Stream.of(more))
                .toArray(String[]::new));
    }

    @Test
    void compare_tells_by_its_exit_whether_anything_got_worse() throws Exception {
        assertThat(compare(SAMPLES.toString(), "uk-england/2024", "uk-england/2024")
                        .exit())
                .isZero();
        PackagedService.Run worse = compare(SAMPLES.toString(), "uk-england/2024", "uk-scotland/2024");
        assertThat(worse.exit()).isEqualTo(1);
        assertThat(worse.out()).startsWith("DECK COMPARISON\n").contains("complies        -> does not comply");
        assertThat(worse.err()).isEmpty();
        assertThat(compare(SAMPLES.toString(), "uk-england/2024", "uk-england/1066")
                        .exit())
                .isEqualTo(64);
        assertThat(compare(folder.resolve("nowhere").toString(), "uk-england/2024", "uk-wales/2024")
                        .exit())
                .isEqualTo(64);
    }

    @Test
    void compare_writes_the_same_bytes_with_any_number_of_threads_and_tells_what_it_refuses() throws Exception {
        String deck =
                Files.readString(SAMPLES.resolve("border-deck-england.json")).replaceAll("\\s*\\R\\s*", " ");
        Path lines = Files.writeString(folder.resolve("decks.ndjson"), "{\n" + deck + "\r\n\n" + deck);
        Path page = folder.resolve("summary.html");
        for (String threads : List.of("1", "4")) {
            PackagedService.Run run = compare(
                    lines.toString(),
                    "uk-england/2024",
                    "uk-scotland/2024",
                    "--threads",
                    threads,
                    "--json",
                    folder.resolve("compared-" + threads).toString(),
                    "--html",
                    page.toString());
            assertThat(run.exit()).isEqualTo(3);
            assertThat(run.err()).startsWith("line 1 is not JSON").hasLineCount(1);
        }

        assertThat(Files.readString(folder.resolve("compared-1")).lines()).hasSize(4);
        assertThat(folder.resolve("compared-4")).hasSameBinaryContentAs(folder.resolve("compared-1"));
        assertThat(Files.readString(page)).contains("<svg role=\"img\"", "complies → does not comply: 2.");
    }
}
