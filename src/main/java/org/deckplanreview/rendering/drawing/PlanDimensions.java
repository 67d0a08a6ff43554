package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/**
 * The plan's dimensions. A deck whose sides are square to each other has chains below it and on its left: posts, corners, the
 * whole. Any other deck has one dimension along each side and one chain along each beam.
 */
final class PlanDimensions {

    private static final double FIRST_BELOW = 16;
    private static final double FIRST_BESIDE = 25;
    private static final double LAST_CHAIN = 6;
    private static final double SIDE_OFFSET = 12;
    private static final double BEAM_OFFSET = 5;
    private static final double SAME_MM = 0.5;

    private final Layout layout;
    private final Axes axes;
    private final boolean square;
    private final List<List<Double>> chainsAlong;
    private final List<List<Double>> chainsAcross;

    PlanDimensions(Layout layout) {
        this.layout = layout;
        this.axes = Axes.ofDeck(layout);
        this.square = axes.fit(layout.platforms());
        this.chainsAlong = chains(axes::along);
        this.chainsAcross = chains(axes::across);
    }

    private List<List<Double>> chains(ToDoubleFunction<PlanPoint> coordinate) {
        List<PlanPoint> corners = new ArrayList<>();
        List<PlanPoint> posts = new ArrayList<>();
        for (PlatformLayout p : layout.platforms()) {
            corners.addAll(p.platform().outline());
            p.posts().forEach(q -> posts.add(q.post().at()));
        }
        List<Double> sides = distinct(corners, coordinate);
        double first = sides.get(0);
        double last = sides.get(sides.size() - 1);
        posts.addAll(corners.stream()
                .filter(c -> coordinate.applyAsDouble(c) == first || coordinate.applyAsDouble(c) == last)
                .toList());
        List<Double> whole = List.of(first, last);
        List<List<Double>> chains = new ArrayList<>();
        List<Double> inner = distinct(posts, coordinate);
        if (!inner.equals(whole) && !inner.equals(sides)) {
            chains.add(inner);
        }
        if (!sides.equals(whole)) {
            chains.add(sides);
        }
        chains.add(whole);
        return chains;
    }

    private static List<Double> distinct(List<PlanPoint> points, ToDoubleFunction<PlanPoint> coordinate) {
        List<Double> sorted = points.stream()
                .map(coordinate::applyAsDouble)
                .sorted(Comparator.naturalOrder())
                .toList();
        List<Double> kept = new ArrayList<>();
        for (double v : sorted) {
            if (kept.isEmpty() || v - kept.get(kept.size() - 1) > SAME_MM) {
                kept.add(v);
            }
        }
        return kept;
    }

    /** Room on the sheet on the deck's left, mm. */
    double roomBeside() {
        return room(FIRST_BESIDE, chainsAcross.size());
    }

    /** Room on the sheet below the deck, mm. */
    double roomBelow() {
        return room(FIRST_BELOW, chainsAlong.size());
    }

    private double room(double first, int chains) {
        return square ? first + (chains - 1) * Dimensions.BETWEEN_CHAINS + LAST_CHAIN : SIDE_OFFSET + 2 * LAST_CHAIN;
    }

    void draw(Canvas canvas, ShownUnits units, PlanView view) {
        Dimensions dimensions = new Dimensions(canvas, units);
        if (square) {
            square(dimensions, view);
        } else {
            layout.platforms().forEach(p -> sides(p, dimensions, view));
            layout.platforms().forEach(p -> p.beams().forEach(b -> along(b, dimensions, view)));
        }
    }

    private void square(Dimensions dimensions, PlanView view) {
        double alongFirst = first(axes::along);
        double acrossFirst = first(axes::across);
        double outerAlong = outermost(axes::along);
        double outerAcross = outermost(axes::across);
        for (int i = 0; i < chainsAlong.size(); i++) {
            double off = view.scale().divisor() * (FIRST_BELOW + i * Dimensions.BETWEEN_CHAINS);
            List<Double> at = chainsAlong.get(i);
            dimensions.chain(
                    at.stream().map(v -> view.at(axes.point(v, acrossFirst))).toList(),
                    at.stream()
                            .map(v -> view.at(axes.point(v, outerAcross - off)))
                            .toList(),
                    gaps(at));
        }
        for (int i = 0; i < chainsAcross.size(); i++) {
            double off = view.scale().divisor() * (FIRST_BESIDE + i * Dimensions.BETWEEN_CHAINS);
            List<Double> at = chainsAcross.get(i);
            dimensions.chain(
                    at.stream().map(v -> view.at(axes.point(alongFirst, v))).toList(),
                    at.stream()
                            .map(v -> view.at(axes.point(outerAlong - off, v)))
                            .toList(),
                    gaps(at));
        }
    }

    private double first(ToDoubleFunction<PlanPoint> coordinate) {
        return layout.platforms().stream()
                .flatMap(p -> p.platform().outline().stream())
                .mapToDouble(coordinate)
                .min()
                .orElseThrow();
    }

    /** With stairs, which reach beyond the outline. */
    private double outermost(ToDoubleFunction<PlanPoint> coordinate) {
        return layout.platforms().stream()
                .flatMap(p -> PlanDrawing.reach(p).stream())
                .mapToDouble(coordinate)
                .min()
                .orElseThrow();
    }

    private static List<Double> gaps(List<Double> at) {
        List<Double> gaps = new ArrayList<>();
        for (int i = 1; i < at.size(); i++) {
            gaps.add(at.get(i) - at.get(i - 1));
        }
        return gaps;
    }

    private void sides(PlatformLayout p, Dimensions dimensions, PlanView view) {
        PlanArea area = new PlanArea(p.platform().outline());
        for (PlanLine side : Axes.sides(p)) {
            PlanPoint n = area.outwards(side);
            Vec out = PlanView.direction(n.xMm(), n.yMm()).times(SIDE_OFFSET);
            Vec a = view.at(side.from());
            Vec b = view.at(side.to());
            dimensions.single(a, b, a.plus(out), b.plus(out), PlanDrawing.length(side));
        }
    }

    private void along(BeamLine beam, Dimensions dimensions, PlanView view) {
        List<Double> at = new ArrayList<>(List.of(0.0));
        beam.supports().stream().map(MemberSupport::atMm).forEach(at::add);
        at.add(beam.lengthMm());
        List<Double> kept = new ArrayList<>();
        at.stream()
                .filter(v -> kept.isEmpty() || v - kept.get(kept.size() - 1) > SAME_MM)
                .forEach(kept::add);
        Vec a = view.at(beam.line().from());
        Vec d = view.at(beam.line().to()).minus(a).unit();
        Vec aside = d.left().times(BEAM_OFFSET);
        List<Vec> feet =
                kept.stream().map(v -> a.along(d, view.scale().onSheet(v))).toList();
        dimensions.chain(feet, feet.stream().map(f -> f.plus(aside)).toList(), gaps(kept));
    }
}
