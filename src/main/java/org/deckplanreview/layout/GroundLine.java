package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/** The ground along a line in plan, as far as it was surveyed. */
public final class GroundLine {

    private GroundLine() {}

    /** Where the ground's slope may change. */
    public record Place(PlanPoint at, double levelMm) {}

    /** Unbroken stretches in the line's order, each of two or more places between which the ground is straight. */
    public static List<List<Place>> along(Layout layout, PlanLine line) {
        GroundSurface ground = GroundSurface.of(layout.submission().site());
        List<List<Place>> stretches = new ArrayList<>();
        List<Place> stretch = new ArrayList<>();
        List<PlanPoint> bends = ground.bends(line);
        for (int i = 0; i < bends.size(); i++) {
            Optional<Place> here = place(ground, bends.get(i));
            boolean joined = i > 0
                    && here.isPresent()
                    && place(ground, Axis.pointAt(new PlanLine(bends.get(i - 1), bends.get(i)), 1.0 / 2))
                            .isPresent();
            if (!joined) {
                end(stretch, stretches);
                stretch = new ArrayList<>();
            }
            here.ifPresent(stretch::add);
        }
        end(stretch, stretches);
        return List.copyOf(stretches);
    }

    private static void end(List<Place> stretch, List<List<Place>> stretches) {
        if (stretch.size() > 1) {
            stretches.add(List.copyOf(stretch));
        }
    }

    private static Optional<Place> place(GroundSurface ground, PlanPoint at) {
        return ground.levelMm(at).optional().map(z -> new Place(at, z));
    }
}
