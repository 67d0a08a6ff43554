package org.deckplanreview.submission;

import java.util.Optional;
import org.deckplanreview.measure.Length;

/**
 * Handrails of a stair.
 *
 * @param height above the pitch line
 * @param extension beyond the first and the last nosing, level, the shorter of both
 * @param grip width that the hand closes round: the diameter of a round handrail, the larger side of another
 * @param clearWidth between one handrail and the next beside it, across the flight
 */
public record Handrails(
        StairSides sides,
        Optional<Length> height,
        Optional<Length> extension,
        Optional<Length> grip,
        Optional<Length> clearWidth) {}
