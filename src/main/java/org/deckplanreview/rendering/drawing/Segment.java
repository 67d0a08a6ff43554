package org.deckplanreview.rendering.drawing;

/** A straight stroke. */
record Segment(Vec a, Vec b) {

    double length() {
        return b.minus(a).length();
    }

    boolean crosses(Segment o) {
        return side(o.a) * side(o.b) < 0 && o.side(a) * o.side(b) < 0;
    }

    private double side(Vec p) {
        return b.minus(a).cross(p.minus(a));
    }
}
