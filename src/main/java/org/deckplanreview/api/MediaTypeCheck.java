package org.deckplanreview.api;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Refuses media types that are none; the framework would take them for a failure of its own. */
class MediaTypeCheck {
    @ServerRequestFilter(preMatching = true)
    Optional<Response> check(ContainerRequestContext request) {
        if (!isMediaType(request.getHeaderString(HttpHeaders.CONTENT_TYPE))) {
            return refusal(ProblemType.UNSUPPORTED_MEDIA_TYPE);
        }
        if (!isMediaTypes(request.getHeaderString(HttpHeaders.ACCEPT))) {
            return refusal(ProblemType.NOT_ACCEPTABLE);
        }
        return Optional.empty();
    }

    private static Optional<Response> refusal(ProblemType type) {
        return Optional.of(Problem.of(type, type.explanation()).response());
    }

    private static boolean isMediaTypes(String header) {
        if (header == null) {
            return true;
        }
        for (String one : header.split(",")) {
            if (!isMediaType(one.strip())) {
                return false;
            }
        }
        return true;
    }

    private static boolean isMediaType(String header) {
        try {
            return header == null || MediaType.valueOf(header) != null;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
