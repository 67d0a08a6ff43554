package org.deckplanreview.layout;

import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;

/** Plan coordinates turned so that one axis lies along a direction: along it, and across it (the direction turned +90 degrees). */
record Axis(double dx, double dy) {

    static Axis of(Direction direction) {
        return ofVector(direction.dx(), direction.dy());
    }

    static Axis of(PlanLine line) {
        return ofVector(
                line.to().xMm() - line.from().xMm(),
                line.to().yMm() - line.from().yMm());
    }

    private static Axis ofVector(double dx, double dy) {
        double length = Math.sqrt(dx * dx + dy * dy);
        return new Axis(dx / length, dy / length);
    }

    double along(PlanPoint p) {
        return p.xMm() * dx + p.yMm() * dy;
    }

    double across(PlanPoint p) {
        return p.yMm() * dx - p.xMm() * dy;
    }

    PlanPoint point(double along, double across) {
        return new PlanPoint(along * dx - across * dy, along * dy + across * dx);
    }

    /** Sine of the angle to another axis, 0 to 1. */
    double sineTo(Axis other) {
        return Math.abs(dx * other.dy - dy * other.dx);
    }

    /** The angle to another axis, both taken without sense: 0 to 90 degrees. */
    double degreesTo(Axis other) {
        double cosine = Math.abs(dx * other.dx + dy * other.dy);
        return StrictMath.toDegrees(StrictMath.atan2(sineTo(other), cosine));
    }

    static double length(PlanLine line) {
        double dx = line.to().xMm() - line.from().xMm();
        double dy = line.to().yMm() - line.from().yMm();
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The point at a fraction of the way from the line's first point to its last; the ends exactly. */
    static PlanPoint pointAt(PlanLine line, double fraction) {
        PlanPoint a = line.from();
        PlanPoint b = line.to();
        return new PlanPoint(
                a.xMm() * (1 - fraction) + b.xMm() * fraction, a.yMm() * (1 - fraction) + b.yMm() * fraction);
    }
}
