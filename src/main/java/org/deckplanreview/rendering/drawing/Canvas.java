package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is drawn on a sheet, with the labels that want a place on it. */
final class Canvas {

    private static final int CIRCLE_CORNERS = 24;
    private static final double FAILING_HATCH_MM = 1.8;
    private static final double ADVISED_HATCH_MM = 3;

    private final List<Shape> shapes = new ArrayList<>();
    private final List<Segment> strokes = new ArrayList<>();
    private final List<Wanted> wanted = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> keptClear = new ArrayList<>();

    /** Shapes that belong together, in the order in which they are drawn. */
    final class Figure {
        private final List<Shape> own = new ArrayList<>();

        Figure line(Pen pen, Vec a, Vec b) {
            Segment s = new Segment(a, b);
            own.add(new Shape.Line(pen, s));
            stroke(pen, a, b);
            return this;
        }

        Figure polygon(Pen pen, String fill, List<Vec> corners) {
            own.add(new Shape.Outline(pen, fill, corners, true));
            for (int i = 0; i < corners.size(); i++) {
                stroke(pen, corners.get(i), corners.get((i + 1) % corners.size()));
            }
            return this;
        }

        Figure polyline(Pen pen, List<Vec> corners) {
            own.add(new Shape.Outline(pen, Colour.NONE, corners, false));
            for (int i = 1; i < corners.size(); i++) {
                stroke(pen, corners.get(i - 1), corners.get(i));
            }
            return this;
        }

        Figure area(String fill, List<Vec> corners) {
            own.add(new Shape.Area(fill, corners));
            return this;
        }

        Figure circle(Pen pen, String fill, Vec centre, double radius) {
            own.add(new Shape.Circle(pen, fill, centre, radius));
            List<Vec> around = around(centre, radius);
            for (int i = 0; i < around.size(); i++) {
                stroke(pen, around.get(i), around.get((i + 1) % around.size()));
            }
            return this;
        }

        /** Hatching by the findings; labels need not keep clear of it. */
        Figure hatch(Mark mark, List<Vec> convex) {
            switch (mark) {
                case FAILING ->
                    Hatch.rising(convex, FAILING_HATCH_MM).forEach(s -> own.add(new Shape.Line(Pen.FAILING_HATCH, s)));
                case ADVISED ->
                    Hatch.falling(convex, ADVISED_HATCH_MM).forEach(s -> own.add(new Shape.Line(Pen.ADVISED_HATCH, s)));
                case NONE -> {}
            }
            return this;
        }

        /** Hatching of ground, walls and the like. */
        Figure hatch(List<Vec> convex, double apartMm) {
            Hatch.rising(convex, apartMm).forEach(s -> line(Pen.THIN, s.a(), s.b()));
            return this;
        }

        /** Text in a fixed place, which labels keep clear of. */
        Figure text(String text, Vec base, double size, boolean centred) {
            Shape.Text t = new Shape.Text(text, base, Vec.RIGHT, size, centred, Colour.INK);
            own.add(t);
            taken.add(t.box());
            return this;
        }

        /** A triangle with its tip at a place. */
        Figure arrowHead(Pen pen, Vec tip, Vec direction, double lengthMm) {
            Vec back = tip.along(direction, -lengthMm);
            Vec aside = direction.left().times(lengthMm / 4);
            return polygon(pen, pen.colour(), List.of(tip, back.plus(aside), back.minus(aside)));
        }
    }

    /** Labels avoid wide lines more than narrow ones. */
    private void stroke(Pen pen, Vec a, Vec b) {
        Segment s = new Segment(a, b);
        strokes.add(s);
        if (pen == Pen.WIDE) {
            strokes.add(s);
            strokes.add(s);
        }
    }

    static List<Vec> around(Vec centre, double radius) {
        List<Vec> corners = new ArrayList<>();
        for (int i = 0; i < CIRCLE_CORNERS; i++) {
            double angle = 2 * StrictMath.PI * i / CIRCLE_CORNERS;
            corners.add(centre.plus(new Vec(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle))));
        }
        return corners;
    }

    /** A figure that is drawn over those before it. */
    Figure figure(String cssClass, String title) {
        Figure f = new Figure();
        shapes.add(new Shape.Group(cssClass, title, f.own));
        return f;
    }

    void add(Shape shape) {
        shapes.add(shape);
    }

    void label(Wanted label) {
        wanted.add(label);
    }

    /** A symbol that no label may cover. */
    void keepClear(Box box) {
        keptClear.add(box);
    }

    /** Finds places for the labels; those that found none are returned. */
    List<Wanted> placeLabels(Box area) {
        LabelPlacer placer = new LabelPlacer(area, strokes, taken, keptClear);
        placer.place(wanted);
        placer.placed().forEach(p -> shapes.add(p.shape()));
        return placer.omitted();
    }

    List<Shape> shapes() {
        return List.copyOf(shapes);
    }

    /** The smallest upright box around points; empty for none. */
    static Optional<Box> bounds(List<Vec> points) {
        if (points.isEmpty()) {
            return Optional.empty();
        }
        double left = points.stream().mapToDouble(Vec::x).min().orElseThrow();
        double right = points.stream().mapToDouble(Vec::x).max().orElseThrow();
        double top = points.stream().mapToDouble(Vec::y).min().orElseThrow();
        double bottom = points.stream().mapToDouble(Vec::y).max().orElseThrow();
        return Optional.of(Box.upright(left, top, right - left, bottom - top));
    }
}
