package org.deckplanreview.layout;

import java.util.List;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Tolerances;
import org.locationtech.jts.geom.Polygon;

/** What lies over or on a platform in plan, by more than the tolerance of a drawing. */
public final class Overlap {

    private Overlap() {}

    /** Whether the platform lies over or under another. */
    public static boolean ofPlatforms(Submission submission, int platformIndex) {
        for (int i = 0; i < submission.platforms().size(); i++) {
            if (i != platformIndex && ofPlatforms(submission, platformIndex, i)) {
                return true;
            }
        }
        return false;
    }

    /** Whether one platform lies over or under another. */
    static boolean ofPlatforms(Submission submission, int one, int other) {
        List<Platform> platforms = submission.platforms();
        return share(platforms.get(one).outline(), platforms.get(other).outline());
    }

    /** Whether a heavy item stands on the platform. */
    public static boolean ofHeavyItems(Submission submission, int platformIndex) {
        List<PlanPoint> outline = submission.platforms().get(platformIndex).outline();
        return submission.use().heavyItems().stream().anyMatch(i -> share(outline, i.outline()));
    }

    private static boolean share(List<PlanPoint> one, List<PlanPoint> other) {
        return polygon(one).buffer(-Tolerances.OUTLINE_MM).intersects(polygon(other));
    }

    private static Polygon polygon(List<PlanPoint> outline) {
        return new Outline(outline).polygon();
    }
}
