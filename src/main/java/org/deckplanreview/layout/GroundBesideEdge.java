package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/** The ground in a strip outside an edge, for rules that look farther than the edge itself. */
public final class GroundBesideEdge {

    /** A step to the side of an edge that tells which side lies outside the outline. */
    private static final double ASIDE_MM = 1;

    private GroundBesideEdge() {}

    /**
     * The largest drop from the boards at an edge to the ground within a distance square to it. Beside another platform
     * it is the step to that platform's boards, whatever lies beyond them. Missing where the ground is not known in the
     * whole strip.
     *
     * @param withinMm more than 0
     */
    public static Derived<Drop> largestDrop(Layout layout, EdgeRun edge, double withinMm) {
        if (edge.edgeKind().filter(EdgeKind.PLATFORM::equals).isPresent()) {
            return edge.drop();
        }
        PlatformLayout platform = layout.platformOf(edge);
        GroundSurface ground = GroundSurface.of(layout.submission().site());
        Derived<Plane> boardsTop = DeckLevels.of(layout.submission(), platform.platform(), platform.pointer())
                .boardsTop();
        return boardsTop.flatMap(plane -> largestDrop(plane, ground, edge.line(), strip(platform, edge, withinMm)));
    }

    /**
     * Height of the highest place of a platform's boards above the highest ground along its outline, mm, as planning law
     * measures on a slope. Missing where the ground is not known along the whole outline.
     */
    public static Derived<Double> heightAboveHighestMm(Layout layout, PlatformLayout platform) {
        GroundSurface ground = GroundSurface.of(layout.submission().site());
        List<PlanPoint> places = new Outline(platform.platform().outline())
                .sides().stream().flatMap(side -> ground.bends(side).stream()).toList();
        Derived<Double> highestGround = Derived.known(Double.NEGATIVE_INFINITY);
        for (PlanPoint place : places) {
            highestGround = highestGround.with(ground.levelMm(place), Math::max);
        }
        return DeckLevels.of(layout.submission(), platform.platform(), platform.pointer())
                .boardsTop()
                .map(plane -> places.stream().mapToDouble(plane::levelMm).max().orElseThrow())
                .with(highestGround, (boards, soil) -> boards - soil);
    }

    private static Outline strip(PlatformLayout platform, EdgeRun edge, double withinMm) {
        Axis axis = Axis.of(edge.line());
        PlanPoint middle = Axis.pointAt(edge.line(), 0.5);
        PlanPoint aside = axis.point(axis.along(middle), axis.across(middle) + ASIDE_MM);
        double outwards = new Outline(platform.platform().outline()).contains(aside) ? -withinMm : withinMm;
        return new Outline(List.of(
                edge.line().from(),
                edge.line().to(),
                moved(axis, edge.line().to(), outwards),
                moved(axis, edge.line().from(), outwards)));
    }

    private static PlanPoint moved(Axis axis, PlanPoint p, double across) {
        return axis.point(axis.along(p), axis.across(p) + across);
    }

    /** Ground and boards are linear between the strip's sides, the ground's bends on them and the surveyed points within. */
    private static Derived<Drop> largestDrop(Plane boardsTop, GroundSurface ground, PlanLine edge, Outline strip) {
        Axis axis = Axis.of(edge);
        List<PlanPoint> places = new ArrayList<>();
        strip.sides().forEach(side -> places.addAll(ground.bends(side)));
        ground.vertices().stream().filter(strip::contains).forEach(places::add);
        List<Height> heights = new ArrayList<>();
        List<Need> needs = new ArrayList<>();
        for (PlanPoint place : places) {
            PlanPoint onEdge = axis.point(axis.along(place), axis.across(edge.from()));
            Derived<Double> level = ground.levelMm(place);
            needs.addAll(level.needs());
            level.optional().ifPresent(z -> heights.add(new Height(boardsTop.levelMm(onEdge) - z, place)));
        }
        if (!needs.isEmpty()) {
            return Derived.missing(needs);
        }
        Height largest = Height.largestOf(heights);
        return Derived.known(new Drop(largest.mm(), largest.at()));
    }
}
