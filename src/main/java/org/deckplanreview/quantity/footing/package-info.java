/** Posts and footings: heights, depths and sizes. */
package org.deckplanreview.quantity.footing;
