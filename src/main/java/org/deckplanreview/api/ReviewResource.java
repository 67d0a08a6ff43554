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
import java.util.List;
import java.util.Optional;
import org.deckplanreview.rendering.csv.CsvRendering;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.rendering.html.Form;
import org.deckplanreview.rendering.html.HtmlRendering;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.rendering.pdf.PdfRendering;
import org.deckplanreview.rendering.sarif.SarifRendering;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.Report;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.review.Reviewer;
import org.deckplanreview.review.SubmissionSource;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** One submission in, one report out; or many. */
@Path(ReviewResource.PATH)
@Tag(name = "reviews")
public class ReviewResource {
    static final String PATH = "/reviews";

    /** The first one for whoever takes any. */
    private static final List<Variant> FORMS = Variant.mediaTypes(
                    MediaType.APPLICATION_JSON_TYPE,
                    MediaType.TEXT_PLAIN_TYPE,
                    MediaType.TEXT_HTML_TYPE,
                    MediaTypes.PDF_TYPE,
                    MediaTypes.SVG_TYPE,
                    MediaTypes.SARIF_TYPE,
                    MediaTypes.CSV_TYPE)
            .build();

    /** What a SARIF log calls a submission that came without a file's name. */
    private static final String UNNAMED_FILE = "submission.json";

    private static final String FINDINGS = "findings";
    private static final String SCHEDULE = "schedule";
    private static final String CSV_UTF_8 = MediaTypes.CSV + ";charset=UTF-8;header=present";

    private static final String DESCRIPTION =
            "Reviews one submission against the edition of its region's ruleset that is in force on its day. The form of a"
                    + " submission stands at /schemas/submission-1.json, that of a report at /schemas/report-1.json."
                    + " A report is a pre-check and grants no approval; local codes and a licensed engineer prevail.";
    private static final String EXAMPLE = """
            {
              "reference": "GARDEN-1",
              "units": "mm",
              "reviewOn": "2026-11-25",
              "ruleset": {"region": "uk-england"},
              "use": {"occupancy": "single-dwelling"},
              "site": {"groundLevels": [{"x": 0, "y": 0, "z": -300}]},
              "timbers": [{"id": "joist", "breadth": 47, "depth": 150, "strengthClass": "C24"}],
              "platforms": [{"id": "terrace", "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]]}]
            }
            """;

    private final Reviewer reviewer;
    private final BodyLimit limit;
    private final SubmissionStreams streams;

    ReviewResource(Reviewer reviewer, BodyLimit limit, SubmissionStreams streams) {
        this.reviewer = reviewer;
        this.limit = limit;
        this.streams = streams;
    }

    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces({
        MediaType.APPLICATION_JSON,
        MediaType.TEXT_PLAIN,
        MediaType.TEXT_HTML,
        MediaTypes.PDF,
        MediaTypes.SVG,
        MediaTypes.SARIF,
        MediaTypes.CSV
    })
    @Operation(operationId = "review", summary = "Review a deck submission", description = DESCRIPTION)
    @RequestBody(
            required = true,
            content =
                    @Content(
                            mediaType = MediaType.APPLICATION_JSON,
                            schema =
                                    @Schema(
                                            type = SchemaType.OBJECT,
                                            description = "A submission, see /schemas/submission-1.json."),
                            examples = @ExampleObject(name = "The start of a submission", value = EXAMPLE)))
    @APIResponse(
            responseCode = "200",
            description = "The report, whatever its outcome.",
            content = {
                @Content(
                        mediaType = MediaType.APPLICATION_JSON,
                        schema =
                                @Schema(
                                        type = SchemaType.OBJECT,
                                        description = "A report, see /schemas/report-1.json.")),
                @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING)),
                @Content(mediaType = MediaType.TEXT_HTML, schema = @Schema(type = SchemaType.STRING)),
                @Content(mediaType = MediaTypes.PDF, schema = @Schema(type = SchemaType.STRING, format = "binary")),
                @Content(mediaType = MediaTypes.SVG, schema = @Schema(type = SchemaType.STRING))
            })
    @APIResponse(
            responseCode = "400",
            description = "Not JSON, or no such drawing.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    @APIResponse(
            responseCode = "404",
            description = "No such ruleset.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    @APIResponse(
            responseCode = "406",
            description = "No such form of report.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    @APIResponse(
            responseCode = "413",
            description = "Too large.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    @APIResponse(
            responseCode = "415",
            description = "The body is of another media type.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    @APIResponse(
            responseCode = "422",
            description = "Not a valid submission; every fault is listed.",
            content = @Content(mediaType = MediaTypes.PROBLEM, schema = @Schema(implementation = Problem.class)))
    public Response review(
            InputStream body,
            @Context Request request,
            @Parameter(
                            description =
                                    "With image/svg+xml: the drawing, one of plan, section and members; the plan if left out.",
                            schema = @Schema(enumeration = {"plan", "section", "members"}))
                    @QueryParam("drawing")
                    Optional<String> drawing,
            @Parameter(
                            description =
                                    "With image/svg+xml: the sheet of that drawing, from 1; the first if left out.",
                            schema = @Schema(type = SchemaType.INTEGER))
                    @QueryParam("sheet")
                    Optional<String> sheet,
            @Parameter(
                            description = "With text/csv: the table, findings or schedule; the findings if left out.",
                            schema = @Schema(enumeration = {"findings", "schedule"}))
                    @QueryParam("table")
                    Optional<String> table,
            @Parameter(
                            description = "With JSON: how much of the report, full or summary; full if left out.",
                            schema = @Schema(enumeration = {"full", "summary"}))
                    @QueryParam("detail")
                    Optional<String> detail)
            throws IOException {
        Variant form = request.selectVariant(FORMS);
        if (form == null) {
            throw new NotAcceptableException();
        }
        byte[] submission = limit.read(body);
        if (limit.exceededBy(submission)) {
            return limit.problem().response();
        }
        Optional<Detail> asked = detail(detail);
        if (asked.isEmpty()) {
            return noSuchDetail();
        }
        ReviewResult result = reviewer.review(submission);
        if (!(result instanceof ReviewResult.Reviewed reviewed)) {
            return Problem.of(result).response();
        }
        MediaType type = form.getMediaType();
        Report report = reviewed.report();
        if (type.isCompatible(MediaType.APPLICATION_JSON_TYPE)) {
            return Response.ok(JsonRendering.line(report, asked.get()), MediaType.APPLICATION_JSON)
                    .build();
        }
        if (type.isCompatible(MediaType.TEXT_PLAIN_TYPE)) {
            return Response.ok(TextRendering.render(report, WorkingShown.GOVERNING), MediaTypes.TEXT_UTF_8)
                    .build();
        }
        if (type.isCompatible(MediaTypes.SARIF_TYPE)) {
            return Response.ok(SarifRendering.render(report, submission, UNNAMED_FILE), MediaTypes.SARIF)
                    .build();
        }
        if (type.isCompatible(MediaTypes.CSV_TYPE)) {
            return csv(report, table.orElse(FINDINGS));
        }
        DrawnDeck deck = DrawnDeck.of(reviewed.assessment(), report);
        if (type.isCompatible(MediaTypes.SVG_TYPE)) {
            return DrawingChoice.of(drawing, sheet, deck).response();
        }
        return type.isCompatible(MediaTypes.PDF_TYPE)
                ? Response.ok(PdfRendering.render(deck), MediaTypes.PDF).build()
                : Response.ok(HtmlRendering.render(deck, Form.SCREEN), MediaTypes.HTML_UTF_8)
                        .build();
    }

    private static Optional<Detail> detail(Optional<String> word) {
        return word.map(Detail::ofWord).orElse(Optional.of(Detail.FULL));
    }

    private static Response noSuchDetail() {
        return Problem.of(
                        ProblemType.BAD_REQUEST,
                        "There is no such detail. The parameter detail is one of full and summary.")
                .response();
    }

    private static Response csv(Report report, String table) {
        return switch (table) {
            case FINDINGS ->
                Response.ok(CsvRendering.findings(report), CSV_UTF_8).build();
            case SCHEDULE ->
                Response.ok(CsvRendering.schedule(report), CSV_UTF_8).build();
            default ->
                Problem.of(
                                ProblemType.BAD_REQUEST,
                                "There is no such table. The parameter table is one of findings and schedule.")
                        .response();
        };
    }

    @POST
    @Consumes(MediaTypes.NDJSON)
    @Produces(MediaTypes.NDJSON)
    @Operation(
            operationId = "reviewMany",
            summary = "Review many deck submissions",
            description = "One submission a line, one report a line in the same order. A line that is no submission is"
                    + " answered by a problem (RFC 9457) with its number, inputLine, and the others go on. Blank lines"
                    + " are skipped. The stream may have any length, each line that of a submission.")
    public Response reviewMany(
            InputStream body,
            @Parameter(
                            description = "How much of each report, full or summary; full if left out.",
                            schema = @Schema(enumeration = {"full", "summary"}))
                    @QueryParam("detail")
                    Optional<String> detail) {
        return detail(detail)
                .map(asked -> streams.answer(
                        out -> streams.inOrder().run(streams.submissions(body), one -> line(one, asked), out::write)))
                .orElseGet(ReviewResource::noSuchDetail);
    }

    private byte[] line(SubmissionSource.Received received, Detail detail) {
        if (received.bytes().isEmpty()) {
            return streams.line(limit.problem(), received.number());
        }
        try {
            ReviewResult result = reviewer.review(received.bytes().get());
            return result instanceof ReviewResult.Reviewed reviewed
                    ? JsonRendering.line(reviewed.report(), detail)
                    : streams.line(Problem.of(result), received.number());
        } catch (RuntimeException e) {
            return streams.failed(e, received.number());
        }
    }
}
