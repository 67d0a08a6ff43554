package org.deckplanreview.rendering.drawing;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.layout.Subject;

/** A canvas on which parts are marked and numbered by the findings on them. */
final class MarkedCanvas {

    private final Canvas canvas;
    private final Callouts callouts;

    MarkedCanvas(Canvas canvas, Callouts callouts) {
        this.canvas = canvas;
        this.callouts = callouts;
    }

    Canvas.Figure figure(Subject s, String kind) {
        return canvas.figure(callouts.mark(s).css(kind), s.label());
    }

    /** A part with a convex outline, hatched where findings are against it. */
    Canvas.Figure part(Subject s, String kind, Pen pen, String fill, List<Vec> corners) {
        Mark mark = callouts.mark(s);
        return figure(s, kind).polygon(mark.pen(pen), fill, corners).hatch(mark, corners);
    }

    /** Text beside a part; the first line may be a name that is cut to the room there is. */
    void note(Collection<Integer> numbers, List<String> lines, String title, double clearMm, List<Vec> anchors) {
        canvas.label(Wanted.note(callouts.callout(numbers), callouts.mark(numbers), lines, title, anchors, clearMm));
    }

    /** A name as it is lettered, in so much room. */
    static String lettered(String name, double roomMm) {
        return Lettering.fitted(name, roomMm, Lettering.SIZE);
    }

    /** The whole of names of which at least one is cut; blank otherwise. */
    static String whole(double roomMm, String... names) {
        boolean isCut = Stream.of(names).anyMatch(n -> !lettered(n, roomMm).equals(Lettering.plain(n)));
        return isCut ? Lettering.plain(String.join(", ", names)) : "";
    }

    /** A label without the kind in front, which the drawing shows. */
    static String name(String label, String kind) {
        return label.startsWith(kind) ? label.substring(kind.length()) : label;
    }
}
