package org.deckplanreview.submission;

/**
 * The strings that carry a stair.
 */
public record Strings(String timber, int count) {}
