package org.deckplanreview.measure;

/** Yes or no. */
public record Flag(boolean yes) implements Value {}
