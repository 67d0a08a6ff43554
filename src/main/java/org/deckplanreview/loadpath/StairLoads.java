package org.deckplanreview.loadpath;

import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.loadpath.LoadModel.OnEdges;

/**
 * Characteristic loads of one flight, N. It spans in plan from its foot to the frame as a simple beam, so that each of the
 * two takes half of them.
 */
record StairLoads(double weightN, Derived<Double> imposedN) {

    private static final int SIDES = 2;

    /** The flight over its area in plan, and the guard beside it on both sides along its slope. */
    static StairLoads of(StairRun stair, OnEdges loads) {
        double areaMm2 = stair.widthMm() * stair.goingMm();
        double slopeMm = stair.goingMm() / StrictMath.cos(StrictMath.toRadians(stair.pitchDegrees()));
        double guards = stair.guard()
                .map(g -> SIDES * slopeMm * loads.guardKNPerM(g.infill()))
                .orElse(0.0);
        return new StairLoads(
                Weights.nPerMm2(loads.stairWeightKNPerM2()) * areaMm2 + guards,
                loads.stairImposedKNPerM2().map(q -> Weights.nPerMm2(q) * areaMm2));
    }

    double weightAtHeadN() {
        return weightN / 2;
    }

    Derived<Double> imposedAtHeadN() {
        return imposedN.map(n -> n / 2);
    }
}
