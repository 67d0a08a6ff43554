package org.deckplanreview.submission;

/**
 * Untreated timber of a durable species.
 *
 * @param heartwoodClass 1 (very durable) to 5 (not durable), EN 350
 * @param heartwoodOnly whether no sapwood is left
 */
public record NaturalDurability(int heartwoodClass, boolean heartwoodOnly) {}
