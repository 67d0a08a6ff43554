package org.deckplanreview.rendering.drawing;

/** A place or a direction on the sheet, mm to the right and downwards. */
record Vec(double x, double y) {

    static final Vec RIGHT = new Vec(1, 0);
    static final Vec UP = new Vec(0, -1);

    Vec plus(Vec o) {
        return new Vec(x + o.x, y + o.y);
    }

    Vec minus(Vec o) {
        return new Vec(x - o.x, y - o.y);
    }

    Vec times(double f) {
        return new Vec(x * f, y * f);
    }

    /** Moved by so much along a direction. */
    Vec along(Vec direction, double mm) {
        return plus(direction.times(mm));
    }

    /** Turned by a quarter to the left, as the sheet is seen. */
    Vec left() {
        return new Vec(y, -x);
    }

    double dot(Vec o) {
        return x * o.x + y * o.y;
    }

    double cross(Vec o) {
        return x * o.y - y * o.x;
    }

    double length() {
        return Math.sqrt(x * x + y * y);
    }

    /** Of length one; to the right where there is no direction. */
    Vec unit() {
        double l = length();
        return l == 0 ? RIGHT : times(1 / l);
    }

    Vec middle(Vec o) {
        return plus(o).times(0.5);
    }
}
