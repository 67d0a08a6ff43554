package org.deckplanreview.layout;

import org.deckplanreview.submission.PlanPoint;

/** A plane in space: its level at one point and how much it drops along a downhill direction. */
record Plane(PlanPoint at, double levelMm, Axis downhill, double drop) {

    static Plane level(PlanPoint at, double levelMm) {
        return new Plane(at, levelMm, new Axis(1, 0), 0);
    }

    double levelMm(PlanPoint p) {
        return levelMm - (downhill.along(p) - downhill.along(at)) * drop;
    }

    Plane loweredBy(double mm) {
        return new Plane(at, levelMm - mm, downhill, drop);
    }
}
