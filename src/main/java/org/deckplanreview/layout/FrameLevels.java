package org.deckplanreview.layout;

import org.deckplanreview.kernel.Derived;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;

/** Levels along the beams of a platform, with its fall. */
public final class FrameLevels {

    private final Platform platform;
    private final DeckLevels levels;

    private FrameLevels(Platform platform, DeckLevels levels) {
        this.platform = platform;
        this.levels = levels;
    }

    public static FrameLevels of(Layout layout, PlatformLayout platform) {
        return new FrameLevels(
                platform.platform(), DeckLevels.of(layout.submission(), platform.platform(), platform.pointer()));
    }

    /** Level of the boards' upper face, mm. */
    public Derived<Double> boardsTopMm(PlanPoint at) {
        return levels.boardsTop().map(plane -> plane.levelMm(at));
    }

    /** Level of the joists' upper face, mm. */
    public Derived<Double> joistsTopMm(PlanPoint at) {
        return levels.boardsUnderside().map(plane -> plane.levelMm(at));
    }

    /** Level of a beam's upper face, mm, at a place in mm along the beam. */
    public Derived<Double> topMm(BeamLine beam, double atMm) {
        return levels.carrierTop(described(beam).joists())
                .map(plane -> plane.levelMm(Axis.pointAt(beam.line(), atMm / beam.lengthMm())));
    }

    /** Level at which a post under or beside the beam ends, mm: the beam's underside, or its upper face where it is fixed to the post's sides. */
    public Derived<Double> seatMm(BeamLine beam, double atMm) {
        double below = described(beam).seating() == BeamSeating.ON_POST
                ? beam.timber().depth().mm()
                : 0;
        return topMm(beam, atMm).map(top -> top - below);
    }

    /** Level of a beam's underside, mm, at a place in plan. */
    public Derived<Double> undersideMm(BeamLine beam, PlanPoint at) {
        return levels.carrierUnderside(
                        described(beam).joists(), beam.timber().depth().mm())
                .map(plane -> plane.levelMm(at));
    }

    private Beam described(BeamLine beam) {
        return platform.beams().stream()
                .filter(b -> b.id().equals(beam.id()))
                .findFirst()
                .orElseThrow();
    }
}
