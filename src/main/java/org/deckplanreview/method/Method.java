package org.deckplanreview.method;

import org.deckplanreview.layout.Subject;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** A calculation that provisions name. Pure: the same arguments give the same evaluation. */
public interface Method {

    MethodDescription description();

    Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context);
}
