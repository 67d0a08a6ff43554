package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * Handrails of a stair.
 *
 * @param height above the pitch line
 */
public record Handrails(StairSides sides, Optional<Length> height) {}
