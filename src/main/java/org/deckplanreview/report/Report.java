package org.deckplanreview.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.schedule.SiteSchedule;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.NotReviewed;

/**
 * What a review says, from the top down. Numbers are rounded for show; texts that come from the submission are untrusted.
 *
 * @param notice what the report is and is not
 * @param reviewOn the day that picked the edition
 * @param units unit of the submission's lengths, and so of the report's; empty for mm
 * @param outcome the worst determination of the shall provisions
 * @param cautions hazards that the reader must be told of
 * @param referrals matters for the local authority or a licensed engineer
 * @param findings worst first; those that are not applicable last
 * @param subjects what findings speak of, by their numbers
 * @param givenNotReviewed what the submission states and no provision of the edition looked at
 * @param assumptions what was taken that the submission does not say
 * @param recalledFromMemory what the findings rest on and nobody read in its document, each once
 * @param schedule what the site takes along; empty where the edition gives no site practice
 */
public record Report(
        String notice,
        String reference,
        Optional<String> title,
        LocalDate reviewOn,
        Optional<LengthUnit> units,
        Determination outcome,
        Counts counts,
        ReportedEdition edition,
        List<String> cautions,
        List<String> referrals,
        List<ReportedFinding> findings,
        List<NumberedSubject> subjects,
        List<NotReviewed> givenNotReviewed,
        List<String> assumptions,
        List<RecalledValue> recalledFromMemory,
        Optional<SiteSchedule> schedule,
        Provenance provenance) {
    public Report {
        cautions = List.copyOf(cautions);
        referrals = List.copyOf(referrals);
        findings = List.copyOf(findings);
        subjects = List.copyOf(subjects);
        givenNotReviewed = List.copyOf(givenNotReviewed);
        assumptions = List.copyOf(assumptions);
        recalledFromMemory = List.copyOf(recalledFromMemory);
    }

    /**
     * Digest of the report as JSON in full, on one line and without the member provenance. Taken when it is asked for first.
     */
    public String digest() {
        return provenance.digest(this);
    }

    /** The units that the report is written in. */
    public UnitSystem unitSystem() {
        return units.map(LengthUnit::system).orElse(UnitSystem.METRIC);
    }
}
