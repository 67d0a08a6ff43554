package org.deckplanreview.submission;

import java.util.Optional;

/**
 * The fall of a platform.
 *
 * @param oneIn run for one of drop, 80 for 1:80; infinite for a level platform
 * @param direction downhill; not needed by a level platform
 */
public record Fall(double oneIn, Optional<Direction> direction) {}
