package org.deckplanreview.submission;

/**
 * A straight line in plan between two points.
 */
public record PlanLine(PlanPoint from, PlanPoint to) {}
