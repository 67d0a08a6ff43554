package org.deckplanreview.report;

/**
 * Where the report comes from. Digests are written {@code sha256:…}.
 *
 * @param service version of the service
 * @param received digest of the bytes received
 * @param submission digest of the submission's canonical form (RFC 8785)
 * @param edition digest of the resolved edition with its standards
 * @param report digest of the canonical form of the report without this member
 */
public record Provenance(String service, String received, String submission, String edition, String report) {}
