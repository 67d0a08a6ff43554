package org.deckplanreview.submission;

/**
 * A direction in plan, as the document wrote it: not zero, of any length.
 */
public record Direction(double dx, double dy) {}
