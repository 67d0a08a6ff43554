package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.layout.Member;
import org.deckplanreview.loadpath.BeamLoad.Distributed;
import org.deckplanreview.loadpath.BeamLoad.Point;

/**
 * What stairs and guards put on one member, a load for each stretch of it that holds a part of one of them.
 *
 * @param concentrated the concentrated load of a stair at its head
 */
record Attached(List<BeamLoad> weight, List<BeamLoad> imposed, List<Point> concentrated) {

    static final Attached NONE = new Attached(List.of(), List.of(), List.of());

    /** A shorter stretch is one place. */
    private static final double ONE_PLACE_MM = 1e-6;

    Attached {
        weight = List.copyOf(weight);
        imposed = List.copyOf(imposed);
        concentrated = List.copyOf(concentrated);
    }

    double weightN() {
        return total(weight);
    }

    double imposedN() {
        return total(imposed);
    }

    private static double total(List<BeamLoad> loads) {
        return loads.stream().mapToDouble(BeamLoad::totalN).sum();
    }

    List<List<BeamLoad>> weightParts(Member member) {
        return parts(member, weight);
    }

    List<List<BeamLoad>> imposedParts(Member member) {
        return parts(member, imposed);
    }

    /** Each load on its own, parted where the member rests. */
    private static List<List<BeamLoad>> parts(Member member, List<BeamLoad> loads) {
        List<List<BeamLoad>> parts = new ArrayList<>();
        loads.forEach(l -> parts.addAll(MemberActions.bySpan(member, List.of(l))));
        return parts;
    }

    static BeamLoad load(double fromMm, double toMm, double newtons) {
        return toMm - fromMm > ONE_PLACE_MM
                ? Distributed.uniform(fromMm, toMm, newtons / (toMm - fromMm))
                : new Point((fromMm + toMm) / 2, newtons);
    }
}
