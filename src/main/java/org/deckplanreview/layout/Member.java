package org.deckplanreview.layout;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.submission.PlanLine;

/** A timber in bending: a joist or a beam. Positions along it are measured in mm from the first point of its line. */
public sealed interface Member extends TimberPiece permits JoistLine, BeamLine {

    int plies();

    PlanLine line();

    double lengthMm();

    /** In order along the member; possibly fewer than it needs to stand. */
    List<MemberSupport> supports();

    /** In order along the member; empty with no support. */
    List<Span> spans();

    /** The stretches on either side of a support, in order along the member. */
    default List<Span> beside(MemberSupport support) {
        return spans().stream()
                .filter(s -> s.fromMm() == support.atMm() || s.toMm() == support.atMm())
                .toList();
    }

    Optional<EndNotch> endNotch();

    /** Smallest clear height between its underside and the ground; missing where levels are not given. */
    Derived<Double> groundClearanceMm();

    /** For people: {@code the span}, {@code span 2 of 3}, {@code the cantilever at its end}. */
    default String spanName(int index) {
        return switch (spans().get(index).kind()) {
            case CANTILEVER_AT_START -> "the cantilever at its start";
            case CANTILEVER_AT_END -> "the cantilever at its end";
            case BETWEEN_SUPPORTS -> {
                long before = spans().subList(0, index).stream()
                        .filter(s -> !s.isCantilever())
                        .count();
                long all = spans().stream().filter(s -> !s.isCantilever()).count();
                yield all == 1 ? "the span" : "span " + (before + 1) + " of " + all;
            }
        };
    }
}
