package org.deckplanreview.submission;

import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;

/**
 * A hold-down from the deck into the building's floor.
 *
 * @param at along the ledger from where its line begins
 * @param capacity a force, allowable, as its maker states it
 */
public record LateralConnection(Length at, Measure capacity) {}
