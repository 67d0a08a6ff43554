package org.deckplanreview.submission;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Phrases;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;

/** Surveyed points that make no surface, and walls that are points. */
final class SiteChecks {

    private static final Pointer LEVELS = Pointer.of("/site/groundLevels");
    private static final String SURFACE = "one point for level ground, or at least three that do not lie on one line";

    private final List<GroundLevel> levels;
    private final List<Wall> walls;
    private final Optional<Measure> windPressure;
    private final FaultList faults;

    SiteChecks(Submission submission, FaultList faults) {
        this.levels = submission.site().groundLevels();
        this.walls = submission.site().walls();
        this.windPressure = submission.site().windPressure();
        this.faults = faults;
    }

    void check() {
        for (int i = 0; i < walls.size(); i++) {
            Plan.hasLength(
                    walls.get(i).line(), Pointer.of("/site/walls").child(i).child("line"), faults);
        }
        contradictions();
        if (windPressure.filter(p -> p.value() <= 0).isPresent()) {
            faults.add(
                    Pointer.of("/site/windPressure"),
                    "No site has a wind pressure of " + Phrases.of(windPressure.get()),
                    "over 0; leave it out where it is not known");
        }
        if (levels.size() == 2) {
            faults.add(LEVELS, "Two points make no surface", SURFACE);
        } else if (levels.size() > 2 && width() < Tolerances.OUTLINE_MM) {
            faults.add(LEVELS, "The points lie on one line and make no surface", SURFACE);
        }
    }

    private double width() {
        Coordinate[] places = levels.stream().map(SiteChecks::place).toArray(Coordinate[]::new);
        return new MinimumDiameter(Plan.GEOMETRY.createMultiPointFromCoords(places)).getLength();
    }

    private void contradictions() {
        for (int j = 1; j < levels.size(); j++) {
            for (int i = 0; i < j; i++) {
                if (contradict(levels.get(i), levels.get(j))) {
                    faults.add(
                            LEVELS.child(j),
                            "The point is at the place of " + LEVELS.child(i) + " and has another level",
                            "one level at each place");
                    break;
                }
            }
        }
    }

    private static boolean contradict(GroundLevel a, GroundLevel b) {
        return place(a).distance(place(b)) < Tolerances.SAME_PLACE_MM && a.z().mm() != b.z().mm();
    }

    private static Coordinate place(GroundLevel level) {
        return new Coordinate(level.x().mm(), level.y().mm());
    }
}
