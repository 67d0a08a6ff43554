/**
 * Uplift along the way from joist to beam, post, base and footing, with the factors of equilibrium that a ruleset gives. Front
 * door: {@link org.deckplanreview.method.equilibrium.Equilibrium}.
 */
package org.deckplanreview.method.equilibrium;
