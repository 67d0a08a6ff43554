package org.deckplanreview.layout;

import java.util.List;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.SubjectKind;

/**
 * A guard along all the edges that name it.
 *
 * @param lengthMm of all its edges
 */
public record GuardRun(
        int platformIndex, Pointer pointer, String label, Guard guard, List<EdgeRun> edges, double lengthMm)
        implements Subject {
    public GuardRun {
        edges = List.copyOf(edges);
    }

    @Override
    public SubjectKind kind() {
        return SubjectKind.GUARDS;
    }

    @Override
    public String alikeKey() {
        return platformIndex + " " + guard.id();
    }
}
