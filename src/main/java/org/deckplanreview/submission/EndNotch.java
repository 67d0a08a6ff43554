package org.deckplanreview.submission;

import org.deckplanreview.measure.Length;

/**
 * A notch at the supports of a member.
 *
 * @param depth cut out of the member's depth
 * @param supportDistance from the line of the reaction to the notch's corner
 * @param slope run of the notch's incline over its depth; 0 for a square cut
 */
public record EndNotch(Length depth, Length supportDistance, double slope, NotchSide side) {}
