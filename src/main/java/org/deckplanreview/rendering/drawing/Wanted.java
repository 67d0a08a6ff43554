package org.deckplanreview.rendering.drawing;

import java.util.List;

/**
 * A label that wants a place.
 *
 * @param callout numbers of findings in front of it; blank for none
 * @param mark of the worst of these findings
 * @param lines of text; possibly none beside a callout
 * @param title the whole text where the lines are cut; blank otherwise
 * @param anchors what it may point at, the best first
 * @param along direction of reading
 * @param clearMm radius around the anchor that it keeps clear of
 */
record Wanted(
        Kind kind,
        String callout,
        Mark mark,
        List<String> lines,
        String title,
        List<Vec> anchors,
        Vec along,
        double clearMm) {

    Wanted {
        lines = List.copyOf(lines);
        anchors = List.copyOf(anchors);
    }

    /** In the order in which they get their places. */
    enum Kind {
        SYMBOL,
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
        return new Wanted(Kind.DIMENSION, "", Mark.NONE, List.of(text), "", List.of(middle), along, halfMm);
    }

    static Wanted note(String callout, Mark mark, List<String> lines, String title, List<Vec> anchors, double clearMm) {
        Kind kind = callout.isEmpty() ? Kind.NOTE : Kind.CALLOUT;
        return new Wanted(kind, callout, mark, lines, title, anchors, Vec.RIGHT, clearMm);
    }

    /** A letter beside a symbol. */
    static Wanted symbol(String text, Vec anchor, double clearMm) {
        return new Wanted(Kind.SYMBOL, "", Mark.NONE, List.of(text), "", List.of(anchor), Vec.RIGHT, clearMm);
    }

    static Wanted note(String text, Vec anchor, double clearMm) {
        return note("", Mark.NONE, List.of(text), "", List.of(anchor), clearMm);
    }
}
