package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A label in its place. */
record PlacedLabel(Wanted wanted, Box box, Optional<Segment> leader) {

    /** Between a callout's edge and its numbers, and between the callout and the text beside it, mm. */
    private static final double PAD = 1.1;

    private static final double CALLOUT_HEIGHT = 5;
    private static final double LINE_HEIGHT = (TextWidths.ASCENT + TextWidths.DESCENT) * Lettering.SIZE;
    private static final double DOT = 0.45;
    private static final int HALF_CIRCLE = 12;

    /** A box at the origin that is large enough for the label. */
    static Box size(Wanted wanted) {
        double lines =
                wanted.lines().isEmpty() ? 0 : LINE_HEIGHT + (wanted.lines().size() - 1) * Lettering.LINE;
        double width = textWidth(wanted);
        double callout = calloutWidth(wanted.callout());
        double gap = callout > 0 && width > 0 ? PAD : 0;
        return new Box(
                new Vec(0, 0),
                Vec.RIGHT,
                (width + callout + gap) / 2,
                Math.max(lines, callout > 0 ? CALLOUT_HEIGHT : 0) / 2);
    }

    private static double textWidth(Wanted wanted) {
        return wanted.lines().stream()
                .mapToDouble(l -> TextWidths.mm(l, Lettering.SIZE))
                .max()
                .orElse(0);
    }

    /** 0 for no numbers. */
    static double calloutWidth(String numbers) {
        return numbers.isEmpty() ? 0 : Math.max(CALLOUT_HEIGHT, TextWidths.mm(numbers, Lettering.SIZE) + 2 * PAD);
    }

    Shape.Group shape() {
        List<Shape> shapes = new ArrayList<>();
        leader.ifPresent(l -> {
            shapes.add(new Shape.Line(Pen.THIN, l));
            shapes.add(new Shape.Circle(Pen.THIN, Colour.INK, l.a(), DOT));
        });
        if (wanted.kind() == Wanted.Kind.DIMENSION) {
            double drop = (TextWidths.ASCENT - TextWidths.DESCENT) / 2 * Lettering.SIZE;
            shapes.add(new Shape.Text(
                    wanted.lines().get(0),
                    box.centre().along(box.along().left(), -drop),
                    box.along(),
                    Lettering.SIZE,
                    true,
                    Colour.INK));
            return new Shape.Group("dimension-number", "", shapes);
        }
        shapes.add(new Shape.Area(Colour.PAPER, box.corners()));
        double left = box.left();
        double callout = calloutWidth(wanted.callout());
        if (callout > 0) {
            shapes.add(new Shape.Group(
                    wanted.mark().css("callout"),
                    "",
                    pill(
                            wanted.callout(),
                            wanted.mark(),
                            new Vec(left, box.centre().y()),
                            callout)));
            left += callout + PAD;
        }
        double block = LINE_HEIGHT + (wanted.lines().size() - 1) * Lettering.LINE;
        double base = box.centre().y() - block / 2 + TextWidths.ASCENT * Lettering.SIZE;
        for (String line : wanted.lines()) {
            shapes.add(new Shape.Text(line, new Vec(left, base), Vec.RIGHT, Lettering.SIZE, false, Colour.INK));
            base += Lettering.LINE;
        }
        return new Shape.Group("label", wanted.title(), shapes);
    }

    /** Numbers in a shape with round ends: on a dark ground for what does not comply, in a ring for what is recommended. */
    static List<Shape> pill(String numbers, Mark mark, Vec leftMiddle, double width) {
        double r = CALLOUT_HEIGHT / 2;
        Vec first = leftMiddle.plus(new Vec(r, 0));
        Vec last = leftMiddle.plus(new Vec(width - r, 0));
        double drop = (TextWidths.ASCENT - TextWidths.DESCENT) / 2 * Lettering.SIZE;
        boolean dark = mark == Mark.FAILING;
        String fill = dark ? Colour.FAILING : Colour.PAPER;
        Pen pen = dark ? Pen.FAILING_HATCH : Pen.NARROW;
        return List.of(
                new Shape.Outline(pen, fill, round(first, last, r), true),
                new Shape.Text(
                        numbers,
                        first.middle(last).plus(new Vec(0, drop)),
                        Vec.RIGHT,
                        Lettering.SIZE,
                        true,
                        dark ? Colour.PAPER : Colour.INK));
    }

    private static List<Vec> round(Vec first, Vec last, double r) {
        List<Vec> corners = new ArrayList<>();
        for (int i = 0; i <= HALF_CIRCLE; i++) {
            double angle = StrictMath.PI * (0.5 + (double) i / HALF_CIRCLE);
            corners.add(first.plus(new Vec(r * StrictMath.cos(angle), r * StrictMath.sin(angle))));
        }
        for (int i = 0; i <= HALF_CIRCLE; i++) {
            double angle = StrictMath.PI * (1.5 + (double) i / HALF_CIRCLE);
            corners.add(last.plus(new Vec(r * StrictMath.cos(angle), r * StrictMath.sin(angle))));
        }
        return corners;
    }
}
