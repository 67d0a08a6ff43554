package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;

/**
 * How timber and metal are protected on site.
 *
 * @param cutEndsTreated whether every cut, notch and hole is brushed with end-grain preservative
 * @param crossVentilated whether air passes under the frame from side to side
 */
public record Protection(
        Optional<Boolean> cutEndsTreated,
        List<Fixing> fixings,
        Optional<WeedControl> weedControl,
        Optional<Boolean> crossVentilated) {
    public Protection {
        fixings = List.copyOf(fixings);
    }
}
