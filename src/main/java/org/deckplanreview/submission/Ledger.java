package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * A timber fixed to a wall that carries joists' ends.
 *
 * @param wall id of a wall of the site
 * @param bearingLength of joists on it, or in their hangers
 * @param fixings to the wall
 */
public record Ledger(
        String timber,
        String wall,
        PlanLine line,
        JoistSeating joists,
        Optional<Length> bearingLength,
        Optional<LedgerFixings> fixings) {}
