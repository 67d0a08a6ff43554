package org.deckplanreview.provenance;

import java.io.IOException;
import org.erdtman.jcs.JsonCanonicalizer;

/** JSON in the one form that equal data always has (RFC 8785, JSON Canonicalization Scheme). */
public final class CanonicalJson {

    private CanonicalJson() {}

    /**
     * The canonical form of an object or array.
     *
     * @throws IllegalArgumentException if the text is not JSON, has a member twice, or a number that is not finite as a double
     */
    public static String of(String json) {
        try {
            return new JsonCanonicalizer(json).getEncodedString();
        } catch (IOException e) {
            throw new IllegalArgumentException("Not a JSON object or array: " + e.getMessage(), e);
        }
    }
}
