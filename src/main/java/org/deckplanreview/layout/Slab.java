package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;

/**
 * A part of a polygon between two places along an axis with no corner in between, so that its stretches across the axis
 * have straight borders. Coordinates are along and across the axis.
 */
record Slab(double from, double to, List<Stretch> stretches) {

    /** Places closer together than this along the axis are one place. */
    private static final double SAME_PLACE_MM = 1e-6;

    double middle() {
        return (from + to) / 2;
    }

    /** One uninterrupted stretch across the axis: its lower and upper border at both ends of the slab. */
    record Stretch(double lowFrom, double lowTo, double highFrom, double highTo) {

        double lowMiddle() {
            return (lowFrom + lowTo) / 2;
        }

        double highMiddle() {
            return (highFrom + highTo) / 2;
        }

        double middle() {
            return (lowMiddle() + highMiddle()) / 2;
        }
    }

    /** A side of a polygon, turned to run up the axis. */
    record Side(Coordinate start, Coordinate end) {

        static List<Side> ofRing(List<Coordinate> corners) {
            List<Side> sides = new ArrayList<>();
            for (int i = 0; i < corners.size(); i++) {
                Coordinate a = corners.get(i);
                Coordinate b = corners.get((i + 1) % corners.size());
                sides.add(a.x <= b.x ? new Side(a, b) : new Side(b, a));
            }
            return sides;
        }

        boolean passes(double along) {
            return start.x < along && along < end.x;
        }

        double acrossAt(double along) {
            double fraction = Math.max(0, Math.min(1, (along - start.x) / (end.x - start.x)));
            return start.y + fraction * (end.y - start.y);
        }

        /** Where the side crosses a line along the axis, if it does. */
        boolean crosses(double across) {
            return (start.y <= across) != (end.y <= across);
        }

        double alongAt(double across) {
            return start.x + (across - start.y) / (end.y - start.y) * (end.x - start.x);
        }
    }

    /** Cuts a polygon at all of its corners and at the given places. */
    static List<Slab> cut(List<Side> sides, List<Double> places) {
        TreeSet<Double> all = new TreeSet<>(places);
        sides.forEach(s -> all.addAll(List.of(s.start().x, s.end().x)));
        List<Slab> slabs = new ArrayList<>();
        double from = all.first();
        for (double to : all) {
            if (to - from > SAME_PLACE_MM) {
                slabs.add(of(from, to, sides));
                from = to;
            }
        }
        return slabs;
    }

    private static Slab of(double from, double to, List<Side> sides) {
        double middle = (from + to) / 2;
        List<Side> passing = sides.stream()
                .filter(s -> s.passes(middle))
                .sorted(Comparator.comparingDouble(s -> s.acrossAt(middle)))
                .toList();
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i + 1 < passing.size(); i += 2) {
            Side low = passing.get(i);
            Side high = passing.get(i + 1);
            stretches.add(new Stretch(low.acrossAt(from), low.acrossAt(to), high.acrossAt(from), high.acrossAt(to)));
        }
        return new Slab(from, to, List.copyOf(stretches));
    }
}
