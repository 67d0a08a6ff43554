/**
 * Statics: characteristic loads on joists, continuous beams by the stiffness method, and the takedown joist to beam to
 * post to footing. May use {@code layout}. Load values come in through {@link org.deckplanreview.loadpath.LoadModel};
 * partial factors come in through {@link org.deckplanreview.loadpath.ActionFactors}. Knows nothing of strengths or rules.
 */
package org.deckplanreview.loadpath;
