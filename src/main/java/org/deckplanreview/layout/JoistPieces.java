package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.submission.Tolerances;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where the joists of a field lie. The first lies half a breadth inside the outline's extreme on the side where the axis
 * across the joists is smaller, the others follow at the spacing, the last lies half a breadth inside the other extreme,
 * and each side of the outline along the joists, if it is as long as a joist is broad, has a joist just inside it. A joist
 * that would hang with a part of its breadth beside the end of its beam or ledger is set aside, as a builder sets it: in
 * front of that end with its whole breadth, or beside a ledger's where it runs on past it.
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

    /**
     * A joist that is not where its spacing or its side puts it.
     *
     * @param across where it is now
     * @param byMm how far it was set aside
     */
    record SetAside(double across, double byMm, Carrier carrier, boolean beside) {}

    /** Joists in order across, then along them, and those of them that were set aside. */
    record Laid(List<JoistPiece> pieces, List<SetAside> setAside) {}

    /** A piece shorter than the joist's breadth is no joist. */
    static Laid lay(List<Coordinate> outline, double breadthMm, double spacingMm, List<Carrier> carriers) {
        JoistPieces field = new JoistPieces(outline, breadthMm);
        field.layOut(spacingMm);
        field.addJoistsAtSides();
        List<SetAside> setAside = field.setAside(carriers);
        List<Double> lines = new ArrayList<>(field.fieldLines);
        lines.addAll(field.sideLines);
        return new Laid(
                lines.stream()
                        .sorted()
                        .flatMap(line -> field.piecesOf(line).stream())
                        .toList(),
                setAside);
    }

    private List<SetAside> setAside(List<Carrier> carriers) {
        List<SetAside> moves = new ArrayList<>();
        List<Carrier> ends =
                carriers.stream().filter(c -> c.hangs() || c.isLedger()).toList();
        for (List<Double> lines : List.of(fieldLines, sideLines)) {
            for (int i = 0; i < lines.size(); i++) {
                double line = lines.get(i);
                for (Carrier carrier : ends) {
                    Optional<SetAside> move = setAside(line, carrier).filter(m -> isFree(m.across(), line));
                    if (move.isPresent()) {
                        lines.set(i, move.get().across());
                        moves.add(move.get());
                        break;
                    }
                }
            }
        }
        return moves;
    }

    private Optional<SetAside> setAside(double line, Carrier carrier) {
        double met = carrier.breadthMet(line, breadth);
        boolean partly = met > Supports.ROUNDING_MM && met < breadth - Supports.ROUNDING_MM;
        if (!partly || carrier.line().highAcross() - carrier.line().lowAcross() < breadth) {
            return Optional.empty();
        }
        double towards = line < (carrier.line().lowAcross() + carrier.line().highAcross()) / 2 ? 1 : -1;
        return piecesOf(line).stream()
                .filter(p -> reaches(p, carrier))
                .findFirst()
                .map(p -> runsPast(p, carrier)
                        ? new SetAside(line - towards * met, met, carrier, true)
                        : new SetAside(line + towards * (breadth - met), breadth - met, carrier, false));
    }

    private static boolean reaches(JoistPiece piece, Carrier carrier) {
        return carrier.body(piece.across(), piece.middle()).overlap(piece.from(), piece.to()) >= -Supports.ROUNDING_MM;
    }

    /** Behind a ledger is its wall, off which it may be drawn by the tolerance. */
    private boolean runsPast(JoistPiece piece, Carrier carrier) {
        double at = carrier.line().alongAt(piece.across());
        double least = Math.max(breadth, Tolerances.LEDGER_MM / carrier.sine());
        return carrier.isLedger() && Math.min(at - piece.from(), piece.to() - at) > least;
    }

    private boolean isFree(double place, double line) {
        return Stream.concat(fieldLines.stream(), sideLines.stream())
                .filter(l -> l != line)
                .allMatch(l -> Math.abs(l - place) >= breadth - SAME_MM);
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
