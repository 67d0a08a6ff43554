package org.deckplanreview.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.comparison.ComparisonSummary.CauseTally;
import org.deckplanreview.comparison.ComparisonSummary.OutcomeTally;

/** Adds comparisons up. Holds counts and a few names, however many comparisons there are. */
final class Tallying {
    private static final int MOST_NAMED = 50;

    static final List<Determination> OUTCOMES =
            List.of(Determination.DOES_NOT_COMPLY, Determination.UNDETERMINED, Determination.COMPLIES);

    private static final Comparator<CauseTally> MOST_FIRST =
            Comparator.comparing(CauseTally::findings).reversed().thenComparing(Tallying::name);

    private final EditionDifferences differences;
    private final Map<String, CauseTally> causes = new TreeMap<>();
    private final List<ComparisonSummary.Worse> firstWorse = new ArrayList<>();
    private final long[][] outcomes = new long[OUTCOMES.size()][OUTCOMES.size()];
    private SubmissionComparison.Counts findings = SubmissionComparison.Counts.NONE;
    private long submissions;
    private long refused;
    private long gotWorse;
    private long gotBetter;

    Tallying(EditionDifferences differences) {
        this.differences = differences;
    }

    void add(long number, String name, ComparisonResult result) {
        submissions++;
        if (result instanceof ComparisonResult.Compared compared) {
            add(number, name, compared.comparison());
        } else {
            refused++;
        }
    }

    private void add(long number, String name, SubmissionComparison comparison) {
        SubmissionComparison.OutcomeChange outcome = comparison.outcome();
        outcomes[OUTCOMES.indexOf(outcome.before())][OUTCOMES.indexOf(outcome.after())]++;
        findings = findings.plus(comparison.counts());
        if (comparison.gotWorse()) {
            gotWorse++;
            if (firstWorse.size() < MOST_NAMED) {
                firstWorse.add(new ComparisonSummary.Worse(
                        number, name, comparison.reference(), outcome, comparison.counts()));
            }
        } else if (comparison.gotBetter()) {
            gotBetter++;
        }
        Set<String> seen = new TreeSet<>();
        for (FindingChange change : comparison.findings()) {
            Cause cause = change.cause();
            CauseTally one = new CauseTally(
                    cause.kind(),
                    cause.provision(),
                    cause.effect(),
                    1,
                    change.worsens() ? 1 : 0,
                    change.improves() ? 1 : 0,
                    seen.add(cause.key()) ? 1 : 0);
            causes.merge(cause.key(), one, CauseTally::plus);
        }
    }

    ComparisonSummary summary() {
        List<OutcomeTally> tallies = new ArrayList<>();
        for (int i = 0; i < OUTCOMES.size(); i++) {
            for (int j = 0; j < OUTCOMES.size(); j++) {
                Determination before = OUTCOMES.get(i);
                Determination after = OUTCOMES.get(j);
                tallies.add(new OutcomeTally(Transition.of(before, after), before, after, outcomes[i][j]));
            }
        }
        return new ComparisonSummary(
                Comparisons.NOTICE,
                differences.from(),
                differences.to(),
                submissions,
                refused,
                gotWorse,
                gotBetter,
                tallies,
                findings,
                causes.values().stream().sorted(MOST_FIRST).toList(),
                firstWorse);
    }

    private static String name(CauseTally tally) {
        return tally.provision().orElse(tally.kind().word());
    }
}
