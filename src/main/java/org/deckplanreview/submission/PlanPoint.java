package org.deckplanreview.submission;

/**
 * A point in plan, in mm whatever the document's unit.
 */
public record PlanPoint(double xMm, double yMm) {}
