package org.deckplanreview.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.ruleset.Obligation;
import org.deckplanreview.ruleset.Standing;

/**
 * One provision on one subject, or on several that are alike.
 *
 * @param provision its id in the edition
 * @param standing how binding the source is
 * @param found what was found; empty where the provision names no quantity
 * @param allowed empty where nothing is compared
 * @param utilisation three decimals, rounded away from compliance
 * @param calculated what a calculation of the same comes to, where the provision does not reach the subject
 * @param sentence what was found, for people
 * @param advice what would put it right, where it does not comply or is undetermined
 * @param working read from the first step to the last; what is text in a step is made when it is read
 * @param needs what would decide an undetermined finding
 */
public record ReportedFinding(
        String provision,
        String title,
        Concern concern,
        Obligation obligation,
        Standing standing,
        ReportedSubject subject,
        Determination determination,
        Optional<Found> found,
        Optional<Allowed> allowed,
        Optional<BigDecimal> utilisation,
        Optional<ReportedCalculation> calculated,
        String sentence,
        Optional<String> advice,
        List<ReportedStep> working,
        ReportedCitation citation,
        List<Need> needs) {
    public ReportedFinding {
        needs = List.copyOf(needs);
    }

    /** Whether the provision has something to say about the subject. */
    boolean applies() {
        return determination != Determination.NOT_APPLICABLE;
    }
}
