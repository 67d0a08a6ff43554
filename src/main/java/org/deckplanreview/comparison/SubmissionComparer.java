package org.deckplanreview.comparison;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.report.Report;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.ReportedSubject;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.review.Reviewer;
import org.deckplanreview.ruleset.Edition;

/** Compares submissions under two editions. The same bytes give the same comparison. Thread-safe. */
public final class SubmissionComparer {

    private static final Comparator<FindingChange> ORDER = Comparator.comparing(FindingChange::transition)
            .thenComparing(FindingChange::concern)
            .thenComparing(c -> c.after().or(c::before).orElseThrow().provision())
            .thenComparing(c -> c.subject().pointer())
            .thenComparing(c -> c.subject().label());

    private final Reviewer reviewer;
    private final Edition from;
    private final Edition to;
    private final EditionDifferences differences;

    SubmissionComparer(Reviewer reviewer, Edition from, Edition to, EditionDifferences differences) {
        this.reviewer = reviewer;
        this.from = from;
        this.to = to;
        this.differences = differences;
    }

    public EditionDifferences differences() {
        return differences;
    }

    /** @param submission the bytes of one document; empty if they are more than a submission may have */
    public ComparisonResult compare(Optional<byte[]> submission) {
        return submission.map(this::compare).orElseGet(ComparisonResult.TooLarge::new);
    }

    public ComparisonResult compare(byte[] submission) {
        List<ReviewResult> results = reviewer.review(submission, List.of(from, to));
        ReviewResult before = results.get(0);
        ReviewResult after = results.get(1);
        return before instanceof ReviewResult.Reviewed b && after instanceof ReviewResult.Reviewed a
                ? new ComparisonResult.Compared(compare(b.report(), a.report()))
                : new ComparisonResult.Refused(before instanceof ReviewResult.Reviewed ? after : before);
    }

    private SubmissionComparison compare(Report before, Report after) {
        List<FindingChange> all = pairs(before, after).stream()
                .map(this::change)
                .filter(SubmissionComparer::applies)
                .sorted(ORDER)
                .toList();
        SubmissionComparison.Counts counts = all.stream()
                .map(FindingChange::transition)
                .reduce(
                        SubmissionComparison.Counts.NONE,
                        SubmissionComparison.Counts::plus,
                        SubmissionComparison.Counts::plus);
        SubmissionComparison.OutcomeChange outcome =
                SubmissionComparison.OutcomeChange.of(before.outcome(), after.outcome());
        boolean gotWorse =
                outcome.transition() == Transition.WORSE || all.stream().anyMatch(FindingChange::worsens);
        return new SubmissionComparison(
                Comparisons.NOTICE,
                after.reference(),
                after.title(),
                after.reviewOn(),
                differences.from().name(),
                differences.to().name(),
                outcome,
                gotWorse,
                !gotWorse
                        && (outcome.transition() == Transition.BETTER
                                || all.stream().anyMatch(FindingChange::improves)),
                counts,
                all.stream().filter(c -> c.transition() != Transition.UNCHANGED).toList(),
                ReadChange.of(before.givenNotReviewed(), after.givenNotReviewed()),
                new SubmissionComparison.Provenance(
                        after.provenance().service(),
                        after.provenance().received(),
                        after.provenance().submission(),
                        before.provenance().edition(),
                        after.provenance().edition()));
    }

    private boolean isAcrossRegions() {
        return !from.region().equals(to.region());
    }

    private List<FindingPairs.Pair> pairs(Report before, Report after) {
        return isAcrossRegions()
                ? FindingPairs.ofConcerns(before.findings(), after.findings())
                : FindingPairs.ofProvisions(before.findings(), after.findings());
    }

    /** A provision that one edition lacks and that does not apply changes nothing. */
    private static boolean applies(FindingChange change) {
        return change.before().isPresent() && change.after().isPresent()
                || change.before().or(change::after).orElseThrow().determination() != Determination.NOT_APPLICABLE;
    }

    private FindingChange change(FindingPairs.Pair pair) {
        Optional<FindingChange.Side> before = pair.before().map(f -> FindingChange.Side.of(f, pair.holdsWorstOf(f)));
        Optional<FindingChange.Side> after = pair.after().map(f -> FindingChange.Side.of(f, pair.holdsWorstOf(f)));
        ReportedFinding shown = pair.after().or(pair::before).orElseThrow();
        FindingPairs.Ref first = pair.subjects().get(0);
        return new FindingChange(
                transition(before, after),
                shown.concern(),
                new FindingChange.Changed(
                        shown.subject().kind(),
                        first.label(),
                        first.pointer(),
                        pair.subjects().stream()
                                .skip(1)
                                .map(r -> new ReportedSubject.Also(r.label(), r.pointer()))
                                .toList()),
                before,
                after,
                cause(shown.provision()));
    }

    /** Across regions the utilisations are of different things, so that the determinations alone tell. */
    private Transition transition(Optional<FindingChange.Side> before, Optional<FindingChange.Side> after) {
        if (before.isEmpty()) {
            return Transition.NEW;
        }
        if (after.isEmpty()) {
            return Transition.GONE;
        }
        FindingChange.Side b = before.get();
        FindingChange.Side a = after.get();
        return isAcrossRegions()
                ? Transition.of(b.determination(), a.determination())
                : Transition.of(b.determination(), b.utilisation(), a.determination(), a.utilisation());
    }

    private Cause cause(String provision) {
        if (isAcrossRegions()) {
            return Cause.ofRuleset(provision);
        }
        return differences
                .of(provision)
                .filter(d -> d.effect() != Effect.REWORDED)
                .map(Cause::of)
                .orElseGet(() ->
                        Cause.withoutProvision(differences.loads().isEmpty() ? Cause.Kind.UNTOLD : Cause.Kind.LOADS));
    }
}
