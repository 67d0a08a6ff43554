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

/**
 * The largest submission. The framework's limit on the size of bodies lies above it, because that one answers without a
 * problem; streams of submissions have none, and each of their lines has this one.
 */
@ApplicationScoped
public class BodyLimit {
    /** Before all that reads a body. */
    private static final int FIRST = 100;

    /** As much of a body that is too large is read to its end, so that its sender comes to read the problem. */
    private static final int READ_TIMES_THE_LIMIT = 16;

    private final ObjectMapper json;
    private final long bytes;

    BodyLimit(ObjectMapper json, @ConfigProperty(name = "deckplanreview.submission.max-size") MemorySize limit) {
        this.json = json;
        this.bytes = limit.asLongValue();
    }

    void register(@Observes Filters filters) {
        filters.register(this::limit, FIRST);
    }

    private void limit(RoutingContext context) {
        if (isStream(context)) {
            context.next();
        } else {
            refuseAnnounced(context);
        }
    }

    private static boolean isStream(RoutingContext context) {
        String type = context.request().getHeader(HttpHeaders.CONTENT_TYPE);
        return type != null && type.split(";", 2)[0].strip().equalsIgnoreCase(MediaTypes.NDJSON);
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

    long bytes() {
        return bytes;
    }

    /** The body, or one byte more than the limit; the rest is then read and dropped. */
    byte[] read(InputStream body) throws IOException {
        byte[] read = body.readNBytes((int) Math.min(Integer.MAX_VALUE - 8, bytes + 1));
        if (exceededBy(read)) {
            byte[] dropped = new byte[1 << 16];
            long rest = READ_TIMES_THE_LIMIT * bytes;
            int count = body.read(dropped);
            while (count >= 0 && rest > 0) {
                rest -= count;
                count = body.read(dropped);
            }
        }
        return read;
    }

    boolean exceededBy(byte[] body) {
        return body.length > bytes;
    }

    Problem problem() {
        return Problem.of(ProblemType.TOO_LARGE, "A submission has at most " + bytes + " bytes.");
    }
}
