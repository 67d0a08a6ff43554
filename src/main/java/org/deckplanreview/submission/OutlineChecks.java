package org.deckplanreview.submission;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Outlines that enclose no area, cross themselves or lie upon each other, and heavy items beside the deck. */
final class OutlineChecks {

    private static final String SIMPLE_OUTLINE =
            "an outline whose sides meet only at its corners, each corner given once and in order";

    private final Submission submission;
    private final FaultList faults;

    OutlineChecks(Submission submission, FaultList faults) {
        this.submission = submission;
        this.faults = faults;
    }

    /** Checks all outlines; gives the areas of the platforms without such a fault, by index. */
    Map<Integer, Polygon> check() {
        Map<Integer, Polygon> areas = new LinkedHashMap<>();
        for (int i = 0; i < submission.platforms().size(); i++) {
            int index = i;
            Pointer pointer = Pointer.of("/platforms").child(i).child("outline");
            area(submission.platforms().get(i).outline(), pointer).ifPresent(a -> areas.put(index, a));
        }
        platformsApart(areas);
        heavyItems(areas);
        return areas;
    }

    private void platformsApart(Map<Integer, Polygon> areas) {
        areas.forEach((i, area) -> {
            // Platforms that share a side may lap by the tolerance before they count as one upon the other.
            Geometry inner = area.buffer(-Tolerances.OUTLINE_MM);
            areas.forEach((j, other) -> {
                if (i < j && inner.intersects(other) && !areStacked(i, j)) {
                    faults.add(
                            Pointer.of("/platforms").child(j).child("outline"),
                            "The platform overlaps /platforms/" + i,
                            "platforms that lie beside each other, with at most " + faults.length(Tolerances.OUTLINE_MM)
                                    + " of overlap, or whose levels are at least "
                                    + faults.length(Tolerances.STACKED_MM) + " apart");
                }
            });
        });
    }

    private boolean areStacked(int one, int other) {
        Optional<Level> level = submission.platforms().get(one).level();
        Optional<Level> beside = submission.platforms().get(other).level();
        return level.isPresent()
                && beside.isPresent()
                && Math.abs(level.get().z().mm() - beside.get().z().mm()) >= Tolerances.STACKED_MM;
    }

    private void heavyItems(Map<Integer, Polygon> areas) {
        List<HeavyItem> items = submission.use().heavyItems();
        for (int i = 0; i < items.size(); i++) {
            Pointer pointer = Pointer.of("/use/heavyItems").child(i).child("outline");
            Optional<Polygon> item = area(items.get(i).outline(), pointer);
            boolean allKnown = areas.size() == submission.platforms().size();
            if (item.isEmpty() || !allKnown) {
                continue;
            }
            long platforms =
                    areas.values().stream().filter(a -> covers(a, item.get())).count();
            if (platforms == 0) {
                faults.add(
                        pointer,
                        "The heavy item does not stand on any one platform with its whole area",
                        "an area within the outline of a platform");
            } else if (areas.values().stream().filter(a -> isOn(a, item.get())).count() > 1) {
                faults.add(
                        pointer,
                        "The heavy item may stand on any of the platforms that lie over each other there",
                        "an area within the outline of one platform alone");
            }
        }
    }

    private static boolean isOn(Polygon platform, Polygon item) {
        return platform.buffer(-Tolerances.OUTLINE_MM).intersects(item);
    }

    private static boolean covers(Polygon platform, Polygon item) {
        return platform.buffer(Tolerances.OUTLINE_MM).covers(item);
    }

    private Optional<Polygon> area(List<PlanPoint> outline, Pointer pointer) {
        if (hasRepeatedPoints(outline, pointer)) {
            return Optional.empty();
        }
        Polygon polygon = Plan.GEOMETRY.createPolygon(Plan.ring(outline));
        if (new MinimumDiameter(polygon).getLength() < Tolerances.SAME_PLACE_MM) {
            faults.add(pointer, "All points of the outline lie on one line, so that it has no area", SIMPLE_OUTLINE);
            return Optional.empty();
        }
        TopologyValidationError crossing = new IsValidOp(polygon).getValidationError();
        if (crossing != null) {
            faults.add(
                    pointer,
                    "The outline crosses or touches itself at " + faults.point(crossing.getCoordinate()),
                    SIMPLE_OUTLINE);
            return Optional.empty();
        }
        if (polygon.getArea() < Tolerances.SMALLEST_AREA_MM2) {
            faults.add(
                    pointer,
                    "The outline has almost no area",
                    "an outline that encloses at least a square of "
                            + faults.length(Math.sqrt(Tolerances.SMALLEST_AREA_MM2)));
            return Optional.empty();
        }
        return Optional.of(polygon);
    }

    private boolean hasRepeatedPoints(List<PlanPoint> outline, Pointer pointer) {
        Coordinate[] points = Plan.coordinates(outline);
        boolean repeated = false;
        for (int i = 1; i < points.length; i++) {
            if (points[i].distance(points[i - 1]) < Tolerances.SAME_PLACE_MM) {
                faults.add(pointer.child(i), "The point repeats the one before it", SIMPLE_OUTLINE);
                repeated = true;
            }
        }
        int last = points.length - 1;
        if (points[last].distance(points[0]) < Tolerances.SAME_PLACE_MM) {
            faults.add(
                    pointer.child(last),
                    "The last point repeats the first",
                    "an outline without its first point at the end; it closes by itself");
            repeated = true;
        }
        return repeated;
    }
}
