package org.deckplanreview.layout;

import org.deckplanreview.kernel.Pointer;

/**
 * How a member misses what is drawn to carry it.
 *
 * @param mm how far; 0 where it only touches it
 * @param label of what it misses, or of what it rests on alone
 * @param pointer of the same
 */
public record Miss(Kind kind, double mm, String label, Pointer pointer) {

    /** The ways to miss. */
    public enum Kind {
        /** It ends in front of it. */
        SHORT,
        /** It passes beside its end, or beside a post. */
        BESIDE,
        /** It hangs on it with a part of its breadth beside its end. */
        PARTLY_BESIDE,
        /** It goes on beyond the face on which it hangs, and nothing else carries it there. */
        OVERHANGS_HANGER,
        /** It rests on it alone. */
        ALONE,
        /** It rests on nothing. */
        NOTHING
    }
}
