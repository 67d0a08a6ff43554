package org.deckplanreview;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ConnectException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.deckplanreview.report.ReportSchema;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged service as a user starts it: one process that serves, and others that run one command each. */
class PackagedServiceIT {
    private static final Path JAR = Path.of("target", "quarkus-app", "quarkus-run.jar");
    private static final Path SAMPLE = Path.of("sample-submissions", "small-level-deck.json");
    private static final Map<String, Integer> EXITS = Map.of("complies", 0, "does not comply", 1, "undetermined", 2);
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    static Path folder;

    private static int port;
    private static Process service;

    @BeforeAll
    static void start() throws Exception {
        port = freePort();
        service = java(List.of(), folder.resolve("service.log"));
        Instant end = Instant.now().plus(PATIENCE);
        while (!isReady()) {
            assertThat(service.isAlive())
                    .as(Files.readString(folder.resolve("service.log")))
                    .isTrue();
            assertThat(Instant.now()).isBefore(end);
            TimeUnit.MILLISECONDS.sleep(200);
        }
    }

    @AfterAll
    static void stop() throws Exception {
        service.destroy();
        if (!service.waitFor(10, TimeUnit.SECONDS)) {
            service.destroyForcibly();
        }
    }

    @Test
    void a_posted_file_is_answered_by_a_valid_report() throws Exception {
        HttpResponse<String> response = post(Files.readAllBytes(SAMPLE), "application/json");

        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(ReportSchema.faults(response.body())).isEmpty();
    }

    @Test
    void a_posted_file_is_answered_in_plain_text_too() throws Exception {
        HttpResponse<String> response = post(Files.readAllBytes(SAMPLE), "text/plain");

        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.body()).startsWith("DECK PLAN REVIEW\n");
    }

    @Test
    void what_is_no_submission_is_a_problem() throws Exception {
        HttpResponse<String> response = post("{}".getBytes(StandardCharsets.UTF_8), "application/json");

        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(response.body()).contains("/problems/invalid-submission", "\"pointer\"");
    }

    /** The service's port is taken while the command runs, and the command is told the same one. */
    @Test
    void the_command_prints_what_the_service_answers_and_exits_by_the_outcome() throws Exception {
        String posted = post(Files.readAllBytes(SAMPLE), "application/json").body();
        Run json = run("review", SAMPLE.toString(), "--json");
        Run text = run("review", SAMPLE.toString());

        assertThat(json.out).isEqualTo(posted);
        assertThat(json.err).isEmpty();
        assertThat(text.out)
                .isEqualTo(post(Files.readAllBytes(SAMPLE), "text/plain").body());
        String outcome = text.out
                .lines()
                .filter(l -> l.startsWith("Outcome"))
                .findFirst()
                .orElseThrow()
                .substring("Outcome".length())
                .strip()
                .toLowerCase(Locale.ROOT);
        assertThat(text.exit).isEqualTo(EXITS.get(outcome));
        assertThat(json.exit).isEqualTo(text.exit);
    }

    @Test
    void the_command_exits_with_3_and_says_why_where_there_is_no_submission() throws Exception {
        Path empty = Files.writeString(folder.resolve("empty.json"), "{}");
        Path broken = Files.writeString(folder.resolve("broken.json"), "{\n\"a\": }");

        assertThat(run("review", empty.toString())).satisfies(r -> {
            assertThat(r.exit).isEqualTo(3);
            assertThat(r.out).isEmpty();
            assertThat(r.err).contains("is not a valid submission", "/platforms", "Accepted: ");
        });
        assertThat(run("review", broken.toString())).satisfies(r -> {
            assertThat(r.exit).isEqualTo(3);
            assertThat(r.err).contains("is not JSON: line 2");
        });
        assertThat(run("review", folder.resolve("nowhere.json").toString())).satisfies(r -> {
            assertThat(r.exit).isEqualTo(3);
            assertThat(r.err).contains("there is no such file").doesNotContain("Exception");
        });
    }

    @Test
    void a_wrong_command_line_exits_with_64() throws Exception {
        assertThat(run("review").exit).isEqualTo(64);
        assertThat(run("review", SAMPLE.toString(), "--working", "some").exit).isEqualTo(64);
        assertThat(run("revue").exit).isEqualTo(64);
    }

    @Test
    void the_version_is_printed_alone() throws Exception {
        Run version = run("--version");

        assertThat(version.exit).isZero();
        assertThat(version.out).matches("\\d+\\.\\d+\\.\\d+\\S*\\R");
    }

    private record Run(int exit, String out, String err) {}

    private static Run run(String... args) throws Exception {
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        Process process = java(List.of(args))
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        assertThat(process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)).isTrue();
        return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    private static Process java(List<String> args, Path log) throws IOException {
        return java(args).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    }

    /** A platform encoding other than UTF-8, so that reports do not depend on it. */
    private static ProcessBuilder java(List<String> args) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfile.encoding=ISO-8859-1",
                "-jar",
                JAR.toString()));
        command.addAll(args);
        ProcessBuilder process = new ProcessBuilder(command);
        process.environment().put("QUARKUS_HTTP_PORT", Integer.toString(port));
        return process;
    }

    private static HttpResponse<String> post(byte[] body, String accept) throws Exception {
        return CLIENT.send(
                HttpRequest.newBuilder(address("/reviews"))
                        .header("Content-Type", "application/json")
                        .header("Accept", accept)
                        .POST(HttpRequest.BodyPublishers.ofByteArray(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    private static boolean isReady() throws Exception {
        try {
            return CLIENT.send(
                                    HttpRequest.newBuilder(address("/q/health/ready"))
                                            .build(),
                                    HttpResponse.BodyHandlers.discarding())
                            .statusCode()
                    == 200;
        } catch (ConnectException e) {
            return false;
        }
    }

    private static URI address(String path) {
        return URI.create("http://localhost:" + port + path);
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
