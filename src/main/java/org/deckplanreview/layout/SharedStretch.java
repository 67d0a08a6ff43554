package org.deckplanreview.layout;

import java.util.Optional;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/** The part of a side along which another line lies, in mm from the side's first point. */
record SharedStretch(double fromMm, double toMm) {

    /** A shorter stretch is none. */
    static final double SHORTEST_MM = 1;

    /** The stretch of a side along which a line lies no farther off than so many mm; empty where it lies off it. */
    static Optional<SharedStretch> of(PlanLine side, PlanLine line, double offMm) {
        Axis axis = Axis.of(side);
        double start = axis.along(side.from());
        double across = axis.across(side.from());
        boolean forwards = axis.along(line.from()) <= axis.along(line.to());
        PlanPoint first = forwards ? line.from() : line.to();
        PlanPoint last = forwards ? line.to() : line.from();
        double from = axis.along(first) - start;
        double to = axis.along(last) - start;
        double cutFrom = Math.max(0, from);
        double cutTo = Math.min(Axis.length(side), to);
        if (cutTo - cutFrom < SHORTEST_MM) {
            return Optional.empty();
        }
        double slope = (axis.across(last) - axis.across(first)) / (to - from);
        double offFrom = axis.across(first) - across + slope * (cutFrom - from);
        double offTo = axis.across(first) - across + slope * (cutTo - from);
        return Math.max(Math.abs(offFrom), Math.abs(offTo)) <= offMm
                ? Optional.of(new SharedStretch(cutFrom, cutTo))
                : Optional.empty();
    }

    double lengthMm() {
        return toMm - fromMm;
    }

    /** This part of the side itself. */
    PlanLine on(PlanLine side) {
        double length = Axis.length(side);
        return new PlanLine(Axis.pointAt(side, fromMm / length), Axis.pointAt(side, toMm / length));
    }
}
