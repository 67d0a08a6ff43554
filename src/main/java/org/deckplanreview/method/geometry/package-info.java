/**
 * The quantities that provisions limit or depend on: what the drawing, the ground, the timber and the metal are, taken
 * from the layout and the submission. Front door: {@link org.deckplanreview.method.geometry.Quantities}.
 */
package org.deckplanreview.method.geometry;
