package org.deckplanreview.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.LengthUnit;
import org.deckplanreview.submission.PlanPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Boards as they lie in a platform's outline, row by row from the side where the axis across the boards is smaller. A piece
 * is as long as the outline reaches anywhere within the board's breadth.
 *
 * @param rows of boards, the last ripped to what remains
 * @param lowMm where the first row begins, across the boards
 * @param pitchMm from row to row
 */
record BoardPieces(List<List<Piece>> rows, double lowMm, double pitchMm) {

    /** What is smaller than this comes from rounding and is no board. */
    private static final double SLIVER_MM = 1e-3;
    /** More rows than any platform has; bounds the work of laying out a document. */
    private static final int MOST_ROWS = 1000;

    /** @param acrossMm the middle of what lies in the outline */
    record Piece(double acrossMm, double fromMm, double toMm) {

        double lengthMm() {
            return toMm - fromMm;
        }
    }

    /** Plan coordinates turned to lie along and across the boards. */
    private record Turned(double dx, double dy) {

        static Turned to(Direction d) {
            double length = StrictMath.hypot(d.dx(), d.dy());
            return new Turned(d.dx() / length, d.dy() / length);
        }

        Coordinate of(PlanPoint p) {
            return new Coordinate(p.xMm() * dx + p.yMm() * dy, p.yMm() * dx - p.xMm() * dy);
        }
    }

    /** Of each platform that has boards, by its index. */
    static SortedMap<Integer, Derived<BoardPieces>> of(Layout layout) {
        SortedMap<Integer, Derived<BoardPieces>> all = new TreeMap<>();
        layout.platforms()
                .forEach(p -> p.boards()
                        .ifPresent(b -> all.put(
                                p.platformIndex(), cut(b, p, layout.submission().units()))));
        return all;
    }

    static Derived<BoardPieces> cut(BoardField boards, PlatformLayout platform, LengthUnit units) {
        return Derived.of(
                        boards.boards().gap(),
                        boards.pointer().child("gap"),
                        "the gap between the " + boards.label() + ", " + units.word())
                .map(Length::mm)
                .flatMap(gap -> cut(boards, platform, gap));
    }

    private static Derived<BoardPieces> cut(BoardField boards, PlatformLayout platform, double gap) {
        Turned turned = Turned.to(boards.boards().direction());
        Polygon outline =
                polygon(platform.platform().outline().stream().map(turned::of).toList());
        Envelope box = outline.getEnvelopeInternal();
        double breadth = boards.timber().breadth().mm();
        double rows = Math.max(1, Math.ceil((box.getHeight() - SLIVER_MM) / (breadth + gap)));
        if (rows > MOST_ROWS) {
            return Derived.missing(
                    boards.pointer().child("timber"),
                    "boards that cover the outline in at most " + MOST_ROWS + " rows");
        }
        List<List<Piece>> pieces = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            double low = box.getMinY() + i * (breadth + gap);
            pieces.add(inStrip(outline, box, low, low + breadth));
        }
        return Derived.known(new BoardPieces(List.copyOf(pieces), box.getMinY(), breadth + gap));
    }

    private static List<Piece> inStrip(Polygon outline, Envelope box, double low, double high) {
        Polygon strip = polygon(List.of(
                new Coordinate(box.getMinX() - 1, low),
                new Coordinate(box.getMaxX() + 1, low),
                new Coordinate(box.getMaxX() + 1, high),
                new Coordinate(box.getMinX() - 1, high)));
        Geometry within = OverlayNGRobust.overlay(outline, strip, OverlayNG.INTERSECTION);
        List<Piece> pieces = new ArrayList<>();
        for (Object part : PolygonExtracter.getPolygons(within)) {
            Envelope e = ((Polygon) part).getEnvelopeInternal();
            if (e.getWidth() > SLIVER_MM && e.getHeight() > SLIVER_MM) {
                pieces.add(new Piece((e.getMinY() + e.getMaxY()) / 2, e.getMinX(), e.getMaxX()));
            }
        }
        pieces.sort((a, b) -> Double.compare(a.fromMm(), b.fromMm()));
        return List.copyOf(pieces);
    }

    private static Polygon polygon(List<Coordinate> corners) {
        List<Coordinate> ring = new ArrayList<>(corners);
        ring.add(ring.get(0).copy());
        return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
    }

    List<Piece> pieces() {
        return rows.stream().flatMap(List::stream).toList();
    }

    /** How often a board crosses a joist's centre line. */
    int crossings(BoardField boards, List<JoistLine> joists) {
        Turned turned = Turned.to(boards.boards().direction());
        int crossings = 0;
        for (JoistLine joist : joists) {
            Coordinate from = turned.of(joist.line().from());
            Coordinate to = turned.of(joist.line().to());
            for (List<Piece> row : rows.subList(rowAt(Math.min(from.y, to.y)), rowAt(Math.max(from.y, to.y)) + 1)) {
                for (Piece piece : row) {
                    if (alongWhereCrossed(from, to, piece.acrossMm())
                            .filter(a -> piece.fromMm() <= a && a <= piece.toMm())
                            .isPresent()) {
                        crossings++;
                    }
                }
            }
        }
        return crossings;
    }

    private int rowAt(double across) {
        return (int) Math.max(0, Math.min(rows.size() - 1, Math.floor((across - lowMm) / pitchMm)));
    }

    private static Optional<Double> alongWhereCrossed(Coordinate from, Coordinate to, double across) {
        boolean isCrossed = (from.y <= across) != (to.y <= across);
        return isCrossed
                ? Optional.of(from.x + (across - from.y) / (to.y - from.y) * (to.x - from.x))
                : Optional.empty();
    }
}
