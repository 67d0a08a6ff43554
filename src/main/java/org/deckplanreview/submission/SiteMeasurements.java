package org.deckplanreview.submission;

import java.util.List;

/**
 * What was measured after setting out.
 *
 * @param levels of the boards' upper face
 */
public record SiteMeasurements(List<MeasuredDiagonal> diagonals, List<MeasuredLevel> levels) {
    public SiteMeasurements {
        diagonals = List.copyOf(diagonals);
        levels = List.copyOf(levels);
    }
}
