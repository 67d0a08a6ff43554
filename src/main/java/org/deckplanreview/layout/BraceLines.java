package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Brace;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Submission;

/** Braces between posts and what they hold up. */
final class BraceLines {

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
                    StrictMath.toDegrees(StrictMath.atan2(below, reach))));
        }
        return lines;
    }
}
