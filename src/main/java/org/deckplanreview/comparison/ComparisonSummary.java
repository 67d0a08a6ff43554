package org.deckplanreview.comparison;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;

/**
 * What a change of edition does to many submissions.
 *
 * @param submissions all, those included that were refused
 * @param refused those that are no submissions
 * @param gotWorse those for which there is more to do under the second edition
 * @param gotBetter those for which there is less to do, and nothing is worse
 * @param outcomes every pair of outcomes, worst first
 * @param findings of all submissions by transition
 * @param causes what made findings change, the most frequent first and then by name
 * @param firstWorse the first of those that got worse, in the order of input
 */
public record ComparisonSummary(
        String notice,
        ComparedEdition from,
        ComparedEdition to,
        long submissions,
        long refused,
        long gotWorse,
        long gotBetter,
        List<OutcomeTally> outcomes,
        SubmissionComparison.Counts findings,
        List<CauseTally> causes,
        List<Worse> firstWorse) {
    public ComparisonSummary {
        outcomes = List.copyOf(outcomes);
        causes = List.copyOf(causes);
        firstWorse = List.copyOf(firstWorse);
    }

    /** How many submissions went from one outcome to another. */
    public record OutcomeTally(Transition transition, Determination before, Determination after, long submissions) {}

    /**
     * How often something is the cause.
     *
     * @param findings that it changed
     * @param worse of these, for the worse
     * @param better of these, for the better
     * @param submissions in which it changed any
     */
    public record CauseTally(
            Cause.Kind kind,
            Optional<String> provision,
            Optional<Effect> effect,
            long findings,
            long worse,
            long better,
            long submissions) {
        CauseTally plus(CauseTally o) {
            return new CauseTally(
                    kind,
                    provision,
                    effect,
                    findings + o.findings,
                    worse + o.worse,
                    better + o.better,
                    submissions + o.submissions);
        }
    }

    /**
     * A submission that got worse.
     *
     * @param number its line, or its place among the files
     * @param name its line or file
     * @param reference its own, untrusted
     */
    public record Worse(
            long number,
            String name,
            String reference,
            SubmissionComparison.OutcomeChange outcome,
            SubmissionComparison.Counts counts) {}
}
