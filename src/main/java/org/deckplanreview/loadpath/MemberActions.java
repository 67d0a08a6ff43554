package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.BeamLoad.Point;

/**
 * Characteristic loads on one member.
 *
 * @param permanentLifting the permanent forces among them that lift the member, as the far ends of overhanging joists do
 * @param attachedFull weight of all stairs and guards, which is permanent too
 * @param attachedParts of it, each on its own; one that relieves is left out
 * @param imposedFull everything imposed at once
 * @param imposedParts parts that may be there or not, each on its own; the worst effect is that of the adverse parts
 * @param concentratedN the load that may stand anywhere on the member
 * @param sharing what of it bends the member; reactions and shear take the whole
 * @param concentratedElsewhere what the member gets from that load when it stands on another member that it carries
 */
record MemberActions(
        List<BeamLoad> permanent,
        List<Point> permanentLifting,
        List<BeamLoad> attachedFull,
        List<List<BeamLoad>> attachedParts,
        List<BeamLoad> imposedFull,
        List<List<BeamLoad>> imposedParts,
        double concentratedN,
        Sharing sharing,
        List<Point> concentratedElsewhere,
        List<BeamLoad> snow) {
    MemberActions {
        permanent = List.copyOf(permanent);
        permanentLifting = List.copyOf(permanentLifting);
        attachedFull = List.copyOf(attachedFull);
        attachedParts = List.copyOf(attachedParts);
        imposedFull = List.copyOf(imposedFull);
        imposedParts = List.copyOf(imposedParts);
        concentratedElsewhere = List.copyOf(concentratedElsewhere);
        snow = List.copyOf(snow);
    }

    static List<List<BeamLoad>> bySpan(Member member, List<? extends BeamLoad> loads) {
        return bySpan(member.spans(), loads);
    }

    /** Loads parted by a member's spans; spans without load are left out. */
    static List<List<BeamLoad>> bySpan(List<Span> spans, List<? extends BeamLoad> loads) {
        List<List<BeamLoad>> parts = new ArrayList<>();
        int last = spans.size() - 1;
        for (int k = 0; k <= last; k++) {
            double from = k == 0 ? Double.NEGATIVE_INFINITY : spans.get(k).fromMm();
            double to = k == last ? Double.POSITIVE_INFINITY : spans.get(k).toMm();
            boolean closed = k == last;
            List<BeamLoad> part = loads.stream()
                    .map(l -> l.within(from, to, closed))
                    .flatMap(Optional::stream)
                    .toList();
            if (!part.isEmpty()) {
                parts.add(part);
            }
        }
        return parts;
    }

    double totalN(Action action) {
        return switch (action) {
            case PERMANENT -> total(permanent) + total(attachedFull);
            case IMPOSED -> total(imposedFull);
            case CONCENTRATED -> concentratedN;
            case SNOW -> total(snow);
        };
    }

    private static double total(List<BeamLoad> loads) {
        return loads.stream().mapToDouble(BeamLoad::totalN).sum();
    }
}
