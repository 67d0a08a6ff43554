package org.deckplanreview.submission;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Flights that run through walls, platforms, posts or other flights, and landings that are stated longer than the drawing
 * leaves room for. Where a level decides and is not given, nothing is compared; the rules ask for the level.
 */
final class FlightChecks {

    private static final String CLEAR = "a flight that stays clear of walls, platforms, posts and other flights";

    private final Submission submission;
    private final Map<Integer, Polygon> areas;
    private final Pieces pieces;
    private final FaultList faults;

    /** @param areas of the platforms, by index; a platform whose outline is at fault has none */
    FlightChecks(Submission submission, Map<Integer, Polygon> areas, FaultList faults) {
        this.submission = submission;
        this.areas = areas;
        this.pieces = new Pieces(submission);
        this.faults = faults;
    }

    private record Drawn(int platform, int index, Stair stair, Flight flight) {
        Pointer pointer() {
            return Pointer.of("/platforms").child(platform).child("stairs").child(index);
        }
    }

    void check() {
        List<Drawn> drawn = new ArrayList<>();
        areas.forEach((i, area) -> {
            List<Stair> stairs = pieces.platform(i).stairs();
            for (int k = 0; k < stairs.size(); k++) {
                if (leaves(stairs.get(k).line(), area)) {
                    drawn.add(new Drawn(i, k, stairs.get(k), Flight.of(stairs.get(k), area)));
                }
            }
        });
        for (int i = 0; i < drawn.size(); i++) {
            Drawn stair = drawn.get(i);
            walls(stair);
            platforms(stair);
            posts(stair);
            landings(stair);
            for (int k = 0; k < i; k++) {
                flights(stair, drawn.get(k));
            }
        }
    }

    /** A line that does not lie along the outline is a fault of its own. */
    private static boolean leaves(PlanLine line, Polygon platform) {
        return Plan.segment(line).getLength() >= Tolerances.SAME_PLACE_MM
                && platform.getBoundary().buffer(Tolerances.OUTLINE_MM).covers(Plan.lineString(line));
    }

    private void walls(Drawn stair) {
        for (Wall wall : submission.site().walls()) {
            Geometry face = Plan.lineString(wall.line());
            through(stair, stair.flight().plan(Tolerances.OUTLINE_MM), face, "the wall " + Found.quoted(wall.id()));
        }
    }

    private void through(Drawn stair, Optional<Polygon> plan, Geometry other, String what) {
        if (plan.filter(p -> p.intersects(other)).isPresent()) {
            faults.add(stair.pointer().child("line"), "The flight runs through " + what, CLEAR);
        }
    }

    /** How far the boards of a platform lie above those that the stair leaves, mm. */
    private Optional<Double> above(Drawn stair, int platform) {
        return platform == stair.platform()
                ? Optional.of(0.0)
                : pieces.levelMm(pieces.platform(platform))
                        .flatMap(z -> pieces.levelMm(pieces.platform(stair.platform()))
                                .map(own -> z - own));
    }

    private void platforms(Drawn stair) {
        areas.forEach((i, area) -> {
            Optional<Polygon> plan = stair.flight().plan(Tolerances.FLIGHT_MM);
            Optional<Double> up = above(stair, i);
            if (plan.isEmpty() || up.isEmpty() || !plan.get().intersects(area)) {
                return;
            }
            Geometry shared = plan.get().intersection(area);
            boolean overIt = -stair.flight().mostBelowBoardsMm(shared)
                    >= up.get() - stair.stair().rise().mm();
            boolean underIt = -stair.flight().leastBelowBoardsMm(shared) <= up.get() - Tolerances.STACKED_MM;
            if (!overIt && !underIt) {
                through(stair, plan, area, "/platforms/" + i);
            }
        });
    }

    /** Posts that reach above the underside of the flight where they stand. */
    private void posts(Drawn stair) {
        for (int i = 0; i < submission.platforms().size(); i++) {
            Platform platform = pieces.platform(i);
            Optional<Double> up = above(stair, i);
            for (Post post : platform.posts()) {
                Geometry body = Plan.GEOMETRY
                        .createPoint(Plan.coordinate(post.at()))
                        .buffer(Math.max(1, pieces.halfSideMm(post) - Tolerances.OUTLINE_MM));
                Optional<Double> top =
                        up.flatMap(u -> pieces.topBelowBoardsMm(post, platform).map(t -> u - t));
                if (top.filter(t -> t
                                > -stair.flight().leastBelowBoardsMm(body)
                                        - stair.stair().rise().mm())
                        .isPresent()) {
                    through(stair, stair.flight().plan(Tolerances.FLIGHT_MM), body, post.displayLabel());
                }
                if (top.filter(t -> t > -stair.flight().footBelowBoardsMm() + Tolerances.FALL_MM)
                        .isPresent()) {
                    blocked(stair, body, post.displayLabel());
                }
            }
        }
    }

    private void flights(Drawn stair, Drawn other) {
        Optional<Double> up = above(stair, other.platform());
        Optional<Polygon> plan = stair.flight().plan(Tolerances.OUTLINE_MM);
        Optional<Polygon> itsPlan = other.flight().plan(Tolerances.OUTLINE_MM);
        if (up.isEmpty() || plan.isEmpty() || itsPlan.isEmpty() || !plan.get().intersects(itsPlan.get())) {
            return;
        }
        Geometry shared = plan.get().intersection(itsPlan.get());
        boolean isOver = -stair.flight().mostBelowBoardsMm(shared)
                >= up.get() - other.flight().leastBelowBoardsMm(shared) + Tolerances.STACKED_MM;
        boolean isUnder = -stair.flight().leastBelowBoardsMm(shared)
                <= up.get() - other.flight().mostBelowBoardsMm(shared) - Tolerances.STACKED_MM;
        if (!isOver && !isUnder) {
            through(stair, plan, itsPlan.get(), other.pointer().value());
        }
    }

    private void landings(Drawn stair) {
        stair.flight().topLanding(Tolerances.OUTLINE_MM).ifPresent(landing -> {
            Geometry there = UnaryUnionOp.union(areas.entrySet().stream()
                    .filter(a -> above(stair, a.getKey())
                            .map(up -> Math.abs(up) <= Tolerances.STEP_MM)
                            .orElse(true))
                    .map(a -> a.getValue().buffer(Tolerances.OUTLINE_MM))
                    .toList());
            if (areas.size() == submission.platforms().size() && !there.covers(landing)) {
                faults.add(
                        stair.pointer().child("topLanding"),
                        "The landing at the head of the stair reaches beyond the platform",
                        "the length that the platform has in front of the stair");
            }
            items(stair, landing, "topLanding", "head");
        });
        stair.flight()
                .bottomLanding(Tolerances.OUTLINE_MM)
                .ifPresent(landing -> items(stair, landing, "bottomLanding", "foot"));
        for (Wall wall : submission.site().walls()) {
            blocked(stair, Plan.lineString(wall.line()), "the wall " + Found.quoted(wall.id()));
        }
        areas.forEach((i, area) -> above(stair, i)
                .filter(up -> up > -stair.flight().footBelowBoardsMm() + Tolerances.FALL_MM)
                .filter(up -> up < -stair.flight().footBelowBoardsMm() + Tolerances.STACKED_MM)
                .ifPresent(up -> blocked(stair, area, "/platforms/" + i)));
    }

    private void blocked(Drawn stair, Geometry body, String what) {
        if (stair.flight()
                .bottomLanding(Tolerances.OUTLINE_MM)
                .filter(l -> l.intersects(body))
                .isPresent()) {
            faults.add(
                    stair.pointer().child("bottomLanding"),
                    "The landing at the foot of the stair runs into " + what,
                    "the length that is free in front of the stair");
        }
    }

    private void items(Drawn stair, Polygon landing, String member, String where) {
        for (HeavyItem item : submission.use().heavyItems()) {
            Geometry outline = Plan.GEOMETRY.createPolygon(Plan.ring(item.outline()));
            if (outline.isValid() && landing.intersects(outline)) {
                faults.add(
                        stair.pointer().child(member),
                        "The heavy item " + Found.quoted(item.id()) + " stands on the landing at the " + where
                                + " of the stair",
                        "the length that is free in front of the stair");
            }
        }
    }
}
