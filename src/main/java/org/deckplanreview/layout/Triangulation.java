package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Triangle;

/**
 * The Delaunay triangulation of surveyed points. Where four points lie on one circle both diagonals of their
 * quadrilateral are Delaunay; the one that leaves the ground lower is taken, so that a drop is never found too small and
 * the answer does not depend on the order or orientation of the survey.
 *
 * <p>Points are added from left to right, each joined to the sides of the hull that it sees; then diagonals are flipped
 * (Lawson). The library's incremental triangulation is not used: on a survey grid turned by a few degrees, whose points
 * lie on lines but for rounding, it fails to converge.
 */
final class Triangulation {

    /** A triangle less high than this is three points on a line. */
    private static final double FLAT_MM = 1e-3;

    private static final double SAME_LEVEL_MM = 1e-9;
    private static final double SAME_CIRCLE_SINE = 1e-9;

    private final List<Coordinate> points;

    private Triangulation(List<Coordinate> points) {
        this.points = points;
    }

    /**
     * @param points with their levels as z, in the order of x, then y; no two at one place
     * @return triangles in a fixed order; none where all points lie on one line
     */
    static List<Corners> of(List<Coordinate> points) {
        Triangulation t = new Triangulation(points);
        TreeSet<Corners> triangles = t.anyTriangles();
        t.flip(triangles, t::isNotDelaunay);
        triangles.removeIf(t::isFlat);
        t.flip(triangles, t::hasLowerEqual);
        return List.copyOf(triangles);
    }

    private TreeSet<Corners> anyTriangles() {
        TreeSet<Corners> triangles = new TreeSet<>();
        int apex = 2;
        while (apex < points.size() && turn(0, 1, apex) == Orientation.COLLINEAR) {
            apex++;
        }
        if (apex >= points.size()) {
            return triangles;
        }
        List<Integer> hull = new ArrayList<>();
        for (int i = 0; i < apex; i++) {
            hull.add(turn(0, 1, apex) == Orientation.COUNTERCLOCKWISE ? i : apex - 1 - i);
        }
        for (int i = 0; i + 1 < apex; i++) {
            triangles.add(Corners.of(i, i + 1, apex));
        }
        hull.add(apex);
        for (int next = apex + 1; next < points.size(); next++) {
            hull = joined(hull, next, triangles);
        }
        return triangles;
    }

    /** Joins a point outside the hull to the sides that it sees; the hull runs counterclockwise. */
    private List<Integer> joined(List<Integer> hull, int next, TreeSet<Corners> triangles) {
        int size = hull.size();
        boolean[] seen = new boolean[size];
        for (int i = 0; i < size; i++) {
            int from = hull.get(i);
            int to = hull.get((i + 1) % size);
            seen[i] = turn(from, to, next) == Orientation.CLOCKWISE;
            if (seen[i]) {
                triangles.add(Corners.of(from, to, next));
            }
        }
        List<Integer> wider = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            boolean seenBefore = seen[(i + size - 1) % size];
            if (!(seenBefore && seen[i])) {
                wider.add(hull.get(i));
            }
            if (seen[i] && !seenBefore) {
                wider.add(next);
            }
        }
        return wider;
    }

    private int turn(int a, int b, int c) {
        return Orientation.index(points.get(a), points.get(b), points.get(c));
    }

    private boolean isFlat(Corners t) {
        Coordinate a = points.get(t.a());
        Coordinate b = points.get(t.b());
        Coordinate c = points.get(t.c());
        double longest = Math.max(a.distance(b), Math.max(b.distance(c), c.distance(a)));
        return 2 * Triangle.area(a, b, c) <= FLAT_MM * longest;
    }

    private interface Rule {
        boolean prefers(Side other, Side diagonal);
    }

    private void flip(TreeSet<Corners> triangles, Rule rule) {
        boolean flipped = true;
        while (flipped) {
            flipped = false;
            for (Map.Entry<Side, List<Corners>> e : bySide(triangles).entrySet()) {
                Side diagonal = e.getKey();
                List<Corners> beside = e.getValue();
                if (beside.size() != 2 || !triangles.containsAll(beside)) {
                    continue;
                }
                Side other =
                        Side.of(beside.get(0).opposite(diagonal), beside.get(1).opposite(diagonal));
                if (rule.prefers(other, diagonal)) {
                    beside.forEach(triangles::remove);
                    triangles.add(Corners.of(other.a(), other.b(), diagonal.a()));
                    triangles.add(Corners.of(other.a(), other.b(), diagonal.b()));
                    flipped = true;
                }
            }
        }
    }

    private static Map<Side, List<Corners>> bySide(TreeSet<Corners> triangles) {
        Map<Side, List<Corners>> bySide = new TreeMap<>();
        for (Corners t : triangles) {
            t.sides()
                    .forEach(s ->
                            bySide.computeIfAbsent(s, k -> new ArrayList<>()).add(t));
        }
        return bySide;
    }

    private boolean isNotDelaunay(Side other, Side diagonal) {
        return opposite(other, diagonal) < -SAME_CIRCLE_SINE
                && turn(other.a(), other.b(), diagonal.a()) * turn(other.a(), other.b(), diagonal.b()) < 0;
    }

    private boolean hasLowerEqual(Side other, Side diagonal) {
        return Math.abs(opposite(other, diagonal)) <= SAME_CIRCLE_SINE
                && levelWhereCrossed(other, diagonal) < levelWhereCrossed(diagonal, other) - SAME_LEVEL_MM;
    }

    /** Sine of the sum of the angles opposite the diagonal: 0 on one circle, negative where the diagonal is not Delaunay. */
    private double opposite(Side other, Side diagonal) {
        Coordinate a = points.get(diagonal.a());
        Coordinate b = points.get(diagonal.b());
        Coordinate c = points.get(other.a());
        Coordinate d = points.get(other.b());
        double sine = Math.abs(cross(c, a, b)) * dot(d, a, b) + dot(c, a, b) * Math.abs(cross(d, a, b));
        return sine / (c.distance(a) * c.distance(b) * d.distance(a) * d.distance(b));
    }

    private double levelWhereCrossed(Side line, Side by) {
        Coordinate a = points.get(line.a());
        Coordinate b = points.get(line.b());
        double from = cross(a, points.get(by.a()), points.get(by.b()));
        double to = cross(b, points.get(by.a()), points.get(by.b()));
        double fraction = from / (from - to);
        return a.getZ() * (1 - fraction) + b.getZ() * fraction;
    }

    static double cross(Coordinate apex, Coordinate a, Coordinate b) {
        return (a.x - apex.x) * (b.y - apex.y) - (a.y - apex.y) * (b.x - apex.x);
    }

    private static double dot(Coordinate apex, Coordinate a, Coordinate b) {
        return (a.x - apex.x) * (b.x - apex.x) + (a.y - apex.y) * (b.y - apex.y);
    }

    /** A side between two points, the smaller index first. */
    record Side(int a, int b) implements Comparable<Side> {

        static Side of(int a, int b) {
            return new Side(Math.min(a, b), Math.max(a, b));
        }

        @Override
        public int compareTo(Side o) {
            return a != o.a ? Integer.compare(a, o.a) : Integer.compare(b, o.b);
        }
    }

    /** A triangle of three points, indices rising. */
    record Corners(int a, int b, int c) implements Comparable<Corners> {

        static Corners of(int a, int b, int c) {
            int low = Math.min(a, Math.min(b, c));
            int high = Math.max(a, Math.max(b, c));
            return new Corners(low, a + b + c - low - high, high);
        }

        List<Side> sides() {
            return List.of(new Side(a, b), new Side(a, c), new Side(b, c));
        }

        int opposite(Side side) {
            return a + b + c - side.a() - side.b();
        }

        @Override
        public int compareTo(Corners o) {
            return Comparator.comparingInt(Corners::a)
                    .thenComparingInt(Corners::b)
                    .thenComparingInt(Corners::c)
                    .compare(this, o);
        }
    }
}
