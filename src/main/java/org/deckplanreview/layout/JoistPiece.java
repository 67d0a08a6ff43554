package org.deckplanreview.layout;

/**
 * One joist in coordinates along and across the joists.
 *
 * @param from where the timber begins
 * @param to where the timber ends
 * @param carriesFrom where the deck that it carries begins; beyond its end where it hangs on a face and boards go on over what carries it
 * @param carriesTo where the deck that it carries ends
 */
record JoistPiece(double across, double from, double to, double carriesFrom, double carriesTo) {

    /** A joist as long as the deck that it carries. */
    JoistPiece(double across, double from, double to) {
        this(across, from, to, from, to);
    }

    double lengthMm() {
        return to - from;
    }

    double middle() {
        return (from + to) / 2;
    }

    boolean passes(double along) {
        return from <= along && along <= to;
    }

    boolean carries(double along) {
        return carriesFrom <= along && along <= carriesTo;
    }

    /** The place on the joist nearest to a place along the axis, measured from the joist's start. */
    double nearest(double along) {
        return Math.max(0, Math.min(lengthMm(), along - from));
    }
}
