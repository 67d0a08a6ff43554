package org.deckplanreview.report;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.NotReviewed;

/**
 * The report in the shape of format 1 for who asks what to change, without its provenance.
 *
 * @param detail what tells it from the full report
 */
record ReportSummary(
        String notice,
        Detail detail,
        String reference,
        LocalDate reviewOn,
        Optional<LengthUnit> units,
        Determination outcome,
        Counts counts,
        Edition edition,
        List<Entry> findings,
        List<NotReviewed> givenNotReviewed,
        List<NumberedSubject> subjects) {

    record Edition(String region, String edition) {}

    /** @param subject its number */
    record Entry(
            String provision,
            int subject,
            Determination determination,
            Optional<ReportDocument.Value> found,
            Optional<ReportDocument.Limit> allowed,
            Optional<BigDecimal> utilisation,
            Optional<String> advice,
            List<Need> needs) {
        private static Entry of(ReportedFinding finding) {
            return new Entry(
                    finding.provision(),
                    finding.subject().number(),
                    finding.determination(),
                    finding.found().flatMap(ReportDocument.Value::of),
                    finding.allowed().map(ReportDocument.Limit::of),
                    finding.utilisation(),
                    finding.advice(),
                    finding.needs());
        }
    }

    static ReportSummary of(Report report) {
        return new ReportSummary(
                report.notice(),
                Detail.SUMMARY,
                report.reference(),
                report.reviewOn(),
                report.units(),
                report.outcome(),
                report.counts(),
                new Edition(report.edition().region(), report.edition().edition()),
                report.findings().stream()
                        .filter(ReportedFinding::applies)
                        .map(Entry::of)
                        .toList(),
                report.givenNotReviewed(),
                report.subjects());
    }
}
