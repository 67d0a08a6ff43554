package org.deckplanreview.method;

import java.util.List;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.Value;

/** What a quantity is on a subject. */
public sealed interface Observation {

    /** @param remark where or how, for the finding's sentence; may be empty */
    record Found(Value value, String remark, List<WorkingStep> working) implements Observation {}

    record Missing(List<Need> needs) implements Observation {}

    /** The subject has no such quantity, for example the joists of a platform without joists. */
    record NotApplicable(String reason) implements Observation {}
}
