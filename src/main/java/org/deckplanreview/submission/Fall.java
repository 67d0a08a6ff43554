package org.deckplanreview.submission;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;

/**
 * The fall of a platform.
 *
 * @param oneIn run for one of drop, 80 for 1:80; infinite for a level platform
 * @param direction downhill; not needed by a level platform
 */
public record Fall(@JsonProperty("gradient") double oneIn, Optional<Direction> direction) {}
