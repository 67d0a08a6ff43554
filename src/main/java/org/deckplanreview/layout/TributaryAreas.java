package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The outline divided between joists. It is cut square to the joists at every corner and at every joist's end; in
 * each slab the border between two joists that are there lies midway between them. Where no joist is there, the area is
 * carried at the nearest place of a joist. A joist that hangs on a face carries the deck on to the middle of a beam, or to
 * the outline, at its end.
 */
final class TributaryAreas {

    private static final double ON_LINE_MM = 1e-6;
    private static final double SAME_WIDTH_MM = 1e-9;

    private final List<JoistPiece> joists;
    private final List<Cell> cells = new ArrayList<>();
    private final List<List<AreaStrip>> strips = new ArrayList<>();
    private final TreeSet<Double> borders = new TreeSet<>();
    private final double[] spacings;
    private final int[] fieldSizes;

    /** A stretch of a slab of the outline with the joists that pass it, as indices in order across. */
    private record Cell(Slab slab, Slab.Stretch stretch, List<Integer> joists) {}

    private TributaryAreas(List<JoistPiece> joists) {
        this.joists = joists;
        this.spacings = new double[joists.size()];
        this.fieldSizes = new int[joists.size()];
        joists.forEach(j -> strips.add(new ArrayList<>()));
    }

    /** @param joists at least one */
    static TributaryAreas divide(List<Coordinate> outline, List<JoistPiece> joists) {
        TributaryAreas areas = new TributaryAreas(joists);
        List<Double> ends = new ArrayList<>();
        joists.forEach(j -> ends.addAll(List.of(j.from(), j.to(), j.carriesFrom(), j.carriesTo())));
        List<Slab> slabs = Slab.cut(Slab.Side.ofRing(outline), ends);
        for (Slab slab : slabs) {
            for (Slab.Stretch stretch : slab.stretches()) {
                areas.add(new Cell(slab, stretch, areas.joistsIn(slab, stretch)));
            }
        }
        for (Cell cell : areas.cells) {
            areas.divide(cell.slab(), cell.stretch(), cell, Optional.empty());
        }
        return areas;
    }

    private void add(Cell cell) {
        cells.add(cell);
        List<Integer> present = cell.joists();
        for (int i = 0; i < present.size(); i++) {
            int joist = present.get(i);
            fieldSizes[joist] = Math.max(fieldSizes[joist], present.size());
            if (i + 1 < present.size()) {
                int next = present.get(i + 1);
                double gap = joists.get(next).across() - joists.get(joist).across();
                spacings[joist] = Math.max(spacings[joist], gap);
                spacings[next] = Math.max(spacings[next], gap);
                borders.add(border(cell, i));
            }
        }
    }

    /** Divides the part of a heavy item's outline that lies within the deck's. */
    void divideHeavyItem(int index, List<Coordinate> item, List<Coordinate> outline) {
        Geometry within =
                OverlayNGRobust.overlay(Outline.polygon(item), Outline.polygon(outline), OverlayNG.INTERSECTION);
        if (within.isEmpty()) {
            return;
        }
        for (Object polygon : PolygonExtracter.getPolygons(within)) {
            divideHeavyItem(index, (Polygon) polygon);
        }
    }

    private void divideHeavyItem(int index, Polygon item) {
        List<Slab.Side> sides = new ArrayList<>();
        for (Object ring : LinearComponentExtracter.getLines(item)) {
            Coordinate[] closed = ((Geometry) ring).getCoordinates();
            sides.addAll(Slab.Side.ofRing(List.of(closed).subList(0, closed.length - 1)));
        }
        for (Slab slab : Slab.cut(sides, placesThatDivide(sides))) {
            for (Slab.Stretch stretch : slab.stretches()) {
                divide(slab, stretch, cellAround(slab, stretch), Optional.of(index));
            }
        }
    }

    private List<Double> placesThatDivide(List<Slab.Side> sides) {
        double from = sides.stream().mapToDouble(s -> s.start().x).min().orElseThrow();
        double to = sides.stream().mapToDouble(s -> s.end().x).max().orElseThrow();
        List<Double> places = new ArrayList<>();
        for (Cell cell : cells) {
            places.add(cell.slab().from());
            places.add(cell.slab().to());
        }
        for (double border : borders) {
            sides.stream().filter(s -> s.crosses(border)).forEach(s -> places.add(s.alongAt(border)));
        }
        return places.stream().filter(p -> from < p && p < to).toList();
    }

    private Cell cellAround(Slab slab, Slab.Stretch stretch) {
        return cells.stream()
                .min(Comparator.<Cell>comparingDouble(c ->
                                outside(slab.middle(), c.slab().from(), c.slab().to()))
                        .thenComparingDouble(c -> outside(
                                stretch.middle(),
                                c.stretch().lowMiddle(),
                                c.stretch().highMiddle())))
                .orElseThrow();
    }

    private static double outside(double place, double from, double to) {
        return Math.max(0, Math.max(from - place, place - to));
    }

    private List<Integer> joistsIn(Slab slab, Slab.Stretch stretch) {
        List<Integer> present = new ArrayList<>();
        for (int i = 0; i < joists.size(); i++) {
            JoistPiece j = joists.get(i);
            if (j.carries(slab.middle())
                    && j.across() >= stretch.lowMiddle() - ON_LINE_MM
                    && j.across() <= stretch.highMiddle() + ON_LINE_MM) {
                present.add(i);
            }
        }
        return present;
    }

    /** Midway between the cell's joists i and i + 1. */
    private double border(Cell cell, int i) {
        return (joists.get(cell.joists().get(i)).across()
                        + joists.get(cell.joists().get(i + 1)).across())
                / 2;
    }

    private void divide(Slab slab, Slab.Stretch stretch, Cell cell, Optional<Integer> item) {
        List<Integer> present = cell.joists();
        if (present.isEmpty()) {
            carryAtNearestJoist(slab, stretch, cell, item);
        }
        for (int i = 0; i < present.size(); i++) {
            double low = i == 0 ? Double.NEGATIVE_INFINITY : border(cell, i - 1);
            double high = i == present.size() - 1 ? Double.POSITIVE_INFINITY : border(cell, i);
            double widthFrom = overlap(stretch.lowFrom(), stretch.highFrom(), low, high);
            double widthTo = overlap(stretch.lowTo(), stretch.highTo(), low, high);
            double area = (widthFrom + widthTo) / 2 * (slab.to() - slab.from());
            if (area > 0) {
                add(present.get(i), strip(joists.get(present.get(i)), slab, widthFrom, widthTo, area, item));
            }
        }
    }

    /** Beyond a joist's end, over what it hangs on, its area is carried at its end. */
    private static AreaStrip strip(
            JoistPiece joist, Slab slab, double widthFrom, double widthTo, double area, Optional<Integer> item) {
        double from = joist.nearest(slab.from());
        return joist.passes(slab.middle())
                ? new AreaStrip(from, joist.nearest(slab.to()), widthFrom, widthTo, area, item)
                : new AreaStrip(from, from, 0, 0, area, item);
    }

    private static double overlap(double fromA, double toA, double fromB, double toB) {
        return Math.max(0, Math.min(toA, toB) - Math.max(fromA, fromB));
    }

    private void carryAtNearestJoist(Slab slab, Slab.Stretch stretch, Cell cell, Optional<Integer> item) {
        double from = stretch.highFrom() - stretch.lowFrom();
        double to = stretch.highTo() - stretch.lowTo();
        double area = (from + to) / 2 * (slab.to() - slab.from());
        int nearest = nearestTo(cell.slab().middle(), cell.stretch().middle());
        double at = joists.get(nearest).nearest(slab.middle());
        add(nearest, new AreaStrip(at, at, 0, 0, area, item));
    }

    private int nearestTo(double along, double across) {
        int nearest = 0;
        for (int i = 1; i < joists.size(); i++) {
            if (distance(joists.get(i), along, across) < distance(joists.get(nearest), along, across)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private static double distance(JoistPiece joist, double along, double across) {
        double beyond = outside(along, joist.carriesFrom(), joist.carriesTo());
        double beside = across - joist.across();
        return Math.sqrt(beyond * beyond + beside * beside);
    }

    /** Strips of one constant width that meet are one strip. */
    private void add(int joist, AreaStrip strip) {
        List<AreaStrip> of = strips.get(joist);
        AreaStrip before = of.isEmpty() ? strip : of.get(of.size() - 1);
        if (before.toMm() == strip.fromMm()
                && before.heavyItem().equals(strip.heavyItem())
                && isConstant(before)
                && isConstant(strip)
                && Math.abs(before.widthToMm() - strip.widthFromMm()) <= SAME_WIDTH_MM) {
            of.set(
                    of.size() - 1,
                    new AreaStrip(
                            before.fromMm(),
                            strip.toMm(),
                            before.widthFromMm(),
                            strip.widthToMm(),
                            before.areaMm2() + strip.areaMm2(),
                            strip.heavyItem()));
        } else {
            of.add(strip);
        }
    }

    private static boolean isConstant(AreaStrip strip) {
        return strip.fromMm() < strip.toMm() && Math.abs(strip.widthFromMm() - strip.widthToMm()) <= SAME_WIDTH_MM;
    }

    List<AreaStrip> strips(int joist) {
        return List.copyOf(strips.get(joist));
    }

    /** The largest distance to a neighbour, centre to centre; 0 without one. */
    double spacingMm(int joist) {
        return spacings[joist];
    }

    /** The largest number of joists that lie side by side without interruption anywhere along this one. */
    int fieldSize(int joist) {
        return fieldSizes[joist];
    }

    /** The largest distance from the outermost joist to the outline beyond it, square to the joists. */
    double beyondLastJoistMm() {
        double largest = 0;
        for (Cell cell : cells) {
            if (!cell.joists().isEmpty()) {
                double first = joists.get(cell.joists().get(0)).across();
                double last =
                        joists.get(cell.joists().get(cell.joists().size() - 1)).across();
                Slab.Stretch s = cell.stretch();
                largest = Math.max(largest, Math.max(first - s.lowFrom(), first - s.lowTo()));
                largest = Math.max(largest, Math.max(s.highFrom() - last, s.highTo() - last));
            }
        }
        return largest;
    }
}
