package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.GroundLevel;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Triangle;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

/**
 * Ground linear within the Delaunay triangles of surveyed points. Where four points lie on one circle both diagonals of
 * the quadrilateral are Delaunay; the one that leaves the ground lower is taken, so that a drop is never found too small
 * and the answer does not depend on the order or orientation of the survey.
 */
final class TriangulatedGround implements GroundSurface {

    /** How far outside the surveyed points a place still counts as on their border. */
    private static final double BORDER_MM = 1;
    /** A triangle less high than this is three points on a line. */
    private static final double FLAT_MM = 1e-3;

    private static final double SAME_LEVEL_MM = 1e-9;
    private static final double SAME_CIRCLE_SINE = 1e-9;
    private static final double ON_EDGE = -1e-12;

    private final List<Coordinate> points;
    private final List<Corners> triangles;
    private final List<LineSegment> edges;

    private TriangulatedGround(List<Coordinate> points, List<Corners> triangles) {
        this.points = List.copyOf(points);
        this.triangles = List.copyOf(triangles);
        TreeSet<Side> sides = new TreeSet<>();
        triangles.forEach(t -> sides.addAll(t.sides()));
        this.edges = sides.stream()
                .map(s -> new LineSegment(points.get(s.a()), points.get(s.b())))
                .toList();
    }

    static TriangulatedGround through(List<GroundLevel> survey) {
        // Of two levels at one place the lower comes first and is kept.
        List<Coordinate> points = new ArrayList<>();
        survey.stream()
                .map(g -> new Coordinate(g.x().mm(), g.y().mm(), g.z().mm()))
                .sorted(Comparator.<Coordinate>naturalOrder().thenComparingDouble(Coordinate::getZ))
                .forEach(c -> {
                    if (points.isEmpty() || !points.get(points.size() - 1).equals2D(c)) {
                        points.add(c);
                    }
                });
        return new TriangulatedGround(points, lowerOfEqualDiagonals(points, delaunay(points)));
    }

    private static List<Corners> delaunay(List<Coordinate> points) {
        if (points.size() < 3) {
            return List.of();
        }
        TreeMap<Coordinate, Integer> index = new TreeMap<>();
        for (int i = 0; i < points.size(); i++) {
            index.put(points.get(i), i);
        }
        DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
        builder.setSites(points);
        Geometry found = builder.getTriangles(new GeometryFactory());
        TreeSet<Corners> triangles = new TreeSet<>();
        for (int i = 0; i < found.getNumGeometries(); i++) {
            Coordinate[] ring = found.getGeometryN(i).getCoordinates();
            double longest =
                    Math.max(ring[0].distance(ring[1]), Math.max(ring[1].distance(ring[2]), ring[2].distance(ring[0])));
            if (2 * Triangle.area(ring[0], ring[1], ring[2]) > FLAT_MM * longest) {
                triangles.add(Corners.of(index.get(ring[0]), index.get(ring[1]), index.get(ring[2])));
            }
        }
        return List.copyOf(triangles);
    }

    private static List<Corners> lowerOfEqualDiagonals(List<Coordinate> points, List<Corners> start) {
        TreeSet<Corners> triangles = new TreeSet<>(start);
        boolean flipped = true;
        while (flipped) {
            flipped = false;
            Map<Side, List<Corners>> bySide = new TreeMap<>();
            triangles.forEach(t -> t.sides()
                    .forEach(s ->
                            bySide.computeIfAbsent(s, k -> new ArrayList<>()).add(t)));
            for (Map.Entry<Side, List<Corners>> e : bySide.entrySet()) {
                List<Corners> beside = e.getValue();
                if (beside.size() != 2 || !triangles.containsAll(beside)) {
                    continue;
                }
                Side diagonal = e.getKey();
                Side other =
                        Side.of(beside.get(0).opposite(diagonal), beside.get(1).opposite(diagonal));
                if (isOnOneCircle(points, diagonal, other) && liesLower(points, other, diagonal)) {
                    beside.forEach(triangles::remove);
                    triangles.add(Corners.of(other.a(), other.b(), diagonal.a()));
                    triangles.add(Corners.of(other.a(), other.b(), diagonal.b()));
                    flipped = true;
                }
            }
        }
        return List.copyOf(triangles);
    }

    /** Four points lie on one circle where opposite angles of their quadrilateral add up to 180 degrees. */
    private static boolean isOnOneCircle(List<Coordinate> points, Side diagonal, Side other) {
        Coordinate a = points.get(diagonal.a());
        Coordinate b = points.get(diagonal.b());
        Coordinate c = points.get(other.a());
        Coordinate d = points.get(other.b());
        double sine = Math.abs(cross(c, a, b)) * dot(d, a, b) + dot(c, a, b) * Math.abs(cross(d, a, b));
        double lengths = c.distance(a) * c.distance(b) * d.distance(a) * d.distance(b);
        return Math.abs(sine) <= SAME_CIRCLE_SINE * lengths;
    }

    private static boolean liesLower(List<Coordinate> points, Side other, Side diagonal) {
        LineSegment p = new LineSegment(points.get(other.a()), points.get(other.b()));
        LineSegment q = new LineSegment(points.get(diagonal.a()), points.get(diagonal.b()));
        return levelWhereCrossed(p, q) < levelWhereCrossed(q, p) - SAME_LEVEL_MM;
    }

    private static double levelWhereCrossed(LineSegment line, LineSegment by) {
        double from = cross(line.p0, by.p0, by.p1);
        double to = cross(line.p1, by.p0, by.p1);
        double fraction = from / (from - to);
        return line.p0.getZ() * (1 - fraction) + line.p1.getZ() * fraction;
    }

    private static double cross(Coordinate apex, Coordinate a, Coordinate b) {
        return (a.x - apex.x) * (b.y - apex.y) - (a.y - apex.y) * (b.x - apex.x);
    }

    private static double dot(Coordinate apex, Coordinate a, Coordinate b) {
        return (a.x - apex.x) * (b.x - apex.x) + (a.y - apex.y) * (b.y - apex.y);
    }

    @Override
    public Derived<Double> levelMm(PlanPoint p) {
        Coordinate at = new Coordinate(p.xMm(), p.yMm());
        return within(at).or(() -> onBorder(at)).map(Derived::known).orElseGet(GroundSurface::unknown);
    }

    private Optional<Double> within(Coordinate at) {
        for (Corners t : triangles) {
            Coordinate a = points.get(t.a());
            Coordinate b = points.get(t.b());
            Coordinate c = points.get(t.c());
            double whole = cross(a, b, c);
            double shareA = cross(at, b, c) / whole;
            double shareB = cross(at, c, a) / whole;
            double shareC = cross(at, a, b) / whole;
            if (shareA >= ON_EDGE && shareB >= ON_EDGE && shareC >= ON_EDGE) {
                return Optional.of(shareA * a.getZ() + shareB * b.getZ() + shareC * c.getZ());
            }
        }
        return Optional.empty();
    }

    private Optional<Double> onBorder(Coordinate at) {
        return edges.stream()
                .filter(e -> e.distance(at) <= BORDER_MM)
                .min(Comparator.comparingDouble(e -> e.distance(at)))
                .map(e -> {
                    double fraction = e.segmentFraction(at);
                    return e.p0.getZ() * (1 - fraction) + e.p1.getZ() * fraction;
                });
    }

    @Override
    public List<PlanPoint> bends(PlanLine line) {
        TreeSet<Double> fractions = new TreeSet<>(List.of(0.0, 1.0));
        Coordinate from = new Coordinate(line.from().xMm(), line.from().yMm());
        Coordinate to = new Coordinate(line.to().xMm(), line.to().yMm());
        for (LineSegment e : edges) {
            double start = cross(from, e.p0, e.p1);
            double end = cross(to, e.p0, e.p1);
            double fraction = start / (start - end);
            if (fraction > 0 && fraction < 1) {
                Coordinate crossing = new LineSegment(from, to).pointAlong(fraction);
                if (e.distance(crossing) <= BORDER_MM) {
                    fractions.add(fraction);
                }
            }
        }
        return fractions.stream().map(f -> Axis.pointAt(line, f)).toList();
    }

    @Override
    public List<PlanPoint> vertices() {
        return points.stream().map(c -> new PlanPoint(c.x, c.y)).toList();
    }

    private record Side(int a, int b) implements Comparable<Side> {

        static Side of(int a, int b) {
            return new Side(Math.min(a, b), Math.max(a, b));
        }

        @Override
        public int compareTo(Side o) {
            return a != o.a ? Integer.compare(a, o.a) : Integer.compare(b, o.b);
        }
    }

    private record Corners(int a, int b, int c) implements Comparable<Corners> {

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
