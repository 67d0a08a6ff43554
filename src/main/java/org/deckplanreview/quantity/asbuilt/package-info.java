/** What was measured on site against what was drawn. */
package org.deckplanreview.quantity.asbuilt;
