/**
 * One submission: the records that mirror {@code schema/submission-1.json}, their reading, and every fault that a
 * document can have. May use {@code measure} and {@code kernel}. Geometry only tells whether a drawing fits
 * together. Knows nothing of layout, rules or reports.
 */
package org.deckplanreview.submission;
