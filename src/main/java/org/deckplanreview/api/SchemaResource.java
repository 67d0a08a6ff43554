package org.deckplanreview.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The published schemas. */
@Path("/schemas/{name}")
@Tag(name = "schemas")
public class SchemaResource {
    /** A closed list, so that a name can never reach another resource of the class path. */
    private static final List<String> NAMES = List.of(
            "submission-1.json",
            "report-1.json",
            "comparison-1.json",
            "ruleset-1.json",
            "standard-1.json",
            "cases-1.json");

    @GET
    @Produces({MediaTypes.SCHEMA, "application/json;qs=0.9"})
    @Operation(summary = "A published JSON Schema (draft 7)")
    public Response schema(@Parameter(example = "submission-1.json") @PathParam("name") String name)
            throws IOException {
        if (!NAMES.contains(name)) {
            throw new NotFoundException();
        }
        try (InputStream schema = SchemaResource.class.getResourceAsStream("/schema/" + name)) {
            if (schema == null) {
                throw new NotFoundException();
            }
            return Response.ok(schema.readAllBytes())
                    .header("Cache-Control", "public, max-age=3600")
                    .build();
        }
    }
}
