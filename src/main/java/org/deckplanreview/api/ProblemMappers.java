package org.deckplanreview.api;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Turns every exception into a problem, so that no answer shows how the service is made. */
class ProblemMappers {
    private static final List<String> TAKES_SUBMISSIONS = List.of(ReviewResource.PATH, ComparisonResource.PATH);
    private static final Logger LOG = Logger.getLogger(ProblemMappers.class);

    @ServerExceptionMapper
    Response refused(WebApplicationException e, UriInfo uri) {
        Response given = e.getResponse();
        if (given.hasEntity() || given.getStatus() < 400) {
            return given;
        }
        ProblemType type = ProblemType.ofStatus(given.getStatus());
        if (type == ProblemType.INTERNAL_ERROR) {
            return failed(e);
        }
        Response problem = Problem.of(type, type.explanation())
                .withStatus(given.getStatus())
                .response();
        return type == ProblemType.METHOD_NOT_ALLOWED
                ? Response.fromResponse(problem)
                        .header(HttpHeaders.ALLOW, allowed(uri.getPath()))
                        .build()
                : problem;
    }

    /** RFC 9110, section 15.5.6, asks for it; the framework leaves it out. */
    private static String allowed(String path) {
        boolean takesSubmissions = TAKES_SUBMISSIONS.stream().anyMatch(p -> path.equals(p) || path.equals(p + "/"));
        return takesSubmissions ? "OPTIONS, POST" : "GET, HEAD, OPTIONS";
    }

    @ServerExceptionMapper
    Response failed(Throwable e) {
        LOG.error("A request failed", e);
        return Problem.of(ProblemType.INTERNAL_ERROR, ProblemType.INTERNAL_ERROR.explanation())
                .response();
    }
}
