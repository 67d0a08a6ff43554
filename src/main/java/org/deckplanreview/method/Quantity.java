package org.deckplanreview.method;

import org.deckplanreview.layout.Subject;
import org.deckplanreview.vocabulary.QuantityDescription;

/** A quantity that provisions limit or depend on. Pure. */
public interface Quantity {

    QuantityDescription description();

    Observation observe(Subject subject, ReviewContext context);
}
