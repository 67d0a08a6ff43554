package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.deckplanreview.loadpath.BeamResponse.Piece;

/**
 * The loads that can govern in each stretch of a beam: its spans between supports and its cantilevers, in their order.
 *
 * <p>Loads beyond a stretch reach it only through the support between, by the moment there, so that within the stretch
 * the responses to all loads on one side of it are multiples of one another. Of the places of one load the two with the
 * largest effect of either sign stand for all on that side; of loads that may be there or not, two sums do.
 */
final class GoverningLoads {

    /** A response with its factor. */
    record Weighted(double factor, BeamResponse response) {}

    /**
     * @param attached parts of the weight of stairs and guards that are left out where they relieve, each on its own
     * @param imposed parts that may be there or not, each on its own
     * @param concentrated one load at each of its places
     */
    record Loads(List<Weighted> attached, List<Weighted> imposed, List<Weighted> concentrated) {
        static final Loads NONE = new Loads(List.of(), List.of(), List.of());

        Loads {
            attached = List.copyOf(attached);
            imposed = List.copyOf(imposed);
            concentrated = List.copyOf(concentrated);
        }

        /** Without those that a combination leaves out. */
        Loads under(ActionFactors f) {
            return new Loads(
                    f.permanent() == 0 ? List.of() : attached,
                    f.imposed() == 0 ? List.of() : imposed,
                    f.concentrated() == 0 ? List.of() : concentrated);
        }

        Loads and(Loads other) {
            return new Loads(
                    both(attached, other.attached),
                    both(imposed, other.imposed),
                    both(concentrated, other.concentrated));
        }

        private static List<Weighted> both(List<Weighted> some, List<Weighted> others) {
            List<Weighted> all = new ArrayList<>(some);
            all.addAll(others);
            return all;
        }
    }

    private final List<Loads> own;
    private final List<Loads> before;
    private final List<Loads> behind;

    /**
     * @param own loads on each stretch
     */
    GoverningLoads(List<Loads> own, Frame frame) {
        this.own = List.copyOf(own);
        int last = own.size() - 1;
        Loads[] fromBefore = new Loads[own.size()];
        Loads[] fromBehind = new Loads[own.size()];
        fromBefore[0] = Loads.NONE;
        fromBehind[last] = Loads.NONE;
        List<Double> places = frame.seats().placesMm();
        // A cantilever without load has no moment; it follows the slope of the span beside it.
        for (int s = 1; s < last; s++) {
            double start = places.get(s - 1);
            fromBefore[s] = reduced(fromBefore[s - 1].and(own.get(s - 1)), r -> r.momentNMm(start));
        }
        fromBefore[last] = reduced(fromBefore[last - 1].and(own.get(last - 1)), r -> r.deflectionMm(frame.lengthMm()));
        for (int s = last - 1; s > 0; s--) {
            double end = places.get(s);
            fromBehind[s] = reduced(fromBehind[s + 1].and(own.get(s + 1)), r -> r.momentNMm(end));
        }
        fromBehind[0] = reduced(fromBehind[1].and(own.get(1)), r -> r.deflectionMm(0));
        before = List.of(fromBefore);
        behind = List.of(fromBehind);
    }

    /** Those that can govern moment, shear and deflection in a stretch. */
    Loads in(int stretch) {
        return before.get(stretch).and(own.get(stretch)).and(behind.get(stretch));
    }

    /** Those that can govern the reaction of the support behind a stretch and the shear on either side of it. */
    Loads atSupportBehind(int stretch) {
        return before.get(stretch)
                .and(own.get(stretch))
                .and(own.get(stretch + 1))
                .and(behind.get(stretch + 1));
    }

    /** @param link what the stretch gets of a load beyond it */
    private static Loads reduced(Loads loads, ToDoubleFunction<BeamResponse> link) {
        List<Weighted> attached = new ArrayList<>();
        List<Weighted> imposed = new ArrayList<>();
        List<Weighted> concentrated = new ArrayList<>();
        for (int sign : new int[] {1, -1}) {
            addSum(loads.attached(), link, sign, attached);
            addSum(loads.imposed(), link, sign, imposed);
            addLargest(loads.concentrated(), link, sign, concentrated);
        }
        return new Loads(attached, imposed, concentrated);
    }

    /** All of them together between two places without a change of load between them. */
    static Piece sum(List<Weighted> loads, double fromMm, double toMm) {
        double[] sum = new double[6];
        for (Weighted w : loads) {
            Piece p = w.response().between(fromMm, toMm);
            sum[0] += w.factor() * p.loadNPerMm();
            sum[1] += w.factor() * p.loadSlope();
            sum[2] += w.factor() * p.shearN();
            sum[3] += w.factor() * p.momentNMm();
            sum[4] += w.factor() * p.rotation();
            sum[5] += w.factor() * p.deflectionMm();
        }
        return new Piece(fromMm, sum[0], sum[1], sum[2], sum[3], sum[4], sum[5]);
    }

    private static void addLargest(
            List<Weighted> loads, ToDoubleFunction<BeamResponse> link, int sign, List<Weighted> to) {
        double[] effects = effects(loads, link, sign);
        int most = most(effects);
        if (most >= 0) {
            to.add(loads.get(most));
        }
    }

    private static void addSum(List<Weighted> loads, ToDoubleFunction<BeamResponse> link, int sign, List<Weighted> to) {
        double[] effects = effects(loads, link, sign);
        int most = most(effects);
        if (most >= 0) {
            double sum = 0;
            for (double e : effects) {
                sum += Math.max(0, e);
            }
            Weighted w = loads.get(most);
            to.add(new Weighted(w.factor() * (sum / effects[most]), w.response()));
        }
    }

    private static double[] effects(List<Weighted> loads, ToDoubleFunction<BeamResponse> link, int sign) {
        return loads.stream()
                .mapToDouble(w -> sign * w.factor() * link.applyAsDouble(w.response()))
                .toArray();
    }

    /** Which is the largest; -1 where none is above 0. */
    private static int most(double[] effects) {
        return IntStream.range(0, effects.length)
                .filter(i -> effects[i] > 0)
                .reduce((a, b) -> effects[b] > effects[a] ? b : a)
                .orElse(-1);
    }
}
