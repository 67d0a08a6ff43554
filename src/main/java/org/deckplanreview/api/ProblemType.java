package org.deckplanreview.api;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of problem, each with a page of its own under {@code /problems}. */
enum ProblemType {
    NOT_JSON(
            "not-json",
            400,
            "Not JSON",
            "The body is not one JSON document (RFC 8259) in UTF-8. Duplicate member names, text after the document, NaN and"
                    + " infinite numbers are not JSON here. The members line and column, both from 1, say where reading"
                    + " stopped."),
    BAD_REQUEST("bad-request", 400, "Bad request", "The request cannot be understood as it stands."),
    NOT_FOUND("not-found", 404, "Not found", "There is nothing at this address."),
    UNKNOWN_RULESET(
            "unknown-ruleset",
            404,
            "Unknown ruleset",
            "There is no ruleset of that region, no edition of that name, or none in force on that day. The rulesets that"
                    + " there are stand at /rulesets."),
    METHOD_NOT_ALLOWED(
            "method-not-allowed",
            405,
            "Method not allowed",
            "The address exists but does not answer to this method. The header Allow names those that it answers to."),
    NOT_ACCEPTABLE(
            "not-acceptable",
            406,
            "Not acceptable",
            "The answer cannot be given in any of the media types that the header Accept asks for. A report is given as"
                    + " application/json, text/plain, text/html and application/pdf, its drawings as image/svg+xml, its"
                    + " findings as application/sarif+json, these and its site schedule as text/csv."),
    TOO_LARGE("too-large", 413, "Too large", "The body is larger than a submission may be."),
    UNSUPPORTED_MEDIA_TYPE(
            "unsupported-media-type",
            415,
            "Unsupported media type",
            "The body's media type is not one that this address reads. A submission is application/json."),
    INVALID_SUBMISSION(
            "invalid-submission",
            422,
            "Not a valid submission",
            "The body is JSON but not a submission as /schemas/submission-1.json describes it, or its parts contradict each"
                    + " other. The member errors lists every fault with a JSON Pointer to where it is, what is wrong and"
                    + " what would be accepted."),
    REFUSED("refused", 400, "Refused", "The request was refused with the status that this problem carries."),
    INTERNAL_ERROR(
            "internal-error",
            500,
            "Internal error",
            "The service failed. The fault is not in the request; the service's log tells more.");

    private final String slug;
    private final int status;
    private final String title;
    private final String explanation;

    ProblemType(String slug, int status, String title, String explanation) {
        this.slug = slug;
        this.status = status;
        this.title = title;
        this.explanation = explanation;
    }

    static Optional<ProblemType> ofSlug(String slug) {
        return Arrays.stream(values()).filter(t -> t.slug.equals(slug)).findFirst();
    }

    /** For a status that the framework sets. */
    static ProblemType ofStatus(int status) {
        return switch (status) {
            case 400 -> BAD_REQUEST;
            case 404 -> NOT_FOUND;
            case 405 -> METHOD_NOT_ALLOWED;
            case 406 -> NOT_ACCEPTABLE;
            case 413 -> TOO_LARGE;
            case 415 -> UNSUPPORTED_MEDIA_TYPE;
            default -> status >= 500 ? INTERNAL_ERROR : REFUSED;
        };
    }

    String uri() {
        return "/problems/" + slug;
    }

    int status() {
        return status;
    }

    String title() {
        return title;
    }

    String explanation() {
        return explanation;
    }
}
