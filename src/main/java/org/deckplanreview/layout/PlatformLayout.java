package org.deckplanreview.layout;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.SubjectKind;

/**
 * One platform with everything that lies in it.
 *
 * @param largestDropMm over all edges that are not against a wall, steps down to other platforms among them; missing where any of them is
 * @param assumptions what was taken where the submission is silent
 */
public record PlatformLayout(
        int platformIndex,
        Pointer pointer,
        String label,
        Platform platform,
        double areaMm2,
        Derived<Double> largestDropMm,
        Optional<BoardField> boards,
        List<JoistLine> joists,
        List<BeamLine> beams,
        Optional<LedgerLine> ledger,
        List<PostPlace> posts,
        List<FootingPlace> footings,
        List<EdgeRun> edges,
        List<GuardRun> guards,
        List<StairRun> stairs,
        List<BraceLine> braces,
        List<String> assumptions)
        implements Subject {
    public PlatformLayout {
        joists = List.copyOf(joists);
        beams = List.copyOf(beams);
        posts = List.copyOf(posts);
        footings = List.copyOf(footings);
        edges = List.copyOf(edges);
        guards = List.copyOf(guards);
        stairs = List.copyOf(stairs);
        braces = List.copyOf(braces);
        assumptions = List.copyOf(assumptions);
    }

    /** Whether blocks carry its joists, so that it needs neither beams nor posts. */
    public boolean isOnBlocks() {
        return footings.stream().anyMatch(FootingPlace::isBlock);
    }

    @Override
    public SubjectKind kind() {
        return SubjectKind.PLATFORMS;
    }

    @Override
    public String alikeKey() {
        return "" + platformIndex;
    }
}
