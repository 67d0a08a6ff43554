/** The commands. */
package org.deckplanreview.cli;
