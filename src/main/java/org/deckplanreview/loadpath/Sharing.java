package org.deckplanreview.loadpath;

import java.util.List;

/**
 * How boards pass a concentrated load on one joist to the joists on both sides of it. The board under the load is a beam on
 * three springs: the loaded joist and its two neighbours, as flexible as the loaded one at that place. With {@code c = 6 E I
 * / s^3}, the load in the middle of a board on two spans that moves it by one, and the joist's flexibility {@code d}, the
 * joist keeps {@code (2 + c d) / (2 + 3 c d)} of the load. That is taken in the middle of a span; from there the part rises
 * to the whole at the supports, as a parabola. Other boards pass on more, which is left out; beyond the last support, and
 * where no joist runs beside the span on one side, the joist keeps all.
 *
 * @param acrossNPerMm c
 * @param least the part that a joist keeps at least
 * @param spans those of the member that have a neighbour on both sides
 */
record Sharing(double acrossNPerMm, double least, List<Integer> spans) {

    static final Sharing NONE = new Sharing(0, 1, List.of());

    Sharing {
        spans = List.copyOf(spans);
    }

    /** The part of a load in the middle of a span that bends the member. */
    double atMiddle(int span, double flexibilityMmPerN) {
        double ratio = acrossNPerMm * flexibilityMmPerN;
        return spans.contains(span) ? Math.max(least, (2 + ratio) / (2 + 3 * ratio)) : 1;
    }

    /** Between the middle and the supports. */
    static double at(double fraction, double atMiddle) {
        return 1 - (1 - atMiddle) * 4 * fraction * (1 - fraction);
    }
}
