package org.deckplanreview.layout;

import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/**
 * A ledger on a wall.
 *
 * @param line its back, against the wall
 * @param joists in order along the ledger
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

    /** Its centre line: half its breadth in front of its back, on the side of the joists; the back itself where it carries none. */
    public PlanLine middle(PlatformLayout platform) {
        return joists.stream()
                .findFirst()
                .map(j -> Axis.pointAt(platform.joists().get(j.joist()).line(), 1.0 / 2))
                .map(this::middleTowards)
                .orElse(line);
    }

    private PlanLine middleTowards(PlanPoint joist) {
        Axis axis = Axis.of(line);
        double across = axis.across(line.from());
        double half = timber.breadth().mm() / 2;
        double middle = axis.across(joist) > across ? across + half : across - half;
        return new PlanLine(axis.point(axis.along(line.from()), middle), axis.point(axis.along(line.to()), middle));
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
