package org.deckplanreview.api;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Turns every exception into a problem, so that no answer shows how the service is made. */
class ProblemMappers {
    private static final Logger LOG = Logger.getLogger(ProblemMappers.class);

    @ServerExceptionMapper
    Response refused(WebApplicationException e) {
        Response given = e.getResponse();
        if (given.hasEntity()) {
            return given;
        }
        if (given.getStatus() < 400) {
            return given;
        }
        ProblemType type = ProblemType.ofStatus(given.getStatus());
        if (type == ProblemType.INTERNAL_ERROR) {
            return failed(e);
        }
        Response.ResponseBuilder problem = Response.fromResponse(Problem.of(type, type.explanation())
                .withStatus(given.getStatus())
                .response());
        String allow = given.getHeaderString(HttpHeaders.ALLOW);
        return allow == null
                ? problem.build()
                : problem.header(HttpHeaders.ALLOW, allow).build();
    }

    @ServerExceptionMapper
    Response failed(Throwable e) {
        LOG.error("A request failed", e);
        return Problem.of(ProblemType.INTERNAL_ERROR, ProblemType.INTERNAL_ERROR.explanation())
                .response();
    }
}
