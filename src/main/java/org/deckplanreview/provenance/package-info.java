/**
 * Canonical JSON (RFC 8785) and digests. Uses no other package of the project.
 */
package org.deckplanreview.provenance;
