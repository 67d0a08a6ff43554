package org.deckplanreview.layout;

import org.deckplanreview.submission.PlanPoint;

/**
 * The largest drop along an edge.
 *
 * @param largestMm positive downwards
 * @param at where
 */
public record Drop(double largestMm, PlanPoint at) {}
