package org.deckplanreview.rendering.drawing;

import java.util.List;
import java.util.stream.IntStream;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/** Two directions in plan, square to each other: along (dx, dy), and across, a quarter turned to the left. */
record Axes(double dx, double dy) {

    private static final double PARALLEL = 1e-6;

    static Axes of(double dx, double dy) {
        double length = Math.sqrt(dx * dx + dy * dy);
        return new Axes(dx / length, dy / length);
    }

    static Axes of(Direction d) {
        return of(d.dx(), d.dy());
    }

    static Axes of(PlanLine line) {
        return of(
                line.to().xMm() - line.from().xMm(),
                line.to().yMm() - line.from().yMm());
    }

    /** Those of the deck's frame, as near to the sheet's as they can be turned. */
    static Axes ofDeck(Layout layout) {
        return layout.platforms().stream()
                .flatMap(p -> p.platform().joists().stream())
                .findFirst()
                .map(j -> of(j.direction()).nearSheet())
                .orElse(new Axes(1, 0));
    }

    private Axes nearSheet() {
        Axes a = Math.abs(dx) >= Math.abs(dy) ? this : new Axes(dy, -dx);
        return a.dx < 0 ? new Axes(-a.dx, -a.dy) : a;
    }

    double along(PlanPoint p) {
        return p.xMm() * dx + p.yMm() * dy;
    }

    double across(PlanPoint p) {
        return p.yMm() * dx - p.xMm() * dy;
    }

    PlanPoint point(double along, double across) {
        return new PlanPoint(along * dx - across * dy, along * dy + across * dx);
    }

    /** Sine of the angle to a line, without sense. */
    double sineTo(PlanLine line) {
        Axes o = of(line);
        return Math.abs(dx * o.dy - dy * o.dx);
    }

    boolean isParallel(PlanLine line) {
        return sineTo(line) < PARALLEL;
    }

    boolean isSquare(PlanLine line) {
        Axes o = of(line);
        return Math.abs(dx * o.dx + dy * o.dy) < PARALLEL;
    }

    /** Whether all sides of all platforms follow the two directions. */
    boolean fit(List<PlatformLayout> platforms) {
        return platforms.stream().flatMap(p -> sides(p).stream()).allMatch(s -> isParallel(s) || isSquare(s));
    }

    static List<PlanLine> sides(PlatformLayout p) {
        List<PlanPoint> o = p.platform().outline();
        return IntStream.range(0, o.size())
                .mapToObj(i -> new PlanLine(o.get(i), o.get((i + 1) % o.size())))
                .toList();
    }
}
