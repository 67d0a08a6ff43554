package org.deckplanreview.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotAcceptableException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.Variant;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.comparison.ComparisonJson;
import org.deckplanreview.comparison.ComparisonPages;
import org.deckplanreview.comparison.Comparisons;
import org.deckplanreview.comparison.EditionDifferences;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What changed from one edition of a region's ruleset to another. */
@Path("/rulesets/{region}/differences")
@Tag(name = "rulesets")
public class DifferencesResource {
    /** The first one for whoever takes any. */
    static final List<Variant> FORMS = Variant.mediaTypes(MediaType.APPLICATION_JSON_TYPE, MediaType.TEXT_HTML_TYPE)
            .build();

    private final Comparisons comparisons;

    DifferencesResource(Comparisons comparisons) {
        this.comparisons = comparisons;
    }

    @GET
    @Produces({MediaType.APPLICATION_JSON, MediaType.TEXT_HTML})
    @Operation(
            operationId = "differences",
            summary = "What changed between two editions",
            description =
                    "Provisions that were added, withdrawn, tightened, relaxed, changed in a way that has no direction,"
                            + " or only reworded, each with every changed value before and after and its citation. Tightened and"
                            + " relaxed are told by the sense of the limit. The form stands at /schemas/comparison-1.json,"
                            + " definition editionDifferences.")
    @APIResponse(
            responseCode = "200",
            description = "The differences.",
            content = {
                @Content(mediaType = MediaType.APPLICATION_JSON, schema = @Schema(type = SchemaType.OBJECT)),
                @Content(mediaType = MediaType.TEXT_HTML, schema = @Schema(type = SchemaType.STRING))
            })
    @APIResponse(
            responseCode = "400",
            description = "A query parameter is missing.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    @APIResponse(
            responseCode = "404",
            description = "No such region or edition.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    public Response differences(
            @Parameter(example = "uk-england") @PathParam("region") String region,
            @Parameter(required = true, description = "The first edition.", example = "2014") @QueryParam("from")
                    Optional<String> from,
            @Parameter(required = true, description = "The second edition.", example = "2024") @QueryParam("to")
                    Optional<String> to,
            @Context Request request) {
        Variant form = request.selectVariant(FORMS);
        if (form == null) {
            throw new NotAcceptableException();
        }
        ComparedEditions editions = ComparedEditions.inRegion(comparisons, region, from, to);
        if (editions instanceof ComparedEditions.None none) {
            return none.problem().response();
        }
        ComparedEditions.Both both = (ComparedEditions.Both) editions;
        EditionDifferences differences = comparisons.differences(both.from(), both.to());
        return form.getMediaType().isCompatible(MediaType.TEXT_HTML_TYPE)
                ? Response.ok(ComparisonPages.of(differences), MediaTypes.HTML_UTF_8)
                        .build()
                : Response.ok(ComparisonJson.of(differences), MediaType.APPLICATION_JSON)
                        .build();
    }
}
