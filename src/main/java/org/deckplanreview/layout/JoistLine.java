package org.deckplanreview.layout;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/**
 * One joist as it lies in the outline.
 *
 * @param pointer the joist field; joists of one field share it
 * @param number counted from 1 across the platform
 * @param line centre line; positions along the joist are measured from its first point
 * @param strips its tributary area and the heavy items on it; the areas without heavy item add up over all joists to the outline
 * @param spacingMm the largest distance to a neighbouring joist, centre to centre; 0 for a joist alone
 * @param fieldSize how many joists lie side by side in the field, itself included
 */
public record JoistLine(
        int platformIndex,
        Pointer pointer,
        String label,
        int number,
        Timber timber,
        Optional<EndNotch> endNotch,
        PlanLine line,
        double lengthMm,
        List<MemberSupport> supports,
        List<Span> spans,
        List<AreaStrip> strips,
        double spacingMm,
        int fieldSize,
        Derived<Double> groundClearanceMm)
        implements Member {
    public JoistLine {
        supports = List.copyOf(supports);
        spans = List.copyOf(spans);
        strips = List.copyOf(strips);
    }

    @Override
    public SubjectKind kind() {
        return SubjectKind.JOISTS;
    }

    @Override
    public String alikeKey() {
        return platformIndex + " " + timber.id();
    }

    @Override
    public int plies() {
        return 1;
    }
}
