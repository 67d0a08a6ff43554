/**
 * A report's findings as a SARIF log (OASIS Static Analysis Results Interchange Format 2.1.0), so that a repository of
 * submissions shows them where it shows other findings.
 */
package org.deckplanreview.rendering.sarif;
