/** The forms that a report is given in. May use {@code report} and {@code layout}. */
package org.deckplanreview.rendering;
