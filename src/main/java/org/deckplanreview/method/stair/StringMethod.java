package org.deckplanreview.method.stair;

import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** A check of a stair under the loads on its strings. */
abstract class StringMethod implements Method {
    private final MethodDescription description;

    StringMethod(MethodDescription description) {
        this.description = description;
    }

    @Override
    public final MethodDescription description() {
        return description;
    }

    @Override
    public final Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return StringActions.evaluate(subject, parameters, context, actions -> check(actions, context));
    }

    abstract Evaluation check(StringActions actions, ReviewContext context);
}
