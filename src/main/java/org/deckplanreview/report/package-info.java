/**
 * The report, format 1: its records, its order, what it says on top and the digests that prove where it comes from. May use
 * {@code assessment} and {@code provenance}.
 */
package org.deckplanreview.report;
