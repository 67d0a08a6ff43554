package org.deckplanreview.method.foundation;

import java.util.List;
import org.deckplanreview.method.foundation.PadPlan.Sides;

/** Where the resultant on a footing lies, and the area that is left for it: EN 1997-1, 6.5.2 and annex D.3, by Meyerhof. */
record Eccentricity(PadPlan plan, double alongMm, double acrossMm) {

    /** A' of the worse turn: the part of the base that has the resultant at its middle. */
    double effectiveAreaMm2() {
        if (plan.isRound()) {
            return ofCircle(plan.breadthMm() / 2, totalMm());
        }
        return plan.turns().stream().mapToDouble(this::area).min().orElseThrow();
    }

    private double area(Sides sides) {
        return Math.max(0, sides.alongMm() - 2 * alongMm) * Math.max(0, sides.acrossMm() - 2 * acrossMm);
    }

    /** Two equal segments of the circle about the resultant. */
    static double ofCircle(double radiusMm, double eMm) {
        return eMm >= radiusMm
                ? 0
                : 2
                        * (radiusMm * radiusMm * StrictMath.acos(eMm / radiusMm)
                                - eMm * Math.sqrt(radiusMm * radiusMm - eMm * eMm));
    }

    double totalMm() {
        return Math.sqrt(alongMm * alongMm + acrossMm * acrossMm);
    }

    /** The larger part of a side, or of the diameter, by which the resultant is off the middle. */
    double partOfSide() {
        if (plan.isRound()) {
            return totalMm() / plan.breadthMm();
        }
        List<Sides> turns = plan.turns();
        return turns.stream()
                .mapToDouble(s -> Math.max(alongMm / s.alongMm(), acrossMm / s.acrossMm()))
                .max()
                .orElseThrow();
    }

    /** The sides of the worse turn. */
    Sides sides() {
        return plan.turns().stream()
                .min((a, b) -> Double.compare(area(a), area(b)))
                .orElseThrow();
    }
}
