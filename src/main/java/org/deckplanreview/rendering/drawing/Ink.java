package org.deckplanreview.rendering.drawing;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Strokes on the sheet, found by place. */
final class Ink {

    private final STRtree tree = new STRtree();

    Ink(List<Segment> strokes) {
        strokes.forEach(s -> tree.insert(around(s), s));
        tree.build();
    }

    /** Length of strokes under a box, mm. */
    double under(Box box) {
        Envelope e = new Envelope();
        box.corners().forEach(c -> e.expandToInclude(c.x(), c.y()));
        List<?> found = tree.query(e);
        return found.stream().mapToDouble(s -> box.inside((Segment) s)).sum();
    }

    int crossedBy(Segment line) {
        List<?> found = tree.query(around(line));
        return (int) found.stream().filter(s -> line.crosses((Segment) s)).count();
    }

    private static Envelope around(Segment s) {
        return new Envelope(s.a().x(), s.b().x(), s.a().y(), s.b().y());
    }
}
