package org.deckplanreview.review;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Derivation;
import org.deckplanreview.report.Reports;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Rulesets;
import org.deckplanreview.submission.ReadLog;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SubmissionReader;

/** Reads, chooses the edition, derives, assesses and reports. Thread-safe. */
final class DeckReview implements Reviewer {

    private final SubmissionReader reader;
    private final Rulesets rulesets;
    private final Assessor assessor;
    private final Reports reports;

    DeckReview(SubmissionReader reader, Rulesets rulesets, Assessor assessor, Reports reports) {
        this.reader = reader;
        this.rulesets = rulesets;
        this.assessor = assessor;
        this.reports = reports;
    }

    @Override
    public ReviewResult review(byte[] bytes) {
        ReadResult read = reader.read(bytes);
        if (!(read instanceof ReadResult.Read whole)) {
            return refused(read);
        }
        ReadLog log = reader.logOf(whole);
        return log.during(() -> {
            EditionChoice choice = EditionChoice.of(whole.submission(), rulesets);
            return choice instanceof EditionChoice.Chosen chosen
                    ? reviewed(whole, bytes, new Derivation(whole.submission()), chosen.edition(), log)
                    : ((EditionChoice.NoSuch) choice).problem();
        });
    }

    @Override
    public List<ReviewResult> review(byte[] bytes, List<Edition> editions) {
        ReadResult read = reader.read(bytes);
        if (!(read instanceof ReadResult.Read whole)) {
            return editions.stream().map(edition -> refused(read)).toList();
        }
        ReadLog shared = reader.logOf(whole);
        Derivation derivation = new Derivation(whole.submission());
        if (editions.size() > 1) {
            assessor.derive(derivation, editions, shared::during);
        }
        List<ReviewResult> results = new ArrayList<>();
        for (Edition edition : editions) {
            // What one edition reads while it derives something for itself counts for no other.
            ReadLog own = shared.copy();
            results.add(own.during(() -> reviewed(whole, bytes, derivation.copy(), edition, own)));
        }
        return results;
    }

    private static ReviewResult refused(ReadResult read) {
        return read instanceof ReadResult.NotJson n
                ? new ReviewResult.NotJson(n.detail(), n.line(), n.column())
                : new ReviewResult.Invalid(((ReadResult.Invalid) read).faults());
    }

    private ReviewResult reviewed(
            ReadResult.Read whole, byte[] bytes, Derivation derivation, Edition edition, ReadLog log) {
        Assessment assessment = assessor.assess(derivation, edition);
        return new ReviewResult.Reviewed(
                reports.of(assessment, bytes, () -> whole.tree().toString(), log::notReviewed), assessment);
    }
}
