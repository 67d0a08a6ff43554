package org.deckplanreview.review;

/** Reviews submissions. Pure: the same bytes give the same result. */
public interface Reviewer {
    ReviewResult review(byte[] bytes);
}
