package org.deckplanreview.review;

import java.util.List;
import org.deckplanreview.ruleset.Edition;

/** The editions that the service reviews against. */
public interface Editions {
    /** By region, then by their first day in force. */
    List<Edition> all();
}
