package org.deckplanreview.ruleset;

/** A document that provisions and values come from. {@code key} is how the ruleset's files call it. */
public record Source(String key, String title, String edition, String publisher, Standing standing) {}
