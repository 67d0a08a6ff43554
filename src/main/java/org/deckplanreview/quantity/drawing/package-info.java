/** Whether what is drawn and stated can be at all. */
package org.deckplanreview.quantity.drawing;
