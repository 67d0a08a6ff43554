package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.report.Report;

/**
 * A sheet with its border, title block and keys.
 *
 * @param name distinct among the deck's drawings
 * @param title of the drawing
 * @param number among the sheets of its kind, from 1
 * @param scale empty for a sheet that is not to scale
 */
record Sheet(
        String name,
        String title,
        int number,
        int count,
        SheetFormat format,
        Optional<Scale> scale,
        ShownUnits units,
        Report report) {

    static final String CAPTION = "Pre-check drawing; it grants no approval.";

    private static final int DIGEST_SHOWN = 19;
    private static final double PAD = 3;
    private static final double FIRST_LINE = 5.4;
    private static final double SECOND_CELL = 0.37;
    private static final double THIRD_CELL = 0.71;
    private static final double BAR_HEIGHT = 1.4;
    private static final double BAR_TOP = 12.2;
    private static final int BAR_STEPS = 2;

    /** Lines of the column that are kept for what comes last. */
    private static final int KEPT = 4;

    private static final int KEPT_FOR_FINDINGS = 14;

    /** What the column says beside the drawing. */
    record Keys(List<String> members, Callouts callouts) {}

    /** Places the labels and writes all of it. */
    Drawing finished(Canvas canvas, Box area, Optional<Keys> keys, String description) {
        List<Wanted> omitted = canvas.placeLabels(area);
        keys.ifPresent(k -> column(canvas, k, omitted.size()));
        border(canvas);
        titleBlock(canvas);
        String prefix = name + "-" + shortDigest().substring("sha256:".length());
        Svg svg = new Svg();
        svg.open(
                "svg",
                "version",
                "1.1",
                "width",
                Svg.number(format.widthMm()) + "mm",
                "height",
                Svg.number(format.heightMm()) + "mm",
                "viewBox",
                "0 0 " + Svg.number(format.widthMm()) + " " + Svg.number(format.heightMm()),
                "role",
                "img",
                "aria-labelledby",
                prefix + "-title " + prefix + "-desc");
        svg.text("title", Lettering.plain(title + ", " + report.reference()), "id", prefix + "-title");
        svg.text("desc", Lettering.plain(description + " " + CAPTION), "id", prefix + "-desc");
        svg.empty(
                "rect",
                "width",
                Svg.number(format.widthMm()),
                "height",
                Svg.number(format.heightMm()),
                "fill",
                Colour.PAPER);
        svg.open("g", "font-family", TextWidths.FONTS, "fill", Colour.INK, "id", prefix + "-sheet");
        canvas.shapes().forEach(s -> s.write(svg));
        svg.close();
        svg.close();
        return new Drawing(name, title, svg.document());
    }

    private void border(Canvas canvas) {
        Box f = format.frame();
        canvas.figure("border", "")
                .polygon(Pen.FRAME, Colour.NONE, f.corners())
                .line(
                        Pen.WIDE,
                        new Vec(f.left(), format.titleBlock().top()),
                        new Vec(f.right(), format.titleBlock().top()));
    }

    private void column(Canvas canvas, Keys keys, int omitted) {
        Canvas.Figure figure = canvas.figure("keys", "");
        Box box = format.column();
        figure.line(Pen.NARROW, new Vec(box.left(), box.top()), new Vec(box.left(), box.bottom()));
        List<Shape> pills = new ArrayList<>();
        Column column = new Column(box, figure, pills);
        members(column, keys.members());
        Callouts callouts = keys.callouts();
        int left = numbered(column, callouts, Mark.FAILING, "Does not comply")
                + numbered(column, callouts, Mark.ADVISED, "Not as recommended");
        if (left > 0) {
            column.paragraph("and " + left + " more: see the report");
        }
        List<Integer> notShown = callouts.notShown();
        if (!notShown.isEmpty() && column.has(2)) {
            column.paragraph(notShown.size() + (notShown.size() == 1 ? " other finding" : " other findings")
                    + " in the report, not shown here");
        }
        if (omitted > 0 && column.has(2)) {
            column.paragraph(omitted + (omitted == 1 ? " label" : " labels") + " left out for lack of room");
        }
        canvas.add(new Shape.Group("numbers", "", pills));
    }

    /** Those for which there is no room are counted. */
    private static int numbered(Column column, Callouts callouts, Mark mark, String heading) {
        List<Integer> shown =
                callouts.shown().stream().filter(n -> callouts.mark(n) == mark).toList();
        if (shown.isEmpty()) {
            return 0;
        }
        if (!column.has(KEPT + 2)) {
            return shown.size();
        }
        column.heading(heading);
        for (int i = 0; i < shown.size(); i++) {
            String title = callouts.finding(shown.get(i)).title();
            if (!column.has(column.linesOfNumbered(shown.get(i), title) + KEPT)) {
                return shown.size() - i;
            }
            column.numbered(shown.get(i), mark, title);
        }
        return 0;
    }

    private static void members(Column column, List<String> members) {
        for (int i = 0; i < members.size(); i++) {
            if (!column.has(column.linesOf(members.get(i)) + KEPT_FOR_FINDINGS)) {
                column.paragraph("and more: see the schedule");
                return;
            }
            column.paragraph(members.get(i));
        }
    }

    private void titleBlock(Canvas canvas) {
        Box b = format.titleBlock();
        Canvas.Figure figure = canvas.figure("title-block", "");
        double width = 2 * b.halfLength();
        double second = b.left() + width * SECOND_CELL;
        double third = b.left() + width * THIRD_CELL;
        figure.line(Pen.NARROW, new Vec(second, b.top()), new Vec(second, b.bottom()));
        figure.line(Pen.NARROW, new Vec(third, b.top()), new Vec(third, b.bottom()));
        double firstRoom = second - b.left() - 2 * PAD;
        double secondRoom = third - second - 2 * PAD;
        double thirdRoom = b.right() - third - 2 * PAD;
        figure.text(
                Lettering.fitted(title, firstRoom, Lettering.TITLE),
                new Vec(b.left() + PAD, b.top() + FIRST_LINE + 0.6),
                Lettering.TITLE,
                false);
        cell(
                figure,
                b.left() + PAD,
                b.top() + Lettering.LINE + 1,
                firstRoom,
                List.of(
                        report.title().orElse(""),
                        "Outcome: " + report.outcome().word(),
                        Sheet.CAPTION));
        cell(
                figure,
                second + PAD,
                b.top(),
                secondRoom,
                List.of(
                        "Reference: " + report.reference(),
                        edition(secondRoom),
                        "Reviewed for: " + report.reviewOn() + ", sheet " + number + " of " + count,
                        "Report: " + shortDigest()));
        cell(
                figure,
                third + PAD,
                b.top(),
                thirdRoom,
                List.of(
                        scale.map(s -> "Scale " + s.text() + " on " + format.name())
                                .orElse("Not to scale, " + format.name()),
                        units.told()));
        scale.ifPresent(s -> scaleBar(figure, s, new Vec(third + PAD, b.top() + BAR_TOP)));
    }

    /** Its name is kept whole; the region's is cut where there is too little room. */
    private String edition(double room) {
        String name = " " + report.edition().edition();
        String region = "Edition: " + report.edition().regionTitle();
        return Lettering.fitted(region, room - TextWidths.mm(name, Lettering.SIZE), Lettering.SIZE) + name;
    }

    private String shortDigest() {
        return report.digest().substring(0, DIGEST_SHOWN);
    }

    private static void cell(Canvas.Figure figure, double left, double top, double room, List<String> lines) {
        double base = top + FIRST_LINE;
        for (String line : lines) {
            if (!line.isEmpty()) {
                figure.text(Lettering.fitted(line, room, Lettering.SIZE), new Vec(left, base), Lettering.SIZE, false);
            }
            base += Lettering.LINE;
        }
    }

    private void scaleBar(Canvas.Figure figure, Scale s, Vec at) {
        double step = units.barStepMm(s);
        for (int i = 0; i <= BAR_STEPS; i++) {
            Vec here = at.plus(new Vec(s.onSheet(step * i), 0));
            if (i < BAR_STEPS) {
                Vec next = at.plus(new Vec(s.onSheet(step * (i + 1)), 0));
                Vec down = new Vec(0, BAR_HEIGHT);
                figure.polygon(
                        Pen.NARROW,
                        i % 2 == 0 ? Colour.INK : Colour.PAPER,
                        List.of(here, next, next.plus(down), here.plus(down)));
            }
            String text = i == 0 ? "0" : units.barLength(step * i);
            figure.text(text, here.plus(new Vec(0, BAR_HEIGHT + Lettering.LINE - 0.6)), Lettering.SIZE, i > 0);
        }
    }
}
