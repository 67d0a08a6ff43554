package org.deckplanreview.api;

import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Tells caches that what is sent depends on the compression that the client takes; the server itself does not. */
class CompressionNotice {
    @ServerResponseFilter
    void tell(ContainerResponseContext response) {
        response.getHeaders().add(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING);
    }
}
