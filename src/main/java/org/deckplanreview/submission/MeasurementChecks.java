package org.deckplanreview.submission;

import java.util.List;
import java.util.Map;
import org.deckplanreview.kernel.Pointer;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Measurements on site whose places the deck does not have. */
final class MeasurementChecks {

    private static final Pointer MEASUREMENTS = Pointer.of("/siteMeasurements");
    private static final String TWO_POSTS = "the ids of two posts of one platform";

    private final Submission submission;
    private final Map<Integer, Polygon> areas;
    private final FaultList faults;

    /** @param areas of the platforms by index; a platform whose outline is at fault has none */
    MeasurementChecks(Submission submission, Map<Integer, Polygon> areas, FaultList faults) {
        this.submission = submission;
        this.areas = areas;
        this.faults = faults;
    }

    void check() {
        submission.siteMeasurements().ifPresent(m -> {
            for (int i = 0; i < m.diagonals().size(); i++) {
                diagonal(m.diagonals().get(i), MEASUREMENTS.child("diagonals").child(i));
            }
            for (int i = 0; i < m.levels().size(); i++) {
                level(m.levels().get(i), MEASUREMENTS.child("levels").child(i));
            }
        });
    }

    private void diagonal(MeasuredDiagonal diagonal, Pointer at) {
        boolean fromKnown = post(diagonal.from(), at.child("from"));
        boolean toKnown = post(diagonal.to(), at.child("to"));
        if (!fromKnown || !toKnown) {
            return;
        }
        if (diagonal.from().equals(diagonal.to())) {
            faults.add(
                    at.child("to"),
                    "The diagonal ends at the post " + Found.quoted(diagonal.from()) + " where it begins",
                    TWO_POSTS);
            return;
        }
        long platforms = submission.platforms().stream()
                .filter(p -> has(p, diagonal.from()) && has(p, diagonal.to()))
                .count();
        if (platforms == 0) {
            faults.add(at.child("to"), "No platform has both " + posts(diagonal), TWO_POSTS);
        } else if (platforms > 1) {
            faults.add(
                    at,
                    platforms + " platforms have both " + posts(diagonal),
                    "posts whose ids tell which platform was measured");
        }
    }

    private static String posts(MeasuredDiagonal diagonal) {
        return "a post " + Found.quoted(diagonal.from()) + " and a post " + Found.quoted(diagonal.to());
    }

    private boolean post(String id, Pointer at) {
        boolean known = submission.platforms().stream().anyMatch(p -> has(p, id));
        if (!known) {
            List<String> ids = submission.platforms().stream()
                    .flatMap(p -> p.posts().stream())
                    .map(Post::id)
                    .distinct()
                    .toList();
            faults.unknown("post", id, ids, at);
        }
        return known;
    }

    private static boolean has(Platform platform, String post) {
        return platform.posts().stream().anyMatch(p -> p.id().equals(post));
    }

    private void level(MeasuredLevel level, Pointer at) {
        Point place = Plan.GEOMETRY.createPoint(Plan.coordinate(level.at()));
        boolean allKnown = areas.size() == submission.platforms().size();
        if (allKnown && areas.values().stream().noneMatch(a -> a.distance(place) <= Tolerances.OUTLINE_MM)) {
            faults.add(
                    at.child("at"),
                    "The level was measured beside the deck",
                    "a place within the outline of a platform");
        } else if (areas.values().stream()
                        .filter(a -> a.buffer(-Tolerances.OUTLINE_MM).contains(place))
                        .count()
                > 1) {
            faults.add(
                    at.child("at"),
                    "The level may be of any of the platforms that lie over each other there",
                    "a place within the outline of one platform alone");
        }
    }
}
