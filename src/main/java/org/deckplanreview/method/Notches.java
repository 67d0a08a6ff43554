package org.deckplanreview.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Span;
import org.deckplanreview.submission.EndNotch;
import org.deckplanreview.submission.NotchSide;

/** Where the notches of a member lie. Every support of a notched member has the notch. */
public final class Notches {

    /** A bearing of nothing has no stress; it counts as this, so that the finding still carries a finite one. */
    private static final double SHORTEST_BEARING_MM = 0.5;

    private Notches() {}

    /**
     * The stretches beside a support that go on beyond what carries the member, as indices of its spans: there the notch ends
     * in a corner. Towards the member's end over its bearing the notch is open.
     */
    public static List<Integer> spansBeside(Member member, int support) {
        MemberSupport at = member.supports().get(support);
        List<Integer> beside = new ArrayList<>();
        for (int i = 0; i < member.spans().size(); i++) {
            Span span = member.spans().get(i);
            boolean touches = span.fromMm() == at.atMm() || span.toMm() == at.atMm();
            if (touches && span.lengthMm() > halfContactMm(member, at)) {
                beside.add(i);
            }
        }
        return List.copyOf(beside);
    }

    /** Half the bearing; of a member that does not lie on its support, half its depth. */
    private static double halfContactMm(Member member, MemberSupport at) {
        return at.contactLengthMm().orElse(member.timber().depth().mm()) / 2;
    }

    /** Whether a notch opposite the support lies over one at which the member is continuous or goes on as a cantilever. */
    public static boolean tensionAtTop(Member member, EndNotch notch) {
        return notch.side() == NotchSide.OPPOSITE && goesOnOverASupport(member);
    }

    public static boolean goesOnOverASupport(Member member) {
        for (int i = 0; i < member.supports().size(); i++) {
            if (spansBeside(member, i).size() > 1) {
                return true;
            }
        }
        return false;
    }

    /** The notch on the side of the support, whose corner ends the bearing. */
    private static Optional<EndNotch> seat(Member member) {
        return member.endNotch().filter(n -> n.side() == NotchSide.SUPPORT);
    }

    /**
     * How far the member bears on a support from its middle, towards the start (-1) or the end (1) of the member: no farther
     * than the notch's corner.
     */
    public static double bearsMm(Member member, int support, int towards) {
        double half = member.supports().get(support).contactLengthMm().orElseThrow() / 2;
        return Math.min(half, Math.max(SHORTEST_BEARING_MM, cornerMm(member, support, towards)));
    }

    /** From the middle of a support to the notch's corner on one side; infinite where there is none. */
    public static double cornerMm(Member member, int support, int towards) {
        double at = member.supports().get(support).atMm();
        boolean corner = spansBeside(member, support).stream()
                .map(i -> member.spans().get(i))
                .anyMatch(s -> towards < 0 ? s.toMm() == at : s.fromMm() == at);
        return seat(member)
                .filter(n -> corner)
                .map(n -> n.supportDistance().mm())
                .orElse(Double.POSITIVE_INFINITY);
    }
}
