package org.deckplanreview.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.comparison.ComparisonJson;
import org.deckplanreview.comparison.ComparisonResult;
import org.deckplanreview.report.ReportJson;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.submission.Fault;

/**
 * What is written down of one submission.
 *
 * @param complaint why it could not be compared
 */
record ComparedLine(byte[] json, Optional<String> complaint) {

    /** A submission that could not be compared. */
    private record Refused(long number, String name, String detail, List<Fault> errors) {}

    static ComparedLine of(long number, String name, ComparisonResult result) {
        if (result instanceof ComparisonResult.Compared compared) {
            return new ComparedLine(ComparisonJson.line(compared.comparison()), Optional.empty());
        }
        String detail = detail(result);
        List<Fault> faults = result instanceof ComparisonResult.Refused refused
                        && refused.why() instanceof ReviewResult.Invalid invalid
                ? invalid.faults()
                : List.of();
        String first = faults.isEmpty()
                ? ""
                : " " + faults.get(0).pointer().value() + ": " + faults.get(0).detail();
        String line = ReportJson.line(new Refused(number, name, detail, faults)) + "\n";
        return new ComparedLine(line.getBytes(StandardCharsets.UTF_8), Optional.of(name + " " + detail + first));
    }

    private static String detail(ComparisonResult result) {
        if (result instanceof ComparisonResult.TooLarge) {
            return "is larger than a submission may be.";
        }
        if (result instanceof ComparisonResult.Failed failed) {
            return "could not be compared: " + failed.failure() + ".";
        }
        ReviewResult why = ((ComparisonResult.Refused) result).why();
        if (why instanceof ReviewResult.NotJson notJson) {
            return "is not JSON: line " + notJson.line() + ", column " + notJson.column() + ": " + notJson.detail()
                    + ".";
        }
        if (why instanceof ReviewResult.UnknownRuleset unknown) {
            return "asks for a ruleset that there is none of: " + unknown.detail();
        }
        int faults = ((ReviewResult.Invalid) why).faults().size();
        return "is not a valid submission: " + faults + (faults == 1 ? " fault." : " faults.");
    }
}
