package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.loadpath.BeamLoad.Distributed;
import org.deckplanreview.loadpath.BeamLoad.Point;
import org.deckplanreview.loadpath.JoistActions.OwnLoads;

/** What a beam gets from its joists, and its own weight. */
final class BeamActions {

    private BeamActions() {}

    /**
     * A joist's reaction on the beam.
     *
     * @param attachedFullN from all stairs and guards that the joist carries
     * @param permanentUpN the parts of its permanent reaction that lift the beam
     * @param imposedFullN with the whole joist loaded
     */
    record Landing(double atMm, Extremes reactionN, double permanentUpN, double attachedFullN, double imposedFullN) {}

    /**
     * Imposed load may be there or not on the joists over each span of the beam. Joists that press and joists that lift
     * under their own worst arrangement are parts apart, since one joist's arrangement can be the first or the second.
     */
    static MemberActions of(BeamLine beam, List<Landing> landings, OwnLoads own, Attached attached) {
        List<BeamLoad> permanent = new ArrayList<>();
        permanent.add(Distributed.uniform(0, beam.lengthMm(), own.selfWeightNPerMm()));
        permanent.addAll(points(landings, l -> l.reactionN().permanent()));
        List<List<BeamLoad>> parts = new ArrayList<>();
        parts.addAll(
                MemberActions.bySpan(beam, points(landings, l -> l.reactionN().imposedLargest())));
        parts.addAll(
                MemberActions.bySpan(beam, points(landings, l -> l.reactionN().imposedSmallest())));
        parts.addAll(attached.imposedParts(beam));
        List<List<BeamLoad>> weights = new ArrayList<>(attached.weightParts(beam));
        weights.addAll(
                MemberActions.bySpan(beam, points(landings, l -> l.reactionN().attachedLargest())));
        weights.addAll(
                MemberActions.bySpan(beam, points(landings, l -> l.reactionN().attachedSmallest())));
        List<BeamLoad> weightFull = points(landings, Landing::attachedFullN);
        weightFull.addAll(attached.weight());
        List<BeamLoad> imposedFull = points(landings, Landing::imposedFullN);
        imposedFull.addAll(attached.imposed());
        List<Point> elsewhere = leverage(landings, own.concentratedN());
        elsewhere.addAll(attached.concentrated());
        return new MemberActions(
                permanent,
                landings.stream()
                        .filter(l -> l.permanentUpN() < 0)
                        .map(l -> new Point(l.atMm(), l.permanentUpN()))
                        .toList(),
                weightFull,
                weights,
                imposedFull,
                parts,
                own.concentratedN(),
                Sharing.NONE,
                elsewhere,
                points(landings, l -> l.reactionN().snow()));
    }

    private static List<BeamLoad> points(List<Landing> landings, ToDoubleFunction<Landing> force) {
        List<BeamLoad> points = new ArrayList<>();
        for (Landing l : landings) {
            double n = force.applyAsDouble(l);
            if (n != 0) {
                points.add(new Point(l.atMm(), n));
            }
        }
        return points;
    }

    /**
     * The concentrated load stands on the beam as a whole; where a joist's cantilever makes more of it, or lifts the
     * beam, that counts too. Less than the load itself need not be looked at.
     */
    private static List<Point> leverage(List<Landing> landings, double concentratedN) {
        List<Point> points = new ArrayList<>();
        for (Landing l : landings) {
            double largest = l.reactionN().concentratedLargest();
            double smallest = l.reactionN().concentratedSmallest();
            if (largest > concentratedN) {
                points.add(new Point(l.atMm(), largest));
            }
            if (smallest < 0) {
                points.add(new Point(l.atMm(), smallest));
            }
        }
        return points;
    }
}
