package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.report.Report;

/** A sheet that says what it takes before it can be drawn. */
final class NoteSheet {

    private static final double INDENT = 12;

    private NoteSheet() {}

    static Drawing draw(
            String name,
            String title,
            int number,
            int count,
            ShownUnits units,
            Report report,
            String what,
            List<Need> needs) {
        SheetFormat format = SheetFormat.A4;
        Box area = format.wideArea();
        Canvas canvas = new Canvas();
        Canvas.Figure figure = canvas.figure("note", "");
        double room = 2 * area.halfLength() - 2 * INDENT;
        double y = area.top() + INDENT;
        List<String> lines = new ArrayList<>(Lettering.wrapped(what, room, Lettering.SIZE));
        for (Need need : needs) {
            lines.addAll(Lettering.wrapped(need.pointer() + ": " + need.what(), room, Lettering.SIZE));
        }
        for (String line : lines) {
            if (y + Lettering.LINE < area.bottom()) {
                figure.text(line, new Vec(area.left() + INDENT, y), Lettering.SIZE, false);
            }
            y += Lettering.LINE;
        }
        return new Sheet(name, title, number, count, format, Optional.empty(), units, report)
                .finished(canvas, area, Optional.empty(), what);
    }
}
