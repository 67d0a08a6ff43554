/**
 * Formulas as data: the equation that a document prints is written once, calculates, is checked in its dimensions, and is shown
 * in a report as text or mathematics.
 *
 * <p>Start at {@link org.deckplanreview.formula.Sheet}, on which a method enters its values and calculates its
 * {@link org.deckplanreview.formula.Formula}s. Nothing here makes a text before somebody asks for it. Knows no document, no
 * deck and no ruleset; uses {@code measure} and {@code kernel} alone.
 */
package org.deckplanreview.formula;
