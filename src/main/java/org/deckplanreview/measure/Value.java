package org.deckplanreview.measure;

/** What a quantity can be: a number with its unit, a word of a closed list, or yes and no. */
public sealed interface Value permits Measure, Word, Flag {}
