package org.deckplanreview.review;

import java.util.List;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.report.Report;
import org.deckplanreview.submission.Fault;

/** What became of a submission. */
public sealed interface ReviewResult {
    /** @param assessment what the report was made of, for drawings */
    record Reviewed(Report report, Assessment assessment) implements ReviewResult {}

    /**
     * The bytes are not JSON as the service reads it.
     *
     * @param line from 1
     * @param column from 1
     */
    record NotJson(String detail, int line, int column) implements ReviewResult {}

    /** JSON, but not a submission; the faults are in a stable order and never empty. */
    record Invalid(List<Fault> faults) implements ReviewResult {
        public Invalid {
            faults = List.copyOf(faults);
        }
    }

    /** A submission that asks for a region, edition or amendment that there is none of, or for amendments that do not go together. */
    record UnknownRuleset(String detail, String accepted, Pointer pointer) implements ReviewResult {}
}
