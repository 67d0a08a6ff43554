package org.deckplanreview.rendering.drawing;

import java.util.List;

/**
 * A rectangle on the sheet that may be turned.
 *
 * @param along direction of its length, of length one
 */
record Box(Vec centre, Vec along, double halfLength, double halfHeight) {

    /** Boxes that touch within this do not overlap. */
    private static final double TOUCHING = 1e-9;

    static Box upright(double left, double top, double width, double height) {
        return new Box(new Vec(left + width / 2, top + height / 2), Vec.RIGHT, width / 2, height / 2);
    }

    List<Vec> corners() {
        Vec l = along.times(halfLength);
        Vec h = along.left().times(halfHeight);
        return List.of(
                centre.minus(l).minus(h),
                centre.plus(l).minus(h),
                centre.plus(l).plus(h),
                centre.minus(l).plus(h));
    }

    Box grownBy(double mm) {
        return new Box(centre, along, halfLength + mm, halfHeight + mm);
    }

    Box movedBy(Vec by) {
        return new Box(centre.plus(by), along, halfLength, halfHeight);
    }

    /** Separating axes of two rectangles are the directions of their sides. */
    boolean overlaps(Box o) {
        return overlapsOn(along, o)
                && overlapsOn(along.left(), o)
                && overlapsOn(o.along, o)
                && overlapsOn(o.along.left(), o);
    }

    private boolean overlapsOn(Vec axis, Box o) {
        return Math.abs(o.centre.minus(centre).dot(axis)) < reach(axis) + o.reach(axis) - TOUCHING;
    }

    private double reach(Vec axis) {
        return Math.abs(along.dot(axis)) * halfLength + Math.abs(along.left().dot(axis)) * halfHeight;
    }

    /** How much of a stroke lies inside, mm. */
    double inside(Segment s) {
        double from = 0;
        double to = 1;
        for (Vec axis : List.of(along, along.left())) {
            double half = axis == along ? halfLength : halfHeight;
            double start = s.a().minus(centre).dot(axis);
            double change = s.b().minus(s.a()).dot(axis);
            if (Math.abs(change) < TOUCHING) {
                if (Math.abs(start) >= half) {
                    return 0;
                }
                continue;
            }
            double one = (-half - start) / change;
            double other = (half - start) / change;
            from = Math.max(from, Math.min(one, other));
            to = Math.min(to, Math.max(one, other));
        }
        return to > from ? (to - from) * s.length() : 0;
    }

    /** The place in the box that is nearest to a place outside. */
    Vec nearest(Vec p) {
        Vec d = p.minus(centre);
        double l = Math.max(-halfLength, Math.min(halfLength, d.dot(along)));
        double h = Math.max(-halfHeight, Math.min(halfHeight, d.dot(along.left())));
        return centre.along(along, l).along(along.left(), h);
    }

    boolean contains(Vec p) {
        Vec d = p.minus(centre);
        return Math.abs(d.dot(along)) < halfLength && Math.abs(d.dot(along.left())) < halfHeight;
    }

    boolean within(Box upright) {
        return corners().stream()
                .map(c -> c.minus(upright.centre))
                .allMatch(c -> Math.abs(c.x()) <= upright.halfLength + TOUCHING
                        && Math.abs(c.y()) <= upright.halfHeight + TOUCHING);
    }

    double left() {
        return centre.x() - halfLength;
    }

    double right() {
        return centre.x() + halfLength;
    }

    double top() {
        return centre.y() - halfHeight;
    }

    double bottom() {
        return centre.y() + halfHeight;
    }
}
