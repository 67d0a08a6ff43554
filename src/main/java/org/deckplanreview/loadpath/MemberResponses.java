package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.BeamLoad.Point;

/**
 * The responses of one beam to each action by itself, from which every combination follows, and the stations along each
 * span between which all of them are smooth.
 */
final class MemberResponses {

    /** Places of the concentrated load in a span, beside those that are sought out as the worst. */
    private static final int PLACES_IN_SPAN = 20;

    private static final int ROUNDS_OF_SEARCH = 6;
    private static final double SEARCH_NARROWS = 8;

    /** A gain below this is rounding. */
    private static final double GAIN = 1e-12;

    private final ContinuousBeam beam;
    private final Frame frame;
    private final MemberActions actions;

    private final BeamResponse permanent;
    private final BeamResponse snow;
    private final BeamResponse imposedFull;
    private final List<BeamResponse> imposedParts;
    private final List<BeamResponse> concentrated;
    private final List<double[]> stationsMm;

    MemberResponses(Frame frame, MemberActions actions) {
        this.beam = frame.beam();
        this.frame = frame;
        this.actions = actions;
        permanent = beam.under(actions.permanent());
        snow = beam.under(actions.snow());
        imposedFull = beam.under(actions.imposedFull());
        imposedParts = actions.imposedParts().stream().map(beam::under).toList();
        List<TreeSet<Double>> stations = new ArrayList<>();
        List<BeamResponse> placed = new ArrayList<>();
        for (Span span : frame.spans()) {
            TreeSet<Double> places = concentratedPlaces(span);
            if (actions.concentratedN() > 0) {
                places.forEach(x -> placed.add(underConcentratedAt(x)));
            }
            places.addAll(breaks(span));
            stations.add(places);
        }
        actions.concentratedElsewhere().forEach(p -> placed.add(beam.under(List.of(p))));
        concentrated = List.copyOf(placed);
        stationsMm = stations.stream()
                .map(s -> s.stream().mapToDouble(Double::doubleValue).toArray())
                .toList();
    }

    List<double[]> stationsMm() {
        return stationsMm;
    }

    BeamResponse imposedFull() {
        return imposedFull;
    }

    /** One effect over all arrangements. */
    Extremes extremes(ToDoubleFunction<BeamResponse> effect) {
        double[] parts = imposedParts.stream().mapToDouble(effect).toArray();
        double[] places = concentrated.stream().mapToDouble(effect).toArray();
        double larger = 0;
        double smaller = 0;
        for (double part : parts) {
            larger += Math.max(0, part);
            smaller += Math.min(0, part);
        }
        double largest = 0;
        double smallest = 0;
        for (double place : places) {
            largest = Math.max(largest, place);
            smallest = Math.min(smallest, place);
        }
        return new Extremes(
                effect.applyAsDouble(permanent), larger, smaller, largest, smallest, effect.applyAsDouble(snow));
    }

    /** A response with its factor. */
    record Weighted(double factor, BeamResponse response) {}

    /** The loads that make the effect worst. */
    List<Weighted> worstArrangement(ToDoubleFunction<BeamResponse> effect, ActionFactors f) {
        List<Weighted> all = new ArrayList<>();
        all.add(new Weighted(f.permanent(), permanent));
        Stream.concat(
                        Stream.of(new Weighted(f.snow(), snow)),
                        imposedParts.stream().map(r -> new Weighted(f.imposed(), r)))
                .filter(w -> effect.applyAsDouble(w.response()) > 0)
                .forEach(all::add);
        double worst = 0;
        BeamResponse at = permanent;
        for (BeamResponse r : concentrated) {
            double e = effect.applyAsDouble(r);
            if (e > worst) {
                worst = e;
                at = r;
            }
        }
        if (worst > 0) {
            all.add(new Weighted(f.concentrated(), at));
        }
        return all;
    }

    private BeamResponse underConcentratedAt(double xMm) {
        return beam.under(List.of(new Point(xMm, actions.concentratedN())));
    }

    /** Even places with the ends, and the places that are worst for sagging, for hogging over each end, and for deflection. */
    private TreeSet<Double> concentratedPlaces(Span span) {
        double[] even = new double[PLACES_IN_SPAN + 1];
        TreeSet<Double> places = new TreeSet<>();
        for (int i = 0; i <= PLACES_IN_SPAN; i++) {
            double t = (double) i / PLACES_IN_SPAN;
            even[i] = span.fromMm() * (1 - t) + span.toMm() * t;
            places.add(even[i]);
        }
        if (actions.concentratedN() > 0
                && !span.isCantilever()
                && !frame.seats().determinate()) {
            addWorst(places, even, x -> underConcentratedAt(x).momentNMm(x));
            addWorst(places, even, x -> -underConcentratedAt(x).momentNMm(span.fromMm()));
            addWorst(places, even, x -> -underConcentratedAt(x).momentNMm(span.toMm()));
            addWorst(places, even, x -> underConcentratedAt(x).deflectionMm(x));
        }
        return places;
    }

    /** Closes in on the largest effect by the vertex of a parabola through three places, again and again closer. */
    private static void addWorst(TreeSet<Double> places, double[] even, DoubleUnaryOperator effect) {
        int best = 0;
        double[] at = new double[even.length];
        for (int i = 0; i < even.length; i++) {
            at[i] = effect.applyAsDouble(even[i]);
            best = at[i] > at[best] ? i : best;
        }
        if (best == 0 || best == even.length - 1) {
            return;
        }
        double x = even[best];
        double value = at[best];
        double step = even[best + 1] - x;
        for (int round = 0; round < ROUNDS_OF_SEARCH; round++) {
            double before = effect.applyAsDouble(x - step);
            double behind = effect.applyAsDouble(x + step);
            double bend = before - 2 * value + behind;
            if (bend < 0) {
                double vertex = x + Math.max(-1, Math.min(1, (before - behind) / bend / 2)) * step;
                double there = effect.applyAsDouble(vertex);
                if (there > value) {
                    x = vertex;
                    value = there;
                }
            }
            step /= SEARCH_NARROWS;
        }
        if (value > at[best] * (1 + GAIN)) {
            places.add(x);
        }
    }

    /** Places in the span where a load or a support begins or ends. */
    private List<Double> breaks(Span span) {
        return Stream.of(
                        actions.permanent().stream(),
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
