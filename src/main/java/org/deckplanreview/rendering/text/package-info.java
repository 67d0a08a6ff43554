/** Reports as plain text. */
package org.deckplanreview.rendering.text;
