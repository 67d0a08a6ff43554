package org.deckplanreview.submission;

import org.deckplanreview.measure.Length;

/**
 * A level measured on site on the upper face of the frame or boards.
 */
public record MeasuredLevel(PlanPoint at, Length z) {}
