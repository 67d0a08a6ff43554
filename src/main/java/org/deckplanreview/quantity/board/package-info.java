/** Boards: their fall, gaps and directions. */
package org.deckplanreview.quantity.board;
