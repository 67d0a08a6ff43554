package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.submission.GroundLevel;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;

/** Ground linear within the triangles between surveyed points. */
final class TriangulatedGround implements GroundSurface {

    /** How far outside the surveyed points a place still counts as on their border. */
    private static final double BORDER_MM = 1;

    private static final double ON_EDGE = -1e-12;

    private final List<Coordinate> points;
    private final STRtree triangles = new STRtree();
    private final List<LineSegment> edges;

    private TriangulatedGround(List<Coordinate> points) {
        this.points = List.copyOf(points);
        TreeSet<Triangulation.Side> sides = new TreeSet<>();
        for (Triangulation.Corners t : Triangulation.of(this.points)) {
            Envelope around = new Envelope(points.get(t.a()), points.get(t.b()));
            around.expandToInclude(points.get(t.c()));
            triangles.insert(around, t);
            sides.addAll(t.sides());
        }
        triangles.build();
        this.edges = sides.stream()
                .map(s -> new LineSegment(points.get(s.a()), points.get(s.b())))
                .toList();
    }

    /** Of two levels at one place the lower is taken. */
    static TriangulatedGround through(List<GroundLevel> survey) {
        List<Coordinate> points = new ArrayList<>();
        survey.stream()
                .map(g -> new Coordinate(g.x().mm(), g.y().mm(), g.z().mm()))
                .sorted(Comparator.<Coordinate>naturalOrder().thenComparingDouble(Coordinate::getZ))
                .forEach(c -> {
                    if (points.isEmpty() || !points.get(points.size() - 1).equals2D(c)) {
                        points.add(c);
                    }
                });
        return new TriangulatedGround(points);
    }

    @Override
    public Derived<Double> levelMm(PlanPoint p) {
        Coordinate at = new Coordinate(p.xMm(), p.yMm());
        return within(at).or(() -> onBorder(at)).map(Derived::known).orElseGet(GroundSurface::unknown);
    }

    private Optional<Double> within(Coordinate at) {
        for (Triangulation.Corners t : trianglesAround(at)) {
            Coordinate a = points.get(t.a());
            Coordinate b = points.get(t.b());
            Coordinate c = points.get(t.c());
            double whole = Triangulation.cross(a, b, c);
            double shareA = Triangulation.cross(at, b, c) / whole;
            double shareB = Triangulation.cross(at, c, a) / whole;
            double shareC = Triangulation.cross(at, a, b) / whole;
            if (shareA >= ON_EDGE && shareB >= ON_EDGE && shareC >= ON_EDGE) {
                return Optional.of(shareA * a.getZ() + shareB * b.getZ() + shareC * c.getZ());
            }
        }
        return Optional.empty();
    }

    /** In their own order, so that the index's order decides nothing. */
    private List<Triangulation.Corners> trianglesAround(Coordinate at) {
        List<?> found = triangles.query(new Envelope(at));
        return found.stream().map(Triangulation.Corners.class::cast).sorted().toList();
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
        LineSegment segment = new LineSegment(
                line.from().xMm(), line.from().yMm(), line.to().xMm(), line.to().yMm());
        for (LineSegment e : edges) {
            double start = Triangulation.cross(segment.p0, e.p0, e.p1);
            double end = Triangulation.cross(segment.p1, e.p0, e.p1);
            double fraction = start / (start - end);
            if (fraction > 0 && fraction < 1 && e.distance(segment.pointAlong(fraction)) <= BORDER_MM) {
                fractions.add(fraction);
            }
        }
        return fractions.stream().map(f -> Axis.pointAt(line, f)).toList();
    }

    @Override
    public List<PlanPoint> vertices() {
        return points.stream().map(c -> new PlanPoint(c.x, c.y)).toList();
    }
}
