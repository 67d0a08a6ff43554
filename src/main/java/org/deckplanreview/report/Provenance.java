package org.deckplanreview.report;

import java.util.function.Supplier;

/** Where the report comes from. Digests are written {@code sha256:…}; those of whole documents are taken when they are asked for. */
public final class Provenance {
    private final String service;
    private final String received;
    private final Once submission = new Once();
    private final Supplier<String> submissionDigest;
    private final String edition;
    private final Once report = new Once();

    Provenance(String service, String received, Supplier<String> submissionDigest, String edition) {
        this.service = service;
        this.received = received;
        this.submissionDigest = submissionDigest;
        this.edition = edition;
    }

    /** Version of the service. */
    public String service() {
        return service;
    }

    /** Digest of the bytes received. */
    public String received() {
        return received;
    }

    /** Digest of the submission's canonical form (RFC 8785). */
    public String submission() {
        return submission.get(submissionDigest);
    }

    /** Digest of the resolved edition with its standards. */
    public String edition() {
        return edition;
    }

    /** @param of the report whose provenance this is */
    String digest(Report of) {
        return report.get(() -> ReportJson.digest(of));
    }

    /** A text that is made once. Threads that ask at the same time make the same text. */
    private static final class Once {
        private String made;

        String get(Supplier<String> maker) {
            String known = made;
            if (known == null) {
                known = maker.get();
                made = known;
            }
            return known;
        }
    }
}
