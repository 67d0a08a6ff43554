/**
 * Calculations for what carries a stair. May use the bending strength of {@code method.en1995}. Loads come from the ruleset.
 */
package org.deckplanreview.method.stair;
