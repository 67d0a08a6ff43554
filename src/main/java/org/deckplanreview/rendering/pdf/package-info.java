/** A report as PDF, made of its page for paper. May use {@code rendering.html}. */
package org.deckplanreview.rendering.pdf;
