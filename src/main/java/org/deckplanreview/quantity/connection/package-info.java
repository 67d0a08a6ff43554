/** Fixings of ledgers, beams, joists and plies. */
package org.deckplanreview.quantity.connection;
