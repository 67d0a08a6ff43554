package org.deckplanreview.schedule;

/**
 * A step of the work.
 *
 * @param hold whether work stops here until it is checked
 */
public record WorkStep(String step, boolean hold) {}
