package org.deckplanreview.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What the types of problems mean. */
@Path("/problems/{name}")
@Tag(name = "problems")
public class ProblemResource {
    @GET
    @Produces(MediaTypes.TEXT_UTF_8)
    @Operation(summary = "What a type of problem means")
    public String explain(@PathParam("name") String name) {
        return ProblemType.ofSlug(name)
                .map(t -> t.title() + "\n\n" + t.explanation() + "\n")
                .orElseThrow(NotFoundException::new);
    }
}
