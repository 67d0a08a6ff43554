package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * How a ledger is fixed to its wall.
 *
 * @param edgeDistance from the fixings to the ledger's edges
 * @param endDistance from the last fixing to the ledger's end
 * @param resistance kN, design resistance of one fixing in shear, as its maker or a test states it
 */
public record LedgerFixings(
        LedgerBase base,
        Optional<Length> diameter,
        Optional<Length> spacing,
        Optional<Length> edgeDistance,
        Optional<Length> endDistance,
        Optional<Measure> resistance,
        Optional<LedgerWeathering> weathering) {}
