package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * The flashing over a ledger.
 *
 * @param upWall how far it runs up the wall
 * @param pastFace how far it reaches past the ledger's face
 * @param downFace how far it is turned down over the ledger's face
 * @param barrierLap how far the wall's water barrier laps over it
 */
public record LedgerFlashing(
        Optional<Length> upWall, Optional<Length> pastFace, Optional<Length> downFace, Optional<Length> barrierLap) {}
