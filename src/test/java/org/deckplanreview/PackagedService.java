package org.deckplanreview;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.ConnectException;
import java.net.ServerSocket;
import java.net.Socket;
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
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * The packaged service in a process of its own, which serves until it is closed, and commands of the same jar, each in
 * another process. All of them run under a language, a time zone and an encoding that are not the builder's, so that
 * what is equal does not depend on them.
 */
final class PackagedService implements AutoCloseable {
    private static final Path JAR = Path.of("target", "quarkus-app", "quarkus-run.jar");
    private static final Duration PATIENCE = Duration.ofMinutes(2);
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final Path folder;
    private final int port;
    private final Process process;

    private PackagedService(Path folder) throws IOException {
        this.folder = folder;
        this.port = freePort();
        this.process = java(port)
                .redirectErrorStream(true)
                .redirectOutput(log().toFile())
                .start();
    }

    /** @param folder for what the processes print */
    static PackagedService started(Path folder) throws Exception {
        PackagedService service = new PackagedService(folder);
        Instant end = Instant.now().plus(PATIENCE);
        while (!service.isReady()) {
            assertThat(service.process.isAlive())
                    .as(Files.readString(service.log()))
                    .isTrue();
            assertThat(Instant.now()).isBefore(end);
            TimeUnit.MILLISECONDS.sleep(100);
        }
        return service;
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(10, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return CLIENT.send(HttpRequest.newBuilder(address(path)).build(), utf8());
    }

    HttpResponse<String> review(byte[] submission, String accept) throws IOException, InterruptedException {
        return post(submission, "application/json", accept);
    }

    HttpResponse<String> post(byte[] body, String type, String accept) throws IOException, InterruptedException {
        return CLIENT.send(request(body, type, accept), utf8());
    }

    CompletableFuture<HttpResponse<String>> reviewLater(byte[] submission, String accept) {
        return CLIENT.sendAsync(request(submission, "application/json", accept), utf8());
    }

    private HttpRequest request(byte[] body, String type, String accept) {
        return HttpRequest.newBuilder(address("/reviews"))
                .header("Content-Type", type)
                .header("Accept", accept)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body))
                .build();
    }

    private static HttpResponse.BodyHandler<String> utf8() {
        return HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8);
    }

    private boolean isReady() throws IOException, InterruptedException {
        try {
            return get("/q/health/ready").statusCode() == 200;
        } catch (ConnectException e) {
            return false;
        }
    }

    private URI address(String path) {
        return URI.create("http://localhost:" + port + path);
    }

    private Path log() {
        return folder.resolve("service.log");
    }

    /** What a command left behind. */
    record Run(int exit, String out, String err) {}

    /** Runs a command to its end; it is told the port that the service holds. */
    Run run(String... args) throws IOException, InterruptedException {
        return begin(port, args).ended();
    }

    /** Starts a command that is told that port, and leaves its standard input open. */
    Running begin(int port, String... args) throws IOException {
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        return new Running(
                java(port, args)
                        .redirectOutput(out.toFile())
                        .redirectError(err.toFile())
                        .start(),
                out,
                err);
    }

    /** A command at work. */
    record Running(Process process, Path out, Path err) {
        OutputStream input() {
            return process.getOutputStream();
        }

        Run ended() throws IOException, InterruptedException {
            boolean hasEnded = process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS);
            process.destroyForcibly();
            assertThat(hasEnded).isTrue();
            return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
        }
    }

    private static ProcessBuilder java(int port, String... args) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfile.encoding=ISO-8859-1",
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Pacific/Kiritimati",
                "-jar",
                JAR.toString()));
        command.addAll(List.of(args));
        ProcessBuilder process = new ProcessBuilder(command);
        process.environment().put("QUARKUS_HTTP_PORT", Integer.toString(port));
        return process;
    }

    static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    static boolean isListening(int port) throws IOException {
        try (Socket socket = new Socket("localhost", port)) {
            return socket.isConnected();
        } catch (ConnectException e) {
            return false;
        }
    }

    boolean isListening() throws IOException {
        return isListening(port);
    }
}
