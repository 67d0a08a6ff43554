/**
 * What every package speaks in: pointers into a submission, what is missing from it, values that follow or do not, and words of
 * closed lists. Start at {@link org.deckplanreview.kernel.Derived}. Uses no other package of the project.
 */
package org.deckplanreview.kernel;
