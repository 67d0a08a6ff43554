package org.deckplanreview.layout;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/**
 * A beam with the posts that carry it and the joists that it carries; where its plies are joined, one piece of it.
 *
 * @param id of the beam in the submission, which its pieces share
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
    private static final double ROUNDING_MM = 1e-6;

    public BeamLine {
        supports = List.copyOf(supports);
        spans = List.copyOf(spans);
        joists = List.copyOf(joists);
    }

    /** How far a point lies from the beam's line, mm, in plan and to either side. */
    public double offMm(PlanPoint point) {
        Axis axis = Axis.of(line);
        double off = Math.abs(axis.across(point) - axis.across(line.from()));
        return off < ROUNDING_MM ? 0 : off;
    }

    public boolean restsOn(PostPlace post) {
        return supports.stream().anyMatch(s -> s.id().equals(post.id()));
    }

    /** Whether a stretch of a joist lies to the left of the beam, seen from where the beam's line begins. */
    public boolean isLeft(JoistLine joist, Span stretch) {
        Axis axis = Axis.of(line);
        double middle = (stretch.fromMm() + stretch.toMm()) / 2;
        return axis.across(Axis.pointAt(joist.line(), middle / joist.lengthMm())) > axis.across(line.from());
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
