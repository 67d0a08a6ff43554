/**
 * Calculations of footings: pressure on the soil, depth against frost and clay, embedded posts. Front door: {@link
 * org.deckplanreview.method.foundation.Foundation}.
 */
package org.deckplanreview.method.foundation;
