package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * The joist along the edge of a building's floor to which a ledger is fixed.
 *
 * @param cantilevered whether the floor behind it overhangs the wall below
 */
public record BandJoist(BandJoistKind kind, Length thickness, Optional<Length> depth, Optional<Boolean> cantilevered) {}
