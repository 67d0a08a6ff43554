package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/** How far a plane lies above what is under it or beside it at one place; negative where it lies below. */
record Height(double mm, PlanPoint at) {

    /** Heights closer than this are one height, so that rounding does not choose the place. */
    private static final double SAME_MM = 1e-9;

    /** The largest height above the ground along a line, at the first place where it occurs. */
    static Derived<Height> largest(Derived<Plane> plane, GroundSurface ground, PlanLine line) {
        return plane.flatMap(p -> all(p, ground, ground.bends(line))).map(Height::largestOf);
    }

    /** The first of the largest of heights, of which there must be one. */
    static Height largestOf(List<Height> heights) {
        Height best = heights.get(0);
        for (Height h : heights) {
            best = h.mm > best.mm + SAME_MM ? h : best;
        }
        return best;
    }

    /** The smallest height above the ground along a line. Plane and ground are linear between the ground's bends, so these decide. */
    static Derived<Double> smallest(Derived<Plane> plane, GroundSurface ground, PlanLine line) {
        return plane.flatMap(p -> all(p, ground, ground.bends(line))).map(Height::smallestOf);
    }

    /** The smallest height within an outline: at its corners, where its sides cross the ground's edges, or at a surveyed point. */
    static Derived<Double> smallest(Derived<Plane> plane, GroundSurface ground, Outline outline) {
        List<PlanPoint> places = new ArrayList<>();
        outline.sides().forEach(s -> places.addAll(ground.bends(s)));
        ground.vertices().stream().filter(outline::contains).forEach(places::add);
        return plane.flatMap(p -> all(p, ground, places)).map(Height::smallestOf);
    }

    private static Derived<List<Height>> all(Plane plane, GroundSurface ground, List<PlanPoint> places) {
        List<Height> heights = new ArrayList<>();
        List<Need> needs = new ArrayList<>();
        for (PlanPoint at : places) {
            Derived<Double> level = ground.levelMm(at);
            needs.addAll(level.needs());
            level.optional().ifPresent(z -> heights.add(new Height(plane.levelMm(at) - z, at)));
        }
        return needs.isEmpty() ? Derived.known(heights) : Derived.missing(needs);
    }

    private static double smallestOf(List<Height> heights) {
        return heights.stream()
                .min(Comparator.comparingDouble(Height::mm))
                .orElseThrow()
                .mm();
    }
}
