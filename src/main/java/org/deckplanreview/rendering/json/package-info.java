/** Reports as JSON. */
package org.deckplanreview.rendering.json;
