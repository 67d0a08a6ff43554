/**
 * What manufactured boards carry, by what their maker states. Front door: {@link
 * org.deckplanreview.method.decking.ManufacturedDecking}.
 */
package org.deckplanreview.method.decking;
