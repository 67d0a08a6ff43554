package org.deckplanreview.submission;

import org.deckplanreview.measure.Length;

/**
 * A finished level at one point.
 */
public record Level(PlanPoint at, Length z) {}
