package org.deckplanreview.submission;

import org.deckplanreview.measure.Length;

/**
 * How the plies of a beam are fixed to each other.
 *
 * @param fixing id of the fixings
 * @param spacing along the beam, in each row
 */
public record PlyFixing(String fixing, Length spacing, int rows) {}
