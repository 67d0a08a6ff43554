package org.deckplanreview.review;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.ruleset.Amending;
import org.deckplanreview.ruleset.Amendment;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.EditionHeading;

/** The editions that the service reviews against. */
public interface Editions {
    /** What they say of themselves, by region, then by their first day in force or the day on which they were published. */
    List<EditionHeading> headings();

    /** Those of a region, in the same order; none for an unknown region. */
    List<Edition> of(String region);

    /** What may be laid over editions of a region, by name. */
    List<Amendment> amendments(String region);

    /**
     * An edition with amendments laid over it in order.
     *
     * @return empty if there is no such edition
     */
    Optional<Amending> edition(String region, String name, List<String> amendments);
}
