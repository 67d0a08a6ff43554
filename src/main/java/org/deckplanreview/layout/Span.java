package org.deckplanreview.layout;

/**
 * A stretch of a member between two supports, or beyond the last one.
 *
 * @param fromMm along the member
 * @param toMm along the member
 */
public record Span(Kind kind, double fromMm, double toMm) {

    /** Between supports, or a cantilever at the member's start or end. */
    public enum Kind {
        BETWEEN_SUPPORTS,
        CANTILEVER_AT_START,
        CANTILEVER_AT_END
    }

    public double lengthMm() {
        return toMm - fromMm;
    }

    public boolean isCantilever() {
        return kind != Kind.BETWEEN_SUPPORTS;
    }
}
