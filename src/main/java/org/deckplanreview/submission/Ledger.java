package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * A timber fixed to a wall that carries joists' ends.
 *
 * @param wall id of a wall of the site
 * @param bearingLength of joists on it, or in their hangers
 * @param fixings to the wall
 * @param bandJoist of the building's floor, behind the ledger
 * @param lateralConnections that keep the deck from being pulled off the building
 */
public record Ledger(
        String timber,
        String wall,
        PlanLine line,
        JoistSeating joists,
        Optional<Length> bearingLength,
        Optional<LedgerFixings> fixings,
        Optional<BandJoist> bandJoist,
        List<LateralConnection> lateralConnections) {
    public Ledger {
        lateralConnections = List.copyOf(lateralConnections);
    }
}
