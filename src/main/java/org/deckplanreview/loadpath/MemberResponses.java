package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.BeamLoad.Point;
import org.deckplanreview.loadpath.GoverningLoads.Loads;
import org.deckplanreview.loadpath.GoverningLoads.Weighted;

/**
 * The responses of one beam to each action by itself, from which every combination follows, and the stations along each
 * span between which all of them are smooth.
 */
final class MemberResponses {

    /** Places of the concentrated load in a span, beside those that are sought out as the worst. */
    private static final int PLACES_IN_SPAN = 20;

    private static final int ROUNDS_OF_SEARCH = 3;
    private static final double SEARCH_NARROWS = 8;

    /** A gain below this is rounding. */
    private static final double GAIN = 1e-12;

    private final ContinuousBeam beam;
    private final Frame frame;
    private final MemberActions actions;

    private final BeamResponse permanent;
    private final BeamResponse attachedFull;
    private final BeamResponse snow;
    private final BeamResponse imposedFull;
    private final GoverningLoads forces;
    private final GoverningLoads bending;
    private final List<Loads> bendingInSpan;
    private final List<Loads> forcesInSpan;
    private final List<double[]> stationsMm;
    private final List<List<BeamLoad>> permanentParts;

    MemberResponses(Frame frame, MemberActions actions) {
        this.beam = frame.beam();
        this.frame = frame;
        this.actions = actions;
        permanent = beam.under(actions.permanent());
        attachedFull = beam.under(actions.attachedFull());
        snow = beam.under(actions.snow());
        imposedFull = beam.under(actions.imposedFull());
        permanentParts = permanentParts(frame.spans(), actions);
        List<TreeSet<Double>> stations = new ArrayList<>();
        List<List<Weighted>> attached = perStretch();
        List<List<Weighted>> imposed = perStretch();
        List<List<Weighted>> whole = perStretch();
        List<List<Weighted>> shared = perStretch();
        for (List<BeamLoad> part : actions.attachedParts()) {
            attached.get(frame.stretchOf(middle(part))).add(new Weighted(1, beam.under(part)));
        }
        for (List<BeamLoad> part : actions.imposedParts()) {
            imposed.get(frame.stretchOf(middle(part))).add(new Weighted(1, beam.under(part)));
        }
        for (int k = 0; k < frame.spans().size(); k++) {
            Span span = frame.spans().get(k);
            int stretch = frame.stretchOf(span);
            DoubleUnaryOperator share = share(k);
            TreeMap<Double, BeamResponse> places = concentratedPlaces(span, share);
            places.forEach((x, r) -> {
                whole.get(stretch).add(new Weighted(1, r));
                shared.get(stretch).add(new Weighted(share.applyAsDouble(x), r));
            });
            TreeSet<Double> all = new TreeSet<>(evenPlaces(span));
            all.addAll(places.keySet());
            all.addAll(breaks(span));
            stations.add(all);
        }
        for (Point p : actions.concentratedElsewhere()) {
            Weighted elsewhere = new Weighted(1, beam.under(List.of(p)));
            whole.get(frame.stretchOf(p.atMm())).add(elsewhere);
            shared.get(frame.stretchOf(p.atMm())).add(elsewhere);
        }
        forces = governing(attached, imposed, whole);
        bending = governing(attached, imposed, shared);
        bendingInSpan = inSpan(bending);
        forcesInSpan = inSpan(forces);
        stationsMm = stations.stream()
                .map(s -> s.stream().mapToDouble(Double::doubleValue).toArray())
                .toList();
    }

    private GoverningLoads governing(
            List<List<Weighted>> attached, List<List<Weighted>> imposed, List<List<Weighted>> concentrated) {
        return new GoverningLoads(
                IntStream.range(0, imposed.size())
                        .mapToObj(s -> new Loads(attached.get(s), imposed.get(s), concentrated.get(s)))
                        .toList(),
                frame);
    }

    private List<Loads> inSpan(GoverningLoads loads) {
        return frame.spans().stream().map(s -> loads.in(frame.stretchOf(s))).toList();
    }

    List<double[]> stationsMm() {
        return stationsMm;
    }

    BeamResponse imposedFull() {
        return imposedFull;
    }

    BeamResponse attachedFull() {
        return attachedFull;
    }

    /**
     * What each part of the permanent action adds to the reaction at a place. The influence of a load on a reaction has one
     * sign throughout a span, so that the parts are those of the spans, forces that lift the member apart from the others.
     */
    List<Double> permanentReactionsN(int place) {
        return permanentParts.stream()
                .map(part -> beam.under(part).reactionN(place))
                .toList();
    }

    private static List<List<BeamLoad>> permanentParts(List<Span> spans, MemberActions actions) {
        List<BeamLoad> pressing = new ArrayList<>(actions.permanent());
        actions.permanentLifting().forEach(p -> pressing.add(new Point(p.atMm(), -p.forceN())));
        List<List<BeamLoad>> parts = new ArrayList<>(MemberActions.bySpan(spans, pressing));
        parts.addAll(MemberActions.bySpan(spans, actions.permanentLifting()));
        return parts;
    }

    /** The loads that can govern moment and deflection in a span: of the concentrated load what bends the member. */
    Loads bendingIn(int span) {
        return bendingInSpan.get(span);
    }

    /** The loads that can govern shear in a span: the concentrated load as a whole. */
    Loads shearingIn(int span) {
        return forcesInSpan.get(span);
    }

    /** The loads that can govern at one of the places where the beam rests. */
    Loads atPlace(int place) {
        return forces.atSupportBehind(place);
    }

    /** The same with what of the concentrated load bends the member. */
    Loads sharedAtPlace(int place) {
        return bending.atSupportBehind(place);
    }

    /** One effect over all arrangements. */
    Extremes extremes(Loads loads, ToDoubleFunction<BeamResponse> effect) {
        double[] attached = largestAndSmallest(loads.attached(), effect);
        double[] imposed = largestAndSmallest(loads.imposed(), effect);
        double largest = 0;
        double smallest = 0;
        for (Weighted w : loads.concentrated()) {
            double place = w.factor() * effect.applyAsDouble(w.response());
            largest = Math.max(largest, place);
            smallest = Math.min(smallest, place);
        }
        return new Extremes(
                effect.applyAsDouble(permanent),
                attached[0],
                attached[1],
                imposed[0],
                imposed[1],
                largest,
                smallest,
                effect.applyAsDouble(snow));
    }

    private static double[] largestAndSmallest(List<Weighted> parts, ToDoubleFunction<BeamResponse> effect) {
        double larger = 0;
        double smaller = 0;
        for (Weighted w : parts) {
            double part = w.factor() * effect.applyAsDouble(w.response());
            larger += Math.max(0, part);
            smaller += Math.min(0, part);
        }
        return new double[] {larger, smaller};
    }

    /** The loads that make the effect worst. */
    List<Weighted> worstArrangement(Loads loads, ToDoubleFunction<BeamResponse> effect, ActionFactors f) {
        List<Weighted> all = new ArrayList<>();
        all.add(new Weighted(f.permanent(), permanent));
        if (effect.applyAsDouble(snow) > 0) {
            all.add(new Weighted(f.snow(), snow));
        }
        addAdverse(loads.attached(), f.permanent(), effect, all);
        addAdverse(loads.imposed(), f.imposed(), effect, all);
        double worst = 0;
        Weighted at = new Weighted(0, permanent);
        for (Weighted w : loads.concentrated()) {
            double e = w.factor() * effect.applyAsDouble(w.response());
            if (e > worst) {
                worst = e;
                at = w;
            }
        }
        if (worst > 0) {
            all.add(new Weighted(f.concentrated() * at.factor(), at.response()));
        }
        return all;
    }

    private static void addAdverse(
            List<Weighted> parts, double factor, ToDoubleFunction<BeamResponse> effect, List<Weighted> to) {
        for (Weighted w : parts) {
            if (effect.applyAsDouble(w.response()) > 0) {
                to.add(new Weighted(factor * w.factor(), w.response()));
            }
        }
    }

    private List<List<Weighted>> perStretch() {
        return Stream.<List<Weighted>>generate(ArrayList::new)
                .limit(frame.stretches())
                .toList();
    }

    private static double middle(List<BeamLoad> part) {
        double from = part.stream().mapToDouble(BeamLoad::fromMm).min().orElseThrow();
        double to = part.stream().mapToDouble(BeamLoad::toMm).max().orElseThrow();
        return (from + to) / 2;
    }

    /** The part of the concentrated load that bends the member, by its place in a span. */
    private DoubleUnaryOperator share(int spanIndex) {
        Span span = frame.spans().get(spanIndex);
        if (actions.concentratedN() == 0 || !actions.sharing().spans().contains(spanIndex)) {
            return x -> 1;
        }
        double middle = (span.fromMm() + span.toMm()) / 2;
        double flexibility = underConcentratedAt(middle).deflectionMm(middle) / actions.concentratedN();
        double atMiddle = actions.sharing().atMiddle(spanIndex, flexibility);
        return x -> Sharing.at((x - span.fromMm()) / (span.toMm() - span.fromMm()), atMiddle);
    }

    private BeamResponse underConcentratedAt(double xMm) {
        return beam.under(List.of(new Point(xMm, actions.concentratedN())));
    }

    private static List<Double> evenPlaces(Span span) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i <= PLACES_IN_SPAN; i++) {
            double t = (double) i / PLACES_IN_SPAN;
            places.add(span.fromMm() * (1 - t) + span.toMm() * t);
        }
        return places;
    }

    /**
     * The concentrated load at even places, the ends with them, wherever another load begins or ends, and at the places that are worst for sagging, for hogging
     * over each end, and for deflection.
     */
    private TreeMap<Double, BeamResponse> concentratedPlaces(Span span, DoubleUnaryOperator share) {
        TreeMap<Double, BeamResponse> places = new TreeMap<>();
        if (actions.concentratedN() > 0) {
            evenPlaces(span).forEach(x -> places.put(x, underConcentratedAt(x)));
            breaks(span).forEach(x -> places.put(x, underConcentratedAt(x)));
            if (!span.isCantilever() && !frame.seats().determinate()) {
                List<ToDoubleBiFunction<BeamResponse, Double>> effects = List.of(
                        (r, at) -> r.momentNMm(at),
                        (r, at) -> -r.momentNMm(span.fromMm()),
                        (r, at) -> -r.momentNMm(span.toMm()),
                        (r, at) -> r.deflectionMm(at));
                TreeMap<Double, BeamResponse> even = new TreeMap<>(places);
                effects.forEach(e -> worstBetween(even, (r, at) -> share.applyAsDouble(at) * e.applyAsDouble(r, at))
                        .ifPresent(x -> places.put(x, underConcentratedAt(x))));
            }
        }
        return places;
    }

    /**
     * Closes in on the largest effect by the vertex of a parabola through three places, again and again closer. Empty
     * where one of the even places is the worst.
     */
    private Optional<Double> worstBetween(
            TreeMap<Double, BeamResponse> even, ToDoubleBiFunction<BeamResponse, Double> effect) {
        double worst = even.keySet().stream()
                .max(Comparator.comparingDouble(x -> effect.applyAsDouble(even.get(x), x)))
                .orElseThrow();
        if (worst == even.firstKey() || worst == even.lastKey()) {
            return Optional.empty();
        }
        double atBest = effect.applyAsDouble(even.get(worst), worst);
        DoubleUnaryOperator at = x -> effect.applyAsDouble(underConcentratedAt(x), x);
        double x = worst;
        double value = atBest;
        double step = even.higherKey(x) - x;
        for (int round = 0; round < ROUNDS_OF_SEARCH; round++) {
            double before = at.applyAsDouble(x - step);
            double behind = at.applyAsDouble(x + step);
            double bend = before - 2 * value + behind;
            if (bend < 0) {
                double vertex = x + Math.max(-1, Math.min(1, (before - behind) / bend / 2)) * step;
                double there = at.applyAsDouble(vertex);
                if (there > value) {
                    x = vertex;
                    value = there;
                }
            }
            step /= SEARCH_NARROWS;
        }
        return value > atBest * (1 + GAIN) ? Optional.of(x) : Optional.empty();
    }

    /** Places in the span where a load or a support begins or ends. */
    private List<Double> breaks(Span span) {
        return Stream.of(
                        actions.permanent().stream(),
                        actions.attachedFull().stream(),
                        actions.attachedParts().stream().flatMap(List::stream),
                        actions.imposedFull().stream(),
                        actions.imposedParts().stream().flatMap(List::stream),
                        actions.concentratedElsewhere().stream(),
                        actions.snow().stream())
                .<BeamLoad>flatMap(s -> s)
                .flatMap(l -> Stream.of(l.fromMm(), l.toMm()))
                .filter(x -> x > span.fromMm() && x < span.toMm())
                .toList();
    }
}
