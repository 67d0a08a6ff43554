package org.deckplanreview.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.InputStream;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The largest submission. The server's own limit lies above it, because that one answers without a problem. */
@ApplicationScoped
public class BodyLimit {
    /** Before the server's own limit, which has priority 2. */
    private static final int FIRST = 100;

    private final ObjectMapper json;
    private final long bytes;

    BodyLimit(ObjectMapper json, @ConfigProperty(name = "deckplanreview.submission.max-size") MemorySize limit) {
        this.json = json;
        this.bytes = limit.asLongValue();
    }

    void register(@Observes Filters filters) {
        filters.register(this::refuseAnnounced, FIRST);
    }

    /** Refuses a body by its announced length, before it is sent. */
    private void refuseAnnounced(RoutingContext context) {
        if (announced(context) <= bytes) {
            context.next();
            return;
        }
        try {
            context.response()
                    .setStatusCode(ProblemType.TOO_LARGE.status())
                    .putHeader(HttpHeaders.CONNECTION, HttpHeaders.CLOSE)
                    .putHeader(HttpHeaders.CONTENT_TYPE, MediaTypes.PROBLEM)
                    .end(json.writeValueAsString(problem()));
        } catch (JsonProcessingException e) {
            context.fail(e);
        }
    }

    private static long announced(RoutingContext context) {
        String length = context.request().getHeader(HttpHeaders.CONTENT_LENGTH);
        try {
            return length == null ? 0 : Long.parseLong(length);
        } catch (NumberFormatException e) {
            return Long.MAX_VALUE;
        }
    }

    /** The body, or one byte more than the limit. */
    byte[] read(InputStream body) throws IOException {
        return body.readNBytes((int) Math.min(Integer.MAX_VALUE - 8, bytes + 1));
    }

    boolean exceededBy(byte[] body) {
        return body.length > bytes;
    }

    Problem problem() {
        return Problem.of(ProblemType.TOO_LARGE, "A submission has at most " + bytes + " bytes.");
    }
}
