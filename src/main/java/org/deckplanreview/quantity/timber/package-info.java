/** Treatment, durability, grades and sizes of timber, and the metal beside it. */
package org.deckplanreview.quantity.timber;
