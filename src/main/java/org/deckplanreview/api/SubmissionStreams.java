package org.deckplanreview.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.deckplanreview.review.InOrder;
import org.deckplanreview.review.SubmissionLines;
import org.deckplanreview.review.SubmissionSource;
import org.jboss.logging.Logger;

/** Streams of submissions that are answered line by line. All of them share as many threads as there are processors. */
@Singleton
class SubmissionStreams {
    private static final Logger LOG = Logger.getLogger(SubmissionStreams.class);

    private final ObjectMapper json;
    private final BodyLimit limit;
    private final int processors = Runtime.getRuntime().availableProcessors();
    private final ExecutorService threads = Executors.newFixedThreadPool(processors);

    SubmissionStreams(ObjectMapper json, BodyLimit limit) {
        this.json = json;
        this.limit = limit;
    }

    @PreDestroy
    void close() {
        threads.shutdownNow();
    }

    SubmissionSource submissions(InputStream body) {
        return new SubmissionLines(body, limit.bytes());
    }

    /** Twice as many as there are threads, so that none waits while the oldest is written. */
    InOrder inOrder() {
        return new InOrder(threads, 2 * processors);
    }

    Response answer(StreamingOutput lines) {
        return Response.ok(lines, MediaTypes.NDJSON).build();
    }

    byte[] line(Problem problem, long inputLine) {
        try {
            return (json.writeValueAsString(problem.ofInputLine(inputLine)) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A problem is always JSON", e);
        }
    }

    byte[] failed(RuntimeException failure, long inputLine) {
        LOG.error("Line " + inputLine + " of a stream failed", failure);
        return line(Problem.of(ProblemType.INTERNAL_ERROR, ProblemType.INTERNAL_ERROR.explanation()), inputLine);
    }
}
