package org.deckplanreview.rendering.drawing;

import java.util.List;

/** Lines of text one under the other, as long as there is room. */
final class Column {

    private static final double PAD = 3;
    private static final double GAP = 1.5;
    private static final double BETWEEN = 2;

    private final Box box;
    private final Canvas.Figure figure;
    private final List<Shape> pills;
    private double y;

    /** @param pills where numbers' grounds are drawn */
    Column(Box box, Canvas.Figure figure, List<Shape> pills) {
        this.box = box;
        this.figure = figure;
        this.pills = pills;
        this.y = box.top() + PAD;
    }

    private double room() {
        return 2 * box.halfLength() - 2 * PAD;
    }

    /** Whether so many lines have room. */
    boolean has(int lines) {
        return y + lines * Lettering.LINE <= box.bottom() - PAD / 2;
    }

    void heading(String text) {
        y += BETWEEN / 2;
        figure.line(Pen.NARROW, new Vec(box.left(), y), new Vec(box.right(), y));
        y += BETWEEN;
        lines(List.of(Lettering.fitted(text, room(), Lettering.SIZE)), 0);
    }

    int linesOf(String text) {
        return Lettering.wrapped(text, room(), Lettering.SIZE).size();
    }

    void paragraph(String text) {
        lines(Lettering.wrapped(text, room(), Lettering.SIZE), 0);
    }

    int linesOfNumbered(int number, String text) {
        return Lettering.wrapped(text, room() - indent(number), Lettering.SIZE).size();
    }

    void numbered(int number, Mark mark, String text) {
        double width = indent(number) - GAP;
        Vec start = new Vec(box.left() + PAD, y + Lettering.LINE / 2);
        pills.add(new Shape.Group("callout-key", "", PlacedLabel.pill("" + number, mark, start, width)));
        lines(Lettering.wrapped(text, room() - indent(number), Lettering.SIZE), indent(number));
    }

    private static double indent(int number) {
        return PlacedLabel.calloutWidth("" + number) + GAP;
    }

    private void lines(List<String> lines, double indent) {
        double base = Lettering.LINE / 2 + (TextWidths.ASCENT - TextWidths.DESCENT) / 2 * Lettering.SIZE;
        for (String line : lines) {
            figure.text(line, new Vec(box.left() + PAD + indent, y + base), Lettering.SIZE, false);
            y += Lettering.LINE;
        }
        y += 0.5;
    }
}
