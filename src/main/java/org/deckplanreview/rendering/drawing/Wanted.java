package org.deckplanreview.rendering.drawing;

import java.util.List;

/**
 * A label that wants a place.
 *
 * @param callout numbers of findings in front of it; blank for none
 * @param lines of text; possibly none beside a callout
 * @param title the whole text where the lines are cut; blank otherwise
 * @param anchor what it points at
 * @param clearMm radius around the anchor that it keeps clear of
 */
record Wanted(Kind kind, String callout, List<String> lines, String title, Vec anchor, Vec along, double clearMm) {

    Wanted {
        lines = List.copyOf(lines);
    }

    /** In the order in which they get their places. */
    enum Kind {
        DIMENSION,
        CALLOUT,
        NOTE
    }

    /**
     * A number above the middle of a dimension line.
     *
     * @param halfMm half of the dimension line
     */
    static Wanted dimension(String text, Vec middle, Vec along, double halfMm) {
        return new Wanted(Kind.DIMENSION, "", List.of(text), "", middle, along, halfMm);
    }

    static Wanted note(String callout, List<String> lines, String title, Vec anchor, double clearMm) {
        return new Wanted(
                callout.isEmpty() ? Kind.NOTE : Kind.CALLOUT, callout, lines, title, anchor, Vec.RIGHT, clearMm);
    }
}
