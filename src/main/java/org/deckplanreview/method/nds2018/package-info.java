/**
 * Allowable stress design of sawn lumber by the National Design Specification for Wood Construction, ANSI/AWC NDS-2018:
 * joists, beams, posts and posts of guards. Design values, factors and tables come in as parameters; the equations are
 * here, each named by its number, in inches and pounds. The front door is {@link org.deckplanreview.method.nds2018.Nds2018}.
 */
package org.deckplanreview.method.nds2018;
