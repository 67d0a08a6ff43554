package org.deckplanreview.layout;

import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/** Ground at one level everywhere. */
record LevelGround(double levelMm) implements GroundSurface {

    @Override
    public Derived<Double> levelMm(PlanPoint p) {
        return Derived.known(levelMm);
    }

    @Override
    public List<PlanPoint> bends(PlanLine line) {
        return List.of(line.from(), line.to());
    }

    @Override
    public List<PlanPoint> vertices() {
        return List.of();
    }
}
