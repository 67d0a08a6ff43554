package org.deckplanreview.submission;

import org.deckplanreview.measure.Length;

/**
 * A diagonal measured on site between the centres of two posts.
 *
 * @param from id of a post
 * @param to id of a post
 */
public record MeasuredDiagonal(String from, String to, Length length) {}
