package org.deckplanreview.submission;

import org.deckplanreview.kernel.Pointer;

/** Decks with more members than any deck has, whose review would take long. */
final class SizeChecks {

    private final Submission submission;
    private final FaultList faults;

    SizeChecks(Submission submission, FaultList faults) {
        this.submission = submission;
        this.faults = faults;
    }

    /** A platform that is too large by itself is told first; the deck as a whole only when none is. */
    void check() {
        double joists = 0;
        double crossings = 0;
        boolean anyTooLarge = false;
        for (int i = 0; i < submission.platforms().size(); i++) {
            Platform platform = submission.platforms().get(i);
            double here = joists(platform);
            joists += here;
            crossings += here * platform.beams().size();
            if (here > Tolerances.MOST_JOISTS_OF_A_PLATFORM) {
                anyTooLarge = true;
                faults.add(
                        Pointer.of("/platforms").child(i).child("joists").child("spacing"),
                        "The platform would have " + whole(here) + " joists",
                        "a spacing, or a smaller platform, with at most " + Tolerances.MOST_JOISTS_OF_A_PLATFORM
                                + " joists");
            }
        }
        if (!anyTooLarge) {
            deck(joists, crossings);
        }
    }

    private void deck(double joists, double crossings) {
        if (joists > Tolerances.MOST_JOISTS) {
            faults.add(
                    Pointer.of("/platforms"),
                    "The deck would have " + whole(joists) + " joists",
                    "at most " + Tolerances.MOST_JOISTS + " joists on all platforms together");
        } else if (crossings > Tolerances.MOST_JOISTS_TIMES_BEAMS) {
            faults.add(
                    Pointer.of("/platforms"),
                    "The joists of each platform times its beams add up to " + whole(crossings),
                    "at most " + Tolerances.MOST_JOISTS_TIMES_BEAMS
                            + ": fewer joists, or fewer beams on platforms with many joists");
        }
    }

    private static String whole(double count) {
        return count < Tolerances.COUNTED ? String.valueOf((long) Math.ceil(count)) : "more than " + Tolerances.COUNTED;
    }

    /**
     * About how many joists fill the outline. Each of them ends at two sides of it, so that the sides' extents across the
     * joists count every joist twice, those of a comb-shaped outline too.
     */
    private static double joists(Platform platform) {
        return platform.joists()
                .filter(j -> j.direction().dx() != 0 || j.direction().dy() != 0)
                .map(j ->
                        extentsAcross(platform, j.direction()) / 2 / j.spacing().mm())
                .orElse(0.0);
    }

    private static double extentsAcross(Platform platform, Direction along) {
        // Scaled first, since the square of a very small direction would be zero.
        double scale = Math.max(Math.abs(along.dx()), Math.abs(along.dy()));
        double dx = along.dx() / scale;
        double dy = along.dy() / scale;
        double length = Math.sqrt(dx * dx + dy * dy);
        double sum = 0;
        for (int i = 0; i < platform.outline().size(); i++) {
            PlanPoint a = platform.outline().get(i);
            PlanPoint b = platform.outline().get((i + 1) % platform.outline().size());
            sum += Math.abs((b.yMm() - a.yMm()) * dx - (b.xMm() - a.xMm()) * dy) / length;
        }
        return sum;
    }
}
