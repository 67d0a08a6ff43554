/** Flights, risers, goings, landings, treads and handrails. */
package org.deckplanreview.quantity.stair;
