package org.deckplanreview.rendering.drawing;

import java.util.List;

/** Dimensioning after ISO 129-1: extension lines, oblique strokes as terminators, numbers above the dimension line. */
final class Dimensions {

    /** From one chain of dimensions to the next, mm. */
    static final double BETWEEN_CHAINS = 7.5;

    private static final double FROM_OBJECT = 1.2;
    private static final double BEYOND = 1.5;
    private static final double STROKE = 1.1;
    private static final double STRAIGHT = 1e-9;

    private final Canvas canvas;
    private final ShownUnits units;

    Dimensions(Canvas canvas, ShownUnits units) {
        this.canvas = canvas;
        this.units = units;
    }

    /**
     * Dimensions end to end on one line.
     *
     * @param feet on the object, where extension lines begin
     * @param stops on the dimension line, in order
     * @param mm from each stop to the next
     */
    void chain(List<Vec> feet, List<Vec> stops, List<Double> mm) {
        Canvas.Figure figure = canvas.figure("dimension", "");
        Vec along = readable(stops.get(stops.size() - 1).minus(stops.get(0)).unit());
        figure.line(Pen.THIN, stops.get(0), stops.get(stops.size() - 1));
        for (int i = 0; i < stops.size(); i++) {
            Vec stop = stops.get(i);
            Vec out = stop.minus(feet.get(i));
            if (out.length() > FROM_OBJECT) {
                figure.line(Pen.THIN, feet.get(i).along(out.unit(), FROM_OBJECT), stop.along(out.unit(), BEYOND));
            }
            Vec slant = along.plus(along.left()).unit().times(STROKE);
            figure.line(Pen.TERMINATOR, stop.minus(slant), stop.plus(slant));
            if (i > 0) {
                Vec before = stops.get(i - 1);
                canvas.label(Wanted.dimension(
                        units.length(mm.get(i - 1)),
                        before.middle(stop),
                        along,
                        stop.minus(before).length() / 2));
            }
        }
    }

    void single(Vec footA, Vec footB, Vec a, Vec b, double mm) {
        chain(List.of(footA, footB), List.of(a, b), List.of(mm));
    }

    /** Read from below or from the right, as the standard has it. */
    static Vec readable(Vec along) {
        boolean turned = along.x() < -STRAIGHT || Math.abs(along.x()) <= STRAIGHT && along.y() > 0;
        return turned ? along.times(-1) : along;
    }
}
