/**
 * Calculations for guards under horizontal load: posts at their root, their fixing to the frame, rails and infill. May use
 * the bending strength of {@code method.en1995}. Loads and limits come from the ruleset.
 */
package org.deckplanreview.method.guard;
