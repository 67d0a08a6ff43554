package org.deckplanreview.layout;

/** One joist in coordinates along and across the joists. */
record JoistPiece(double across, double from, double to) {

    double lengthMm() {
        return to - from;
    }

    boolean passes(double along) {
        return from <= along && along <= to;
    }

    /** The place on the joist nearest to a place along the axis, measured from the joist's start. */
    double nearest(double along) {
        return Math.max(0, Math.min(lengthMm(), along - from));
    }
}
