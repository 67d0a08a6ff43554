package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.Brace;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.Submission;

/** Braces between posts and what they hold up. */
final class BraceLines {

    /** A brace that leaves the beam's line by more than this braces across it. */
    private static final double ALONG_DEGREES = 10;

    private BraceLines() {}

    static List<BraceLine> of(Submission submission, Platform platform, int platformIndex, Pointer pointer) {
        List<BraceLine> lines = new ArrayList<>();
        for (int i = 0; i < platform.braces().size(); i++) {
            Brace brace = platform.braces().get(i);
            double below = brace.below().mm();
            double reach = brace.reach().mm();
            lines.add(new BraceLine(
                    platformIndex,
                    pointer.child("braces").child(i),
                    brace.displayLabel(),
                    brace,
                    submission.timber(brace.timber()),
                    StrictMath.hypot(below, reach),
                    StrictMath.toDegrees(StrictMath.atan2(below, reach)),
                    alongBeam(brace, platform)));
        }
        return lines;
    }

    private static boolean alongBeam(Brace brace, Platform platform) {
        Axis own = Axis.of(brace.direction());
        return platform.beams().stream()
                .filter(b -> b.posts().contains(brace.post()))
                .map(BraceLines::direction)
                .anyMatch(d -> own.degreesTo(Axis.of(d)) <= ALONG_DEGREES);
    }

    private static Direction direction(Beam beam) {
        return new Direction(
                beam.line().to().xMm() - beam.line().from().xMm(),
                beam.line().to().yMm() - beam.line().from().yMm());
    }
}
