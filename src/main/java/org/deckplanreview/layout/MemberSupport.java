package org.deckplanreview.layout;

import java.util.OptionalDouble;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.JoistSeating;

/**
 * What carries a member at one place.
 *
 * @param atMm along the member, to the middle of the bearing
 * @param kind beam, ledger, post or block
 * @param id the id of the beam, post or block; of the wall for a ledger
 * @param pointer where the submission describes what carries it
 * @param label how people call what carries it
 * @param contactLengthMm along the member, in full breadth where a joist lies on it with a part of its breadth only; empty when the submission does not tell (a hanger or ledger without bearing length)
 * @param seating of a joist: on top or in hangers; ON_TOP for a beam over a post; for a beam bolted to a post's sides HANGERS
 *     stands for "no bearing across the grain here"
 */
public record MemberSupport(
        double atMm,
        Kind kind,
        String id,
        Pointer pointer,
        String label,
        OptionalDouble contactLengthMm,
        JoistSeating seating) {

    /** What carries the member. */
    public enum Kind {
        BEAM,
        LEDGER,
        POST,
        BLOCK
    }
}
