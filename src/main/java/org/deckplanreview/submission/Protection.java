package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;

/**
 * How timber and metal are protected on site.
 *
 * @param cutEndsTreated whether every cut, notch and hole is brushed with end-grain preservative
 */
public record Protection(Optional<Boolean> cutEndsTreated, List<Fixing> fixings) {
    public Protection {
        fixings = List.copyOf(fixings);
    }
}
