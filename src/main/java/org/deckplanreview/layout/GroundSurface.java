package org.deckplanreview.layout;

import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Site;

/** The ground as surveyed. Where it was not surveyed its level is missing, never extrapolated. */
interface GroundSurface {

    Derived<Double> levelMm(PlanPoint p);

    /** Both ends of a line and the places between them where the ground may change its slope, in order. */
    List<PlanPoint> bends(PlanLine line);

    /** The places where the ground's slope may change in every direction. */
    List<PlanPoint> vertices();

    static GroundSurface of(Site site) {
        if (site.groundLevels().size() == 1) {
            return new LevelGround(site.groundLevels().get(0).z().mm());
        }
        return TriangulatedGround.through(site.groundLevels());
    }

    static Derived<Double> unknown() {
        return Derived.missing(
                Pointer.of("/site/groundLevels"),
                "ground levels, one for level ground or three or more surveyed points that cover the deck");
    }
}
