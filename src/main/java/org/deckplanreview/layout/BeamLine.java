package org.deckplanreview.layout;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/**
 * A beam with the posts that carry it and the joists that it carries.
 *
 * @param supports posts in order along the beam
 * @param joists in order along the beam
 */
public record BeamLine(
        int platformIndex,
        Pointer pointer,
        String label,
        String id,
        Timber timber,
        int plies,
        Optional<EndNotch> endNotch,
        PlanLine line,
        double lengthMm,
        List<MemberSupport> supports,
        List<Span> spans,
        List<JoistBearing> joists,
        Derived<Double> groundClearanceMm)
        implements Member {
    public BeamLine {
        supports = List.copyOf(supports);
        spans = List.copyOf(spans);
        joists = List.copyOf(joists);
    }

    @Override
    public SubjectKind kind() {
        return SubjectKind.BEAMS;
    }

    @Override
    public String alikeKey() {
        return platformIndex + " " + timber.id() + " " + plies;
    }
}
