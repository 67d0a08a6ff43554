/**
 * Calculations of EN 1995-1-1:2004 with its amendments A1:2008 and A2:2014, for boards, joists and beams of solid
 * timber. What the standard fixes or leaves to a nation comes in as parameters; the equations are here, each named by
 * its number. The front door is {@link org.deckplanreview.method.en1995.En1995}.
 */
package org.deckplanreview.method.en1995;
