/** Edges of platforms with their drops, and the guards along them. */
package org.deckplanreview.quantity.edge;
