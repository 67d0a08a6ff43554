/**
 * What provisions limit or depend on: named things that are found on a subject, and never judged.
 *
 * <p>Start at {@link org.deckplanreview.quantity.Quantities}, which lists them all; each subject has a room of its own. An entry is
 * a name, a unit, the kinds of subject that have it, a definition in one sentence and a pure function that finds it, misses it with
 * the pointer to give, or says that it does not apply. Lengths are in mm. Quantities know no document; what rulesets may call them
 * stands in {@code vocabulary}.
 */
package org.deckplanreview.quantity;
