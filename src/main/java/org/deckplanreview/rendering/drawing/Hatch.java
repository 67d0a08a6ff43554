package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.List;

/** Hatching at 45 degrees, drawn line by line so that every viewer shows the same. */
final class Hatch {

    private static final Vec FALLING = new Vec(1, 1).unit();
    private static final Vec RISING = new Vec(1, -1).unit();

    private Hatch() {}

    /** Lines that rise to the right, within a convex area, so many mm apart. */
    static List<Segment> rising(List<Vec> convex, double apart) {
        return lines(convex, FALLING, apart);
    }

    /** Lines that fall to the right. */
    static List<Segment> falling(List<Vec> convex, double apart) {
        return lines(convex, RISING, apart);
    }

    private static List<Segment> lines(List<Vec> convex, Vec across, double apart) {
        double first = convex.stream().mapToDouble(across::dot).min().orElseThrow();
        double last = convex.stream().mapToDouble(across::dot).max().orElseThrow();
        List<Segment> lines = new ArrayList<>();
        for (double k = Math.floor(first / apart) + 1; k * apart < last; k++) {
            List<Vec> cuts = cuts(convex, across, k * apart);
            if (cuts.size() == 2) {
                lines.add(new Segment(cuts.get(0), cuts.get(1)));
            }
        }
        return lines;
    }

    private static List<Vec> cuts(List<Vec> convex, Vec across, double at) {
        List<Vec> cuts = new ArrayList<>();
        for (int i = 0; i < convex.size(); i++) {
            Vec a = convex.get(i);
            Vec b = convex.get((i + 1) % convex.size());
            double before = across.dot(a) - at;
            double behind = across.dot(b) - at;
            if (before < 0 != behind < 0) {
                cuts.add(a.plus(b.minus(a).times(before / (before - behind))));
            }
        }
        return cuts;
    }
}
