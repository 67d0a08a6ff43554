package org.deckplanreview.rendering.drawing;

import java.util.List;
import java.util.stream.Collectors;

/** Something drawn. */
sealed interface Shape {

    void write(Svg svg);

    /** A straight line. */
    record Line(Pen pen, Segment segment) implements Shape {
        @Override
        public void write(Svg svg) {
            svg.empty(
                    "path",
                    "d",
                    path(List.of(segment.a(), segment.b())),
                    "fill",
                    Colour.NONE,
                    "stroke",
                    pen.colour(),
                    "stroke-width",
                    Svg.number(pen.widthMm()),
                    "stroke-dasharray",
                    pen.dashes());
        }
    }

    /** Straight lines end to end. */
    record Outline(Pen pen, String fill, List<Vec> corners, boolean closed) implements Shape {
        @Override
        public void write(Svg svg) {
            svg.empty(
                    "path",
                    "d",
                    path(corners) + (closed ? "Z" : ""),
                    "fill",
                    fill,
                    "stroke",
                    pen.colour(),
                    "stroke-width",
                    Svg.number(pen.widthMm()),
                    "stroke-dasharray",
                    pen.dashes(),
                    "stroke-linejoin",
                    "round");
        }
    }

    /** An area without an outline. */
    record Area(String fill, List<Vec> corners) implements Shape {
        @Override
        public void write(Svg svg) {
            svg.empty("path", "d", path(corners) + "Z", "fill", fill, "stroke", Colour.NONE);
        }
    }

    /** A circle. */
    record Circle(Pen pen, String fill, Vec centre, double radius) implements Shape {
        @Override
        public void write(Svg svg) {
            svg.empty(
                    "circle",
                    "cx",
                    Svg.number(centre.x()),
                    "cy",
                    Svg.number(centre.y()),
                    "r",
                    Svg.number(radius),
                    "fill",
                    fill,
                    "stroke",
                    pen.colour(),
                    "stroke-width",
                    Svg.number(pen.widthMm()),
                    "stroke-dasharray",
                    pen.dashes());
        }
    }

    /**
     * One line of text.
     *
     * @param base on the base line: at the text's middle, or at its start
     * @param along direction of reading
     */
    record Text(String text, Vec base, Vec along, double size, boolean centred, String fill) implements Shape {
        @Override
        public void write(Svg svg) {
            double degrees = StrictMath.toDegrees(StrictMath.atan2(along.y(), along.x()));
            String x = Svg.number(base.x());
            String y = Svg.number(base.y());
            String turned = Svg.number(degrees);
            boolean isKnown = TextWidths.isKnown(text);
            svg.text(
                    "text",
                    text,
                    "x",
                    x,
                    "y",
                    y,
                    "font-size",
                    Svg.number(size),
                    "text-anchor",
                    centred ? "middle" : "",
                    "fill",
                    fill.equals(Colour.INK) ? "" : fill,
                    "transform",
                    turned.equals("0") ? "" : "rotate(" + turned + " " + x + " " + y + ")",
                    "textLength",
                    isKnown ? "" : Svg.number(TextWidths.mm(text, size)),
                    "lengthAdjust",
                    isKnown ? "" : "spacingAndGlyphs");
        }

        /** What it covers in the widest font. */
        Box box() {
            double width = TextWidths.mm(text, size);
            double height = (TextWidths.ASCENT + TextWidths.DESCENT) * size;
            Vec middle = centred ? base : base.along(along, width / 2);
            double lift = (TextWidths.ASCENT - TextWidths.DESCENT) / 2 * size;
            return new Box(middle.along(along.left(), lift), along, width / 2, height / 2);
        }
    }

    /**
     * Shapes that belong together.
     *
     * @param title the whole name, which may be longer than what is lettered; blank for none
     */
    record Group(String cssClass, String title, List<Shape> shapes) implements Shape {
        @Override
        public void write(Svg svg) {
            svg.open("g", "class", cssClass);
            if (!title.isEmpty()) {
                svg.text("title", title);
            }
            shapes.forEach(s -> s.write(svg));
            svg.close();
        }
    }

    private static String path(List<Vec> points) {
        return points.stream()
                .map(p -> Svg.number(p.x()) + " " + Svg.number(p.y()))
                .collect(Collectors.joining("L", "M", ""));
    }
}
