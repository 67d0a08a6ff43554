package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * Joists at one spacing that fill a platform's outline.
 *
 * @param direction along the joists
 * @param spacing centre to centre
 */
public record JoistField(String timber, Direction direction, Length spacing, Optional<EndNotch> endNotch) {}
