package org.deckplanreview.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.NotAcceptableException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.Variant;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import org.deckplanreview.comparison.ComparisonJson;
import org.deckplanreview.comparison.ComparisonPages;
import org.deckplanreview.comparison.ComparisonResult;
import org.deckplanreview.comparison.Comparisons;
import org.deckplanreview.comparison.CorpusComparison;
import org.deckplanreview.comparison.SubmissionComparison;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** One submission, or many, under two editions. */
@Path(ComparisonResource.PATH)
@Tag(name = "comparisons")
public class ComparisonResource {
    static final String PATH = "/comparisons";

    private static final String REGION = "The region of editions that are named without one.";
    private static final String FROM = "The first edition, or region and edition with a slash between.";
    private static final String TO = "The second edition, or region and edition with a slash between.";

    private final Comparisons comparisons;
    private final BodyLimit limit;
    private final SubmissionStreams streams;

    ComparisonResource(Comparisons comparisons, BodyLimit limit, SubmissionStreams streams) {
        this.comparisons = comparisons;
        this.limit = limit;
        this.streams = streams;
    }

    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces({MediaType.APPLICATION_JSON, MediaType.TEXT_HTML})
    @Operation(
            operationId = "compare",
            summary = "Compare a deck submission under two editions",
            description =
                    "Which findings change their determination or utilisation, and which provision's difference makes"
                            + " them. The edition and day that the submission names count for nothing here. Between editions of"
                            + " one region, findings of the same provision on the same subject are held against each other;"
                            + " across regions, the worst finding of each concern on each subject. The form of a comparison"
                            + " stands at /schemas/comparison-1.json.")
    @RequestBody(
            required = true,
            content =
                    @Content(
                            mediaType = MediaType.APPLICATION_JSON,
                            schema =
                                    @Schema(
                                            type = SchemaType.OBJECT,
                                            description = "A submission, see /schemas/submission-1.json.")))
    @APIResponse(
            responseCode = "200",
            description = "The comparison.",
            content = {
                @Content(mediaType = MediaType.APPLICATION_JSON, schema = @Schema(type = SchemaType.OBJECT)),
                @Content(mediaType = MediaType.TEXT_HTML, schema = @Schema(type = SchemaType.STRING))
            })
    @APIResponse(
            responseCode = "400",
            description = "Not JSON, or a query parameter is missing.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    @APIResponse(
            responseCode = "404",
            description = "No such region or edition.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    @APIResponse(
            responseCode = "413",
            description = "Too large.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    @APIResponse(
            responseCode = "422",
            description = "Not a valid submission; every fault is listed.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    public Response compare(
            @Parameter(description = REGION, example = "uk-england") @QueryParam("region") Optional<String> region,
            @Parameter(required = true, description = FROM, example = "2014") @QueryParam("from") Optional<String> from,
            @Parameter(required = true, description = TO, example = "2024") @QueryParam("to") Optional<String> to,
            InputStream body,
            @Context Request request)
            throws IOException {
        Variant form = request.selectVariant(DifferencesResource.FORMS);
        if (form == null) {
            throw new NotAcceptableException();
        }
        ComparedEditions editions = ComparedEditions.ofAny(comparisons, region, from, to);
        if (editions instanceof ComparedEditions.None none) {
            return none.problem().response();
        }
        byte[] submission = limit.read(body);
        if (limit.exceededBy(submission)) {
            return limit.problem().response();
        }
        ComparedEditions.Both both = (ComparedEditions.Both) editions;
        ComparisonResult result = comparisons.between(both.from(), both.to()).compare(submission);
        return result instanceof ComparisonResult.Compared compared
                ? rendered(compared.comparison(), form)
                : Problem.of(((ComparisonResult.Refused) result).why()).response();
    }

    private static Response rendered(SubmissionComparison comparison, Variant form) {
        return form.getMediaType().isCompatible(MediaType.TEXT_HTML_TYPE)
                ? Response.ok(ComparisonPages.of(comparison), MediaTypes.HTML_UTF_8)
                        .build()
                : Response.ok(ComparisonJson.of(comparison), MediaType.APPLICATION_JSON)
                        .build();
    }

    @POST
    @Consumes(MediaTypes.NDJSON)
    @Produces(MediaTypes.NDJSON)
    @Operation(
            operationId = "compareMany",
            summary = "Compare many deck submissions under two editions",
            description =
                    "One submission a line, one comparison a line in the same order, and a last line with the only"
                            + " member summary. A line that is no submission is answered by a problem (RFC 9457) with its number,"
                            + " inputLine, and the others go on. Blank lines are skipped. The stream may have any length, each"
                            + " line that of a submission.")
    public Response compareMany(
            @Parameter(description = REGION, example = "uk-england") @QueryParam("region") Optional<String> region,
            @Parameter(required = true, description = FROM, example = "2014") @QueryParam("from") Optional<String> from,
            @Parameter(required = true, description = TO, example = "2024") @QueryParam("to") Optional<String> to,
            InputStream body) {
        ComparedEditions editions = ComparedEditions.ofAny(comparisons, region, from, to);
        if (editions instanceof ComparedEditions.None none) {
            return none.problem().response();
        }
        ComparedEditions.Both both = (ComparedEditions.Both) editions;
        CorpusComparison corpus = new CorpusComparison(comparisons.between(both.from(), both.to()), streams.inOrder());
        return streams.answer(out -> out.write(ComparisonJson.line(
                corpus.run(streams.submissions(body), (number, name, result) -> line(number, result), out::write))));
    }

    private byte[] line(long number, ComparisonResult result) {
        if (result instanceof ComparisonResult.Compared compared) {
            return ComparisonJson.line(compared.comparison());
        }
        if (result instanceof ComparisonResult.Failed failed) {
            return streams.failed(failed.failure(), number);
        }
        return streams.line(
                result instanceof ComparisonResult.Refused refused ? Problem.of(refused.why()) : limit.problem(),
                number);
    }
}
