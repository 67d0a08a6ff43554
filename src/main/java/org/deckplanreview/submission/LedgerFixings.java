package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * How a ledger is fixed to its wall.
 *
 * @param edgeDistance from the fixings to the ledger's edges
 * @param endDistance from the last fixing to the ledger's end
 * @param resistance design resistance of one fixing in shear, as its maker or a test states it
 * @param sheathing thickness between ledger and band joist, 0 for none
 * @param gap that washers or spacers keep open between ledger and sheathing, 0 for none
 * @param topEdgeDistance from the upper row to the ledger's upper edge
 * @param bottomEdgeDistance from the lower row to the ledger's lower edge
 * @param rowDistance between the two rows
 * @param staggered whether the fixings alternate between the rows
 * @param tipBeyondBand whether the points of lag screws pass through the band joist
 * @param tensionResistance design resistance of one fixing against being pulled out of the wall
 */
public record LedgerFixings(
        LedgerBase base,
        Optional<LedgerFixingKind> kind,
        Optional<Length> diameter,
        Optional<Length> spacing,
        Optional<Length> edgeDistance,
        Optional<Length> endDistance,
        Optional<Measure> resistance,
        Optional<LedgerWeathering> weathering,
        Optional<Length> sheathing,
        Optional<Length> gap,
        Optional<Length> topEdgeDistance,
        Optional<Length> bottomEdgeDistance,
        Optional<Length> rowDistance,
        Optional<Boolean> staggered,
        Optional<Boolean> tipBeyondBand,
        Optional<Measure> tensionResistance,
        Optional<LedgerFlashing> flashing) {}
