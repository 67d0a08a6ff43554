package org.deckplanreview.rendering.drawing;

import java.util.Comparator;
import java.util.Optional;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.submission.Fall;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/**
 * Where a platform is cut: through its fall, downhill to the right; along the joists where it is level.
 *
 * @param inside the stretch of the cut within the outline
 */
record SectionLine(Axes axes, PlanLine inside) {

    private static final double FAR_MM = 1e6;

    static Optional<SectionLine> of(PlatformLayout p) {
        Axes axes = p.platform()
                .fall()
                .filter(f -> Double.isFinite(f.oneIn()))
                .flatMap(Fall::direction)
                .map(Axes::of)
                .or(() -> p.platform().joists().map(j -> Axes.of(j.direction())))
                .orElse(new Axes(1, 0));
        PlanArea area = new PlanArea(p.platform().outline());
        double middle = axes.across(area.middle());
        double across = p.joists().stream()
                .filter(j -> axes.isParallel(j.line()))
                .map(JoistLine::line)
                .map(l -> axes.across(l.from()))
                .min(Comparator.comparingDouble(a -> Math.abs(a - middle)))
                .orElse(middle);
        PlanLine through = new PlanLine(axes.point(-FAR_MM, across), axes.point(FAR_MM, across));
        return area.longestInside(through).map(inside -> new SectionLine(axes, inside));
    }

    double fromMm() {
        return axes.along(inside.from());
    }

    double toMm() {
        return axes.along(inside.to());
    }

    double acrossMm() {
        return axes.across(inside.from());
    }

    PlanPoint point(double along) {
        return axes.point(along, acrossMm());
    }

    /** Where a line in plan meets the cut, along the cut; empty where it does not, or lies along it. */
    Optional<Double> meets(PlanLine line) {
        double a = axes.across(line.from()) - acrossMm();
        double b = axes.across(line.to()) - acrossMm();
        if (a == b || a * b > 0) {
            return Optional.empty();
        }
        double t = a / (a - b);
        return Optional.of(axes.along(line.from()) * (1 - t) + axes.along(line.to()) * t);
    }
}
