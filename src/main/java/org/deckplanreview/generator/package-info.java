/**
 * Submissions of invented decks, for tests and audits: the same seed gives the same decks. Knows the published form of a
 * submission alone: names no other package.
 */
package org.deckplanreview.generator;
