/**
 * The calculations and quantities that rulesets name, by document and edition. A method measures and never judges. May use
 * {@code layout}, {@code loadpath} and {@code vocabulary}. Knows no provision, region or edition.
 */
package org.deckplanreview.method;
