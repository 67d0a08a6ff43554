/** A report as a page of HTML that stands alone, and the same for paper. May use the report's words and the drawings. */
package org.deckplanreview.rendering.html;
