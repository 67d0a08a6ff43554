/** Joists and beams: spans, overhangs, contact, room between the pieces, and what prescriptive tables are entered with. */
package org.deckplanreview.quantity.span;
