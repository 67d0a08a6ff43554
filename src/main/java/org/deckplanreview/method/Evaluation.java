package org.deckplanreview.method;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Value;
import org.deckplanreview.vocabulary.Sense;

/** What a method says of a subject. */
public sealed interface Evaluation {

    /**
     * Found and allowed, in the same unit.
     *
     * @param utilisation demand over allowed, at most 1 complies, and under 1 where the sense is under; unrounded
     * @param remark where along the subject and under which combination, for the finding's sentence; may be empty
     * @param assumptions what was taken that the submission does not say
     */
    record Measured(
            Value found,
            Sense sense,
            Value allowed,
            double utilisation,
            String remark,
            List<WorkingStep> working,
            List<String> assumptions)
            implements Evaluation {

        /** What a sheet comes to that ends with its utilisation. */
        public static Measured on(
                Sheet sheet, Measure found, Sense sense, Measure allowed, String remark, List<String> assumptions) {
            return new Measured(
                    found, sense, allowed, sheet.value("utilisation"), remark, Sheet.late(() -> sheet), assumptions);
        }
    }

    record Missing(List<Need> needs) implements Evaluation {}

    /**
     * The method's source does not cover this case.
     *
     * @param reason a sentence for the finding, without its full stop
     * @param clause where the source ends; may be empty
     */
    record OutOfScope(String reason, String clause) implements Evaluation {}

    /** @param reason a sentence for the finding, without its full stop */
    record NotApplicable(String reason) implements Evaluation {}
}
