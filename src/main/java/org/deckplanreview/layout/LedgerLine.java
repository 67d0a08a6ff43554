package org.deckplanreview.layout;

import java.util.List;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/**
 * A ledger on a wall.
 *
 *
 */
public record LedgerLine(
        int platformIndex,
        Pointer pointer,
        String label,
        Timber timber,
        PlanLine line,
        double lengthMm,
        List<JoistBearing> joists,
        Derived<Double> groundClearanceMm)
        implements TimberPiece {
    public LedgerLine {
        joists = List.copyOf(joists);
    }

    @Override
    public SubjectKind kind() {
        return SubjectKind.LEDGERS;
    }

    @Override
    public String alikeKey() {
        return platformIndex + " " + timber.id();
    }
}
