/**
 * A report's findings and its site schedule as CSV (RFC 4180), for spreadsheets. What a spreadsheet could take for a
 * formula is written so that it stays text.
 */
package org.deckplanreview.rendering.csv;
