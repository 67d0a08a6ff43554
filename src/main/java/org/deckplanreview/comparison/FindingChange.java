package org.deckplanreview.comparison;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.report.ReportedFinding;
import org.deckplanreview.report.ReportedSubject;
import org.deckplanreview.ruleset.Concern;
import org.deckplanreview.ruleset.Obligation;
import org.deckplanreview.submission.SubjectKind;

/**
 * A finding that is another one under the second edition. Subjects whose findings change alike are one change.
 *
 * @param before under the first edition; empty if it is new
 * @param after under the second edition; empty if it is gone
 */
public record FindingChange(
        Transition transition,
        Concern concern,
        Changed subject,
        Optional<Side> before,
        Optional<Side> after,
        Cause cause) {

    /** Whether there is more to do under the second edition. */
    public boolean worsens() {
        return transition == Transition.WORSE || transition == Transition.NEW && isOpen(after);
    }

    /** Whether there is less to do under the second edition. */
    public boolean improves() {
        return transition == Transition.BETTER || transition == Transition.GONE && isOpen(before);
    }

    private static boolean isOpen(Optional<Side> side) {
        return side.map(Side::determination).filter(Transition::isOpen).isPresent();
    }

    /**
     * The part of the submission, with labels that the submission chose.
     *
     * @param also others that change alike
     */
    public record Changed(SubjectKind kind, String label, Pointer pointer, List<ReportedSubject.Also> also) {
        public Changed {
            also = List.copyOf(also);
        }
    }

    /**
     * The finding under one of the editions.
     *
     * @param utilisation the largest of the subjects that change alike; empty also where only that of another subject is
     *     reported
     */
    public record Side(
            String provision,
            String title,
            Obligation obligation,
            Determination determination,
            Optional<BigDecimal> utilisation,
            String sentence) {
        static Side of(ReportedFinding finding, boolean isItsWorst) {
            return new Side(
                    finding.provision(),
                    finding.title(),
                    finding.obligation(),
                    finding.determination(),
                    finding.utilisation().filter(u -> isItsWorst),
                    finding.sentence());
        }
    }
}
