package org.deckplanreview.layout;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.deckplanreview.submission.Submission;
import org.locationtech.jts.geom.Polygon;

/** Platforms between which people step, however a drawing cuts a deck into them. */
public final class Adjoining {

    /** People step across a gap this wide without thinking of it. */
    private static final double STEPPED_ACROSS_MM = 300;

    private Adjoining() {}

    /** The platform and all that are joined to it, one beside the other; platforms above each other are not. */
    public static SortedSet<Integer> of(Submission submission, int platformIndex) {
        List<Polygon> outlines = submission.platforms().stream()
                .map(p -> new Outline(p.outline()).polygon())
                .toList();
        SortedSet<Integer> joined = new TreeSet<>();
        Deque<Integer> next = new ArrayDeque<>(List.of(platformIndex));
        while (!next.isEmpty()) {
            int one = next.remove();
            if (joined.add(one)) {
                for (int other = 0; other < outlines.size(); other++) {
                    if (adjoin(submission, outlines, one, other)) {
                        next.add(other);
                    }
                }
            }
        }
        return joined;
    }

    private static boolean adjoin(Submission submission, List<Polygon> outlines, int one, int other) {
        return one != other
                && outlines.get(one).distance(outlines.get(other)) <= STEPPED_ACROSS_MM
                && !Overlap.ofPlatforms(submission, one, other);
    }
}
