/**
 * What rulesets may name: quantities, kinds of subject, methods and their parameters, and the tables that parameters
 * can be. Descriptions only; what computes them lives in {@code method}. May use {@code measure} and {@code submission}.
 */
package org.deckplanreview.vocabulary;
