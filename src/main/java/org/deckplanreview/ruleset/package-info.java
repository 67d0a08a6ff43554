/**
 * Editions: reading the layers, checking them against the vocabulary, the edition in force on a day, digests. May use
 * {@code vocabulary} and {@code provenance}. Knows nothing of how quantities and methods are computed.
 */
package org.deckplanreview.ruleset;
