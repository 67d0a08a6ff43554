package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * Joists at one spacing that fill a platform's outline.
 *
 * @param direction along the joists
 * @param spacing centre to centre
 * @param hangerResistance kN, characteristic resistance of one hanger, as its maker states it
 * @param holdDownResistance kN, design resistance of one joist's fixing to its beam or ledger against uplift
 * @param blocked whether blocking holds the joists upright at their supports
 */
public record JoistField(
        String timber,
        Direction direction,
        Length spacing,
        Optional<EndNotch> endNotch,
        Optional<Measure> hangerResistance,
        Optional<Measure> holdDownResistance,
        Optional<Boolean> blocked) {}
