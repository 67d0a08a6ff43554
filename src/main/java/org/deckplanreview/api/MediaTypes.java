package org.deckplanreview.api;

import jakarta.ws.rs.core.MediaType;

/** Media types that JAX-RS has no constant for. */
final class MediaTypes {
    static final String PROBLEM = "application/problem+json";
    static final String NDJSON = "application/x-ndjson";
    static final String HTML_UTF_8 = "text/html;charset=UTF-8";
    static final String SCHEMA = "application/schema+json";
    static final String PDF = "application/pdf";
    static final String SVG = "image/svg+xml";
    static final String SARIF = "application/sarif+json";
    static final String CSV = "text/csv";
    static final String TEXT_UTF_8 = "text/plain;charset=UTF-8";

    static final MediaType PDF_TYPE = MediaType.valueOf(PDF);
    static final MediaType SVG_TYPE = MediaType.valueOf(SVG);
    static final MediaType SARIF_TYPE = MediaType.valueOf(SARIF);
    static final MediaType CSV_TYPE = MediaType.valueOf(CSV);

    private MediaTypes() {}
}
