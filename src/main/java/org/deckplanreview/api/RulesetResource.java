package org.deckplanreview.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.report.AmendedValue;
import org.deckplanreview.review.Editions;
import org.deckplanreview.ruleset.Amending;
import org.deckplanreview.ruleset.Amendment;
import org.deckplanreview.ruleset.Binding;
import org.deckplanreview.ruleset.ConfirmationCounts;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.EditionHeading;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The regions, their editions, and what an edition says. */
@Path("/rulesets")
@Tag(name = "rulesets")
@Produces(MediaType.APPLICATION_JSON)
public class RulesetResource {
    private final Editions editions;

    RulesetResource(Editions editions) {
        this.editions = editions;
    }

    record Rulesets(List<Ruleset> rulesets) {}

    record Ruleset(
            @Schema(examples = "uk-england") String region,
            @Schema(examples = "England") String title,
            List<Summary> editions,

            @Schema(description = "What may be laid over the editions.")
            List<AmendmentSummary> amendments) {}

    @Schema(name = "EditionSummary")
    record Summary(
            @Schema(examples = "2024") String edition,
            String title,

            @Schema(
                    implementation = LocalDate.class,
                    description = "First day in force; left out where the edition binds only as adopted.")
            Optional<LocalDate> from,

            @Schema(implementation = LocalDate.class, description = "Last day in force; left out while it is.")
            Optional<LocalDate> until,

            @Schema(
                    implementation = LocalDate.class,
                    description = "Day on which an edition was published that binds only where it is adopted.")
            Optional<LocalDate> published,

            @Schema(description = "How many values of the edition were confirmed in each way.")
            Confirmed confirmed,

            @Schema(description = "Digest of the resolved edition.")
            String digest,

            @Schema(description = "Where the edition stands.", examples = "/rulesets/uk-england/2024")
            String href) {
        static Summary of(Edition edition) {
            return new Summary(
                    edition.name(),
                    edition.title(),
                    edition.binding() instanceof Binding.ByDate date ? Optional.of(date.from()) : Optional.empty(),
                    edition.binding() instanceof Binding.ByDate date ? date.until() : Optional.empty(),
                    edition.binding() instanceof Binding.AsAdopted adopted
                            ? Optional.of(adopted.published())
                            : Optional.empty(),
                    Confirmed.of(edition),
                    edition.digest(),
                    "/rulesets/" + edition.region() + "/" + edition.name());
        }
    }

    @Schema(
            name = "ConfirmedValues",
            description =
                    "Counts by the way of confirmation: page, read in its document; secondary page, in a publication"
                            + " that repeats it; practice, which no publication can confirm; computed by a stated method; memory,"
                            + " to be checked in its document before anyone relies on it.")
    record Confirmed(
            @Schema(
                    description = "Values: each citation of a provision, imposed load, condition that ends a provision,"
                            + " parameter with a citation of its own, and table. What several provisions take from one"
                            + " place of a standard counts once.")
            Map<String, Integer> values,

            @Schema(description = "Rows of the tables; where a table runs over its columns, a row is a cell.")
            Map<String, Integer> tableRows) {
        static Confirmed of(Edition edition) {
            ConfirmationCounts counts = ConfirmationCounts.of(edition);
            return new Confirmed(
                    ConfirmationCounts.byWord(counts.values()), ConfirmationCounts.byWord(counts.tableRows()));
        }
    }

    @Schema(name = "AmendmentSummary")
    record AmendmentSummary(
            @Schema(description = "Its name, as submissions write it.", examples = "frost-42-in")
            String amendment,

            String title,

            @Schema(
                    implementation = String.class,
                    description = "The edition that it makes binding, where it adopts one.")
            Optional<String> adopts,

            @Schema(description = "The editions that it may be laid over, with what it changes there.")
            List<Over> over) {}

    @Schema(name = "AmendedEdition")
    record Over(
            String edition,

            @Schema(description = "Digest of the resolved edition with the amendment.")
            String digest,

            @Schema(description = "Where the edition stands with the amendment.")
            String href,

            List<AmendedValue> values) {}

    @GET
    @Operation(summary = "The regions, their editions and amendments")
    public Rulesets all() {
        return new Rulesets(
                regions().stream().map(editions::of).map(this::ruleset).toList());
    }

    @GET
    @Path("/{region}")
    @Operation(summary = "The editions and amendments of a region")
    public Response region(@Parameter(example = "uk-england") @PathParam("region") String region) {
        return regions().contains(region)
                ? Response.ok(ruleset(editions.of(region))).build()
                : unknown("region", region, regions());
    }

    @GET
    @Path("/{region}/{edition}")
    @Operation(
            summary = "One edition",
            description =
                    "The resolved edition in canonical form (RFC 8785), over which its digest is taken: provisions,"
                            + " values, where each comes from, and in 'confirmed' how many values, and how many rows of"
                            + " tables, were read in their document (page), in a publication that repeats it (secondary"
                            + " page), are practice, were computed, or were recalled from memory. A value is the citation"
                            + " of a provision, of an imposed load or of a condition that ends a provision, a parameter"
                            + " with a citation of its own, or a table. Texts show places for figures, such as {limit}.")
    public Response edition(
            @Parameter(example = "uk-england") @PathParam("region") String region,
            @Parameter(example = "2024") @PathParam("edition") String name,
            @Parameter(description = "Names of amendments, in the order in which they are laid over the edition.")
                    @QueryParam("amendment")
                    List<String> amendments,
            @Context Request request) {
        Optional<Amending> found = editions.edition(region, name, amendments);
        if (found.isEmpty()) {
            return regions().contains(region)
                    ? unknown("edition", name, namesOf(region))
                    : unknown("region", region, regions());
        }
        if (found.get() instanceof Amending.Refused refused) {
            return Problem.of(ProblemType.UNKNOWN_RULESET, refused.detail() + " Accepted: " + refused.accepted() + ".")
                    .response();
        }
        Edition edition = ((Amending.Amended) found.get()).edition();
        // Weak, since the same edition may be sent compressed or not.
        EntityTag tag = new EntityTag(edition.digest(), true);
        Response.ResponseBuilder unchanged = request.evaluatePreconditions(tag);
        return unchanged != null
                ? unchanged.build()
                : Response.ok(edition.canonical().getBytes(StandardCharsets.UTF_8), MediaType.APPLICATION_JSON)
                        .tag(tag)
                        .build();
    }

    private List<String> regions() {
        return editions.headings().stream()
                .map(EditionHeading::region)
                .distinct()
                .toList();
    }

    private List<String> namesOf(String region) {
        return editions.headings().stream()
                .filter(heading -> heading.region().equals(region))
                .map(EditionHeading::name)
                .toList();
    }

    private Ruleset ruleset(List<Edition> ofRegion) {
        Edition first = ofRegion.get(0);
        return new Ruleset(
                first.region(),
                first.regionTitle(),
                ofRegion.stream().map(Summary::of).toList(),
                editions.amendments(first.region()).stream()
                        .map(this::amendment)
                        .toList());
    }

    private AmendmentSummary amendment(Amendment amendment) {
        return new AmendmentSummary(
                amendment.name(),
                amendment.title(),
                amendment.adopts(),
                amendment.amends().stream()
                        .flatMap(edition ->
                                editions.edition(amendment.region(), edition, List.of(amendment.name())).stream())
                        .map(amending -> ((Amending.Amended) amending).edition())
                        .map(amended -> new Over(
                                amended.name(),
                                amended.digest(),
                                "/rulesets/" + amended.region() + "/" + amended.name() + "?amendment="
                                        + amendment.name(),
                                AmendedValue.of(amended)))
                        .toList());
    }

    private static Response unknown(String what, String asked, List<String> known) {
        return Problem.of(
                        ProblemType.UNKNOWN_RULESET,
                        "There is no " + what + " '" + asked + "'. There is: " + String.join(", ", known) + ".")
                .response();
    }
}
