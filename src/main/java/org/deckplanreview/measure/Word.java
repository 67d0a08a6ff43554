package org.deckplanreview.measure;

/** A word of a closed list, for example a soil class or a use class. */
public record Word(String word) implements Value {}
