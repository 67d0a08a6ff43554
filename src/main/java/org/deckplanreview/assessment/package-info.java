/**
 * Runs an edition's provisions over their subjects. The only place where a determination is made. May use {@code method}
 * and {@code ruleset}.
 */
package org.deckplanreview.assessment;
