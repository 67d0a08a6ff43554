package org.deckplanreview.loadpath;

/**
 * What each action is multiplied by in one combination.
 *
 * @param permanent applied to the whole of the permanent action
 */
public record ActionFactors(double permanent, double imposed, double concentrated, double snow) {}
