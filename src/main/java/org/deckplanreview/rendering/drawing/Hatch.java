package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.List;

/** Hatching at 45 degrees, drawn line by line so that every viewer shows the same. */
final class Hatch {

    private static final Vec ACROSS = new Vec(1, 1).unit();

    private Hatch() {}

    /** Lines within a convex area, so many mm apart. */
    static List<Segment> lines(List<Vec> convex, double apart) {
        double first = convex.stream().mapToDouble(ACROSS::dot).min().orElseThrow();
        double last = convex.stream().mapToDouble(ACROSS::dot).max().orElseThrow();
        List<Segment> lines = new ArrayList<>();
        for (double k = Math.floor(first / apart) + 1; k * apart < last; k++) {
            List<Vec> cuts = cuts(convex, k * apart);
            if (cuts.size() == 2) {
                lines.add(new Segment(cuts.get(0), cuts.get(1)));
            }
        }
        return lines;
    }

    private static List<Vec> cuts(List<Vec> convex, double at) {
        List<Vec> cuts = new ArrayList<>();
        for (int i = 0; i < convex.size(); i++) {
            Vec a = convex.get(i);
            Vec b = convex.get((i + 1) % convex.size());
            double before = ACROSS.dot(a) - at;
            double behind = ACROSS.dot(b) - at;
            if (before < 0 != behind < 0) {
                cuts.add(a.plus(b.minus(a).times(before / (before - behind))));
            }
        }
        return cuts;
    }
}
