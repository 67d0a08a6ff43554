package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where the joists of a field lie. The first lies half a breadth inside the outline's extreme on the side where the axis
 * across the joists is smaller, the others follow at the spacing, the last lies half a breadth inside the other extreme,
 * and each side of the outline along the joists, if it is as long as a joist is broad, has a joist just inside it.
 */
final class JoistPieces {

    private static final double SAME_MM = 1e-6;
    /** Two pieces of one line with less than this between them are one joist. */
    private static final double TOUCHING_MM = 1e-3;

    private final List<Coordinate> outline;
    private final double breadth;
    private final List<Double> fieldLines = new ArrayList<>();
    private final List<Double> sideLines = new ArrayList<>();

    private JoistPieces(List<Coordinate> outline, double breadth) {
        this.outline = outline;
        this.breadth = breadth;
    }

    /** In order across the joists, then along them. A piece shorter than the joist's breadth is no joist. */
    static List<JoistPiece> cut(List<Coordinate> outline, double breadthMm, double spacingMm) {
        JoistPieces field = new JoistPieces(outline, breadthMm);
        field.layOut(spacingMm);
        field.addJoistsAtSides();
        List<Double> lines = new ArrayList<>(field.fieldLines);
        lines.addAll(field.sideLines);
        return lines.stream()
                .sorted()
                .flatMap(line -> field.piecesOf(line).stream())
                .toList();
    }

    private void layOut(double spacing) {
        double low = outline.stream().mapToDouble(c -> c.y).min().orElseThrow();
        double high = outline.stream().mapToDouble(c -> c.y).max().orElseThrow();
        double first = low + breadth / 2;
        double last = high - breadth / 2;
        if (last - first < breadth / 2) {
            sideLines.add((low + high) / 2);
            return;
        }
        sideLines.add(first);
        sideLines.add(last);
        for (int i = 1; last - (first + i * spacing) >= breadth / 2 - SAME_MM; i++) {
            fieldLines.add(first + i * spacing);
        }
    }

    private void addJoistsAtSides() {
        List<InnerSide> sides = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Coordinate a = outline.get(i);
            Coordinate b = outline.get((i + 1) % outline.size());
            if (Math.abs(b.x - a.x) >= breadth && Math.abs(b.y - a.y) <= SAME_MM * (1 + a.distance(b))) {
                double middle = (a.x + b.x) / 2;
                double across = (a.y + b.y) / 2;
                sides.add(new InnerSide(across, middle, isInsideAbove(middle, across)));
            }
        }
        sides.stream()
                .sorted(Comparator.comparingDouble(InnerSide::across).thenComparingDouble(InnerSide::middle))
                .forEach(this::addJoistAt);
    }

    private record InnerSide(double across, double middle, boolean insideAbove) {

        /** How far a line lies inside the side; negative beyond it. */
        double depthOf(double line) {
            return insideAbove ? line - across : across - line;
        }
    }

    /** Of the sides that pass the middle of this one, an even number lies below it where the inside is above. */
    private boolean isInsideAbove(double middle, double across) {
        long below = Slab.Side.ofRing(outline).stream()
                .filter(s -> s.start().x <= middle && middle < s.end().x)
                .filter(s -> s.acrossAt(middle) < across - SAME_MM)
                .count();
        return below % 2 == 0;
    }

    private void addJoistAt(InnerSide side) {
        double wanted = side.across() + (side.insideAbove() ? breadth / 2 : -breadth / 2);
        boolean served = sideLines.stream()
                .anyMatch(line -> Math.abs(line - wanted) < breadth - SAME_MM && side.depthOf(line) > SAME_MM);
        if (served) {
            return;
        }
        boolean servedByField = fieldLines.stream()
                .anyMatch(line ->
                        Math.abs(line - wanted) < breadth - SAME_MM && side.depthOf(line) >= breadth / 2 - SAME_MM);
        if (!servedByField) {
            // A joist of the field that would stick out over the side is set back instead of doubled.
            fieldLines.removeIf(line -> Math.abs(line - wanted) < breadth - SAME_MM);
            sideLines.add(wanted);
        }
    }

    private List<JoistPiece> piecesOf(double across) {
        List<Double> crossings = Slab.Side.ofRing(outline).stream()
                .filter(s -> s.crosses(across))
                .map(s -> s.alongAt(across))
                .sorted()
                .toList();
        List<JoistPiece> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            JoistPiece piece = new JoistPiece(across, crossings.get(i), crossings.get(i + 1));
            int before = pieces.size() - 1;
            if (before >= 0 && piece.from() - pieces.get(before).to() <= TOUCHING_MM) {
                piece = new JoistPiece(across, pieces.remove(before).from(), piece.to());
            }
            pieces.add(piece);
        }
        return pieces.stream().filter(p -> p.lengthMm() >= breadth).toList();
    }
}
