package org.deckplanreview.api;

import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.submission.Fault;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A problem in the form of RFC 9457.
 *
 * @param type address of a page that explains problems of this kind
 * @param line where a body stops being JSON, from 1
 * @param column likewise
 * @param inputLine which line of a stream of submissions it is about, from 1
 * @param errors every fault of a submission
 */
@Schema(description = "A problem (RFC 9457).")
record Problem(
        @Schema(
                description = "Address of a page about problems of this kind.",
                examples = "/problems/invalid-submission")
        String type,

        @Schema(examples = "Not a valid submission") String title,
        @Schema(examples = "422") int status,
        @Schema(examples = "The submission has 1 fault.") String detail,

        @Schema(implementation = Integer.class, description = "Where a body stops being JSON, from 1.")
        OptionalInt line,

        @Schema(implementation = Integer.class, description = "Where a body stops being JSON, from 1.")
        OptionalInt column,

        @Schema(
                implementation = Long.class,
                description = "Which line of a stream of submissions the problem is about, from 1.")
        OptionalLong inputLine,

        @Schema(description = "Every fault of a submission, in a stable order; empty for other problems.")
        List<Error> errors) {
    Problem {
        errors = List.copyOf(errors);
    }

    /**
     * One fault.
     *
     * @param pointer JSON Pointer as a URI fragment (RFC 6901, section 6)
     */
    @Schema(name = "ProblemError")
    record Error(
            @Schema(
                    description = "JSON Pointer as a URI fragment (RFC 6901, section 6).",
                    examples = "#/platforms/0/joists/spacing")
            String pointer,

            @Schema(description = "What is wrong.") String detail,
            @Schema(description = "What would be accepted.") String accepted) {
        static Error of(Fault fault) {
            return new Error(fragment(fault.pointer()), fault.detail(), fault.accepted());
        }
    }

    static Problem of(ProblemType type, String detail) {
        return new Problem(
                type.uri(),
                type.title(),
                type.status(),
                detail,
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalLong.empty(),
                List.of());
    }

    /** Why a submission was not reviewed. */
    static Problem of(ReviewResult refused) {
        if (refused instanceof ReviewResult.NotJson notJson) {
            return of(ProblemType.NOT_JSON, notJson.detail()).at(notJson.line(), notJson.column());
        }
        if (refused instanceof ReviewResult.UnknownRuleset unknown) {
            return of(ProblemType.UNKNOWN_RULESET, unknown.detail())
                    .withErrors(List.of(Error.of(new Fault(unknown.pointer(), unknown.detail(), unknown.accepted()))));
        }
        List<Fault> faults = ((ReviewResult.Invalid) refused).faults();
        return of(
                        ProblemType.INVALID_SUBMISSION,
                        "The submission has " + faults.size() + (faults.size() == 1 ? " fault." : " faults."))
                .withErrors(faults.stream().map(Error::of).toList());
    }

    Problem withStatus(int status) {
        return new Problem(type, title, status, detail, line, column, inputLine, errors);
    }

    Problem at(int line, int column) {
        return new Problem(
                type, title, status, detail, OptionalInt.of(line), OptionalInt.of(column), inputLine, errors);
    }

    Problem ofInputLine(long number) {
        return new Problem(type, title, status, detail, line, column, OptionalLong.of(number), errors);
    }

    Problem withErrors(List<Error> errors) {
        return new Problem(type, title, status, detail, line, column, inputLine, errors);
    }

    Response response() {
        return Response.status(status).type(MediaTypes.PROBLEM).entity(this).build();
    }

    private static String fragment(Pointer pointer) {
        StringBuilder fragment = new StringBuilder("#");
        for (byte b : pointer.value().getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (b & 0xff);
            if (isFragmentCharacter(c)) {
                fragment.append(c);
            } else {
                fragment.append(String.format("%%%02X", (int) c));
            }
        }
        return fragment.toString();
    }

    /** RFC 3986, section 3.5. */
    private static boolean isFragmentCharacter(char c) {
        return c >= 'a' && c <= 'z'
                || c >= 'A' && c <= 'Z'
                || c >= '0' && c <= '9'
                || "-._~!$&'()*+,;=:@/?".indexOf(c) >= 0;
    }
}
