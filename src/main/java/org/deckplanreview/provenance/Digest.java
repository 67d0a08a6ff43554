package org.deckplanreview.provenance;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Digests that name what they were taken of. */
public final class Digest {

    private Digest() {}

    /** SHA-256 (FIPS 180-4), written as {@code sha256:} and 64 lower-case hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        try {
            return "sha256:"
                    + HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    /** {@link #sha256(byte[])} over the text's UTF-8. */
    public static String sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }
}
