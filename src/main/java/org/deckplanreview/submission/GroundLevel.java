package org.deckplanreview.submission;

import org.deckplanreview.measure.Length;

/**
 * A surveyed level of the ground.
 *
 * @param z level above the datum of the survey
 */
public record GroundLevel(Length x, Length y, Length z) {}
