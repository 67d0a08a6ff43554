package org.deckplanreview.schedule;

/**
 * Where a value of site practice comes from.
 *
 * @param recalled whether it was recalled from memory
 */
public record PracticeValue(String parameter, String source, boolean recalled) {}
