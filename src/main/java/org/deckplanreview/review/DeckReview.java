package org.deckplanreview.review;

import java.util.function.Function;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.report.Reports;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Rulesets;
import org.deckplanreview.submission.ReadLog;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.Submission;
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
        return review(bytes, submission -> EditionChoice.of(submission, rulesets));
    }

    @Override
    public ReviewResult review(byte[] bytes, Edition edition) {
        return review(bytes, submission -> new EditionChoice.Chosen(edition));
    }

    private ReviewResult review(byte[] bytes, Function<Submission, EditionChoice> choosing) {
        ReadResult read = reader.read(bytes);
        if (read instanceof ReadResult.NotJson n) {
            return new ReviewResult.NotJson(n.detail(), n.line(), n.column());
        }
        if (read instanceof ReadResult.Invalid i) {
            return new ReviewResult.Invalid(i.faults());
        }
        ReadResult.Read whole = (ReadResult.Read) read;
        ReadLog log = reader.logOf(whole);
        return log.during(() -> {
            EditionChoice choice = choosing.apply(whole.submission());
            return choice instanceof EditionChoice.Chosen c
                    ? reviewed(whole, bytes, c.edition(), log)
                    : ((EditionChoice.NoSuch) choice).problem();
        });
    }

    private ReviewResult reviewed(ReadResult.Read whole, byte[] bytes, Edition edition, ReadLog log) {
        Assessment assessment = assessor.assess(whole.submission(), edition);
        return new ReviewResult.Reviewed(
                reports.of(assessment, bytes, () -> whole.tree().toString(), log::notReviewed), assessment);
    }
}
