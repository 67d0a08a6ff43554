package org.deckplanreview.schedule;

import org.deckplanreview.kernel.Derived;

/**
 * Ends to be treated as they are cut.
 *
 * @param of the kind of member
 */
public record CutEnds(String of, Derived<Integer> ends) {}
