/** The use, the site, the building beside the deck, escape, boundaries and planning. */
package org.deckplanreview.quantity.site;
