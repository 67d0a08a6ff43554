package org.deckplanreview.report;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.ruleset.Concern;

/** How many findings there are of each determination, in all and by concern. */
public record Counts(Tally byDetermination, List<ConcernTally> byConcern) {
    public Counts {
        byConcern = List.copyOf(byConcern);
    }

    /** The findings of each determination. */
    public record Tally(int doesNotComply, int undetermined, int complies, int notApplicable) {
        private static Tally of(List<ReportedFinding> findings, Predicate<ReportedFinding> counted) {
            return new Tally(
                    count(findings, counted, Determination.DOES_NOT_COMPLY),
                    count(findings, counted, Determination.UNDETERMINED),
                    count(findings, counted, Determination.COMPLIES),
                    count(findings, counted, Determination.NOT_APPLICABLE));
        }

        private static int count(
                List<ReportedFinding> findings, Predicate<ReportedFinding> counted, Determination determination) {
            return (int) findings.stream()
                    .filter(counted)
                    .filter(f -> f.determination() == determination)
                    .count();
        }
    }

    /** The findings of one concern. */
    public record ConcernTally(Concern concern, Tally byDetermination) {}

    static Counts of(List<ReportedFinding> findings) {
        return new Counts(
                Tally.of(findings, f -> true),
                Arrays.stream(Concern.values())
                        .filter(c -> findings.stream().anyMatch(f -> f.concern() == c))
                        .map(c -> new ConcernTally(c, Tally.of(findings, f -> f.concern() == c)))
                        .toList());
    }
}
