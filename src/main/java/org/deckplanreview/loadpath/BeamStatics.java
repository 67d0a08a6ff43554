package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.BeamResponse.Piece;
import org.deckplanreview.loadpath.Effects.Peak;
import org.deckplanreview.loadpath.Effects.SpanEffects;
import org.deckplanreview.loadpath.Effects.SupportEffects;
import org.deckplanreview.loadpath.GoverningLoads.Loads;
import org.deckplanreview.loadpath.GoverningLoads.Weighted;

/** What all members with one frame and one set of actions have in common: their effects. */
final class BeamStatics {

    private static final int ROUNDS_OF_REFINEMENT = 4;
    private static final int HALVINGS = 45;

    /** The part of the way to the neighbouring station at which a curve is taken to be just beside its station. */
    private static final double BESIDE = 1e-6;

    /** A gain below this is rounding. */
    private static final double GAIN = 1e-12;

    /** An effect this small beside the member's largest of its kind is what rounding leaves of none. */
    private static final double ROUNDING = 1e-10;

    /** An effect along the beam whose slope is known. */
    private enum Curve {
        MOMENT {
            @Override
            double value(BeamResponse r, double xMm) {
                return r.momentNMm(xMm);
            }

            @Override
            double slopeAfter(double t, Piece piece, Frame frame) {
                return piece.shearAfter(t);
            }
        },
        DEFLECTION {
            @Override
            double value(BeamResponse r, double xMm) {
                return r.deflectionMm(xMm);
            }

            @Override
            double slopeAfter(double t, Piece piece, Frame frame) {
                return piece.slopeAfter(t, frame.bendingStiffnessNMm2(), frame.shearFlexibilityPerN());
            }
        };

        abstract double value(BeamResponse r, double xMm);

        abstract double slopeAfter(double t, Piece piece, Frame frame);
    }

    private final Frame frame;
    private final MemberActions actions;
    private final MemberResponses responses;
    private final List<List<Extremes>> moments;
    private final List<List<Extremes>> deflections;
    private final List<AtPlace> places;
    private final Map<ActionFactors, Effects> known = new ConcurrentHashMap<>();
    private final Map<Integer, LiftForces> lifts = new ConcurrentHashMap<>();

    BeamStatics(Frame frame, MemberActions actions) {
        this.frame = frame;
        this.actions = actions;
        this.responses = new MemberResponses(frame, actions);
        this.moments = atStations(Curve.MOMENT);
        this.deflections = atStations(Curve.DEFLECTION);
        this.places = IntStream.range(0, frame.seats().placesMm().size())
                .mapToObj(this::atPlace)
                .toList();
    }

    /** Effects where the beam rests. */
    private record AtPlace(Extremes reaction, Extremes shared, Extremes shearBefore, Extremes shearBehind) {}

    private AtPlace atPlace(int place) {
        Loads loads = responses.atPlace(place);
        return new AtPlace(
                responses.extremes(loads, r -> r.reactionN(place)),
                responses.extremes(responses.sharedAtPlace(place), r -> r.reactionN(place)),
                responses.extremes(loads, r -> r.shearBeforeN(place)),
                responses.extremes(loads, r -> r.shearBehindN(place)));
    }

    Effects effects(ActionFactors f) {
        return known.computeIfAbsent(f, this::computed);
    }

    double totalN(Action action) {
        return actions.totalN(action);
    }

    MemberDiagrams diagrams(List<ActionFactors> alternatives) {
        List<MemberDiagrams.Place> all = new ArrayList<>();
        for (int k = 0; k < frame.spans().size(); k++) {
            double[] stations = responses.stationsMm().get(k);
            for (int i = 1; i < stations.length; i++) {
                double from = stations[i - 1];
                double to = stations[i];
                all.add(place(k, from, to, 0, alternatives));
                all.add(place(k, from, to, to - from, alternatives));
            }
        }
        return new MemberDiagrams(
                Stream.concat(actions.permanent().stream(), actions.attachedFull().stream())
                        .toList(),
                actions.imposedFull(),
                actions.snow(),
                actions.concentratedN(),
                all);
    }

    /** A place behind a station, up to the next one. */
    private MemberDiagrams.Place place(
            int span, double from, double to, double behind, List<ActionFactors> alternatives) {
        Loads loads = responses.bendingIn(span);
        Extremes moment = responses.extremes(loads, r -> r.between(from, to).momentAfter(behind));
        Extremes shear = besideSupport(
                from + behind,
                behind,
                responses.extremes(
                        responses.shearingIn(span), r -> r.between(from, to).shearAfter(behind)));
        Extremes deflection = responses.extremes(
                loads,
                r -> r.between(from, to)
                        .deflectionAfter(behind, frame.bendingStiffnessNMm2(), frame.shearFlexibilityPerN()));
        return new MemberDiagrams.Place(
                from + behind,
                reach(moment, alternatives),
                reach(shear, alternatives),
                reach(deflection, alternatives));
    }

    /** With the concentrated load just beside the support all of it passes between them. */
    private Extremes besideSupport(double at, double behind, Extremes shear) {
        double load = actions.concentratedN();
        return frame.seats().placesMm().contains(at) ? shear.orConcentrated(behind > 0 ? -load : load) : shear;
    }

    private static MemberDiagrams.Reach reach(Extremes e, List<ActionFactors> alternatives) {
        return new MemberDiagrams.Reach(
                alternatives.stream().mapToDouble(e::smallest).min().orElseThrow(),
                alternatives.stream().mapToDouble(e::largest).max().orElseThrow());
    }

    /** Reaction of one of the member's supports: pressed by the whole concentrated load, lifted by what of it bends the member. */
    Extremes reaction(int support) {
        AtPlace at = places.get(frame.placeOf(support));
        return at.reaction().liftedAtMost(at.shared().concentratedSmallest()).times(frame.shareOf(support));
    }

    /** What one of the member's supports and its neighbours together pass on: the whole concentrated load either way. */
    Extremes passedOn(int support) {
        return places.get(frame.placeOf(support)).reaction().times(frame.shareOf(support));
    }

    /** Reaction of one of the member's supports, as it goes on to what is below. */
    ActionForces forces(int support) {
        int place = frame.placeOf(support);
        Extremes e = reaction(support);
        return new ActionForces(
                e.permanent() + attachedFullN(support),
                e.imposedLargest(),
                responses.imposedFull().reactionN(place) * frame.shareOf(support),
                e.concentratedLargest(),
                e.snow());
    }

    /** From all stairs and guards together. */
    double attachedFullN(int support) {
        return responses.attachedFull().reactionN(frame.placeOf(support)) * frame.shareOf(support);
    }

    /** The permanent action counts apart where it presses this support down and where it lifts the member off it. */
    LiftForces lift(int support) {
        return lifts.computeIfAbsent(support, this::computedLift);
    }

    /** The parts of the permanent action that lift the member off a support, N, stairs and guards apart; at most 0. */
    double permanentUpN(int support) {
        return permanentN(support, part -> Math.min(0, part));
    }

    private double permanentN(int support, DoubleUnaryOperator side) {
        double sum = 0;
        for (double part : responses.permanentReactionsN(frame.placeOf(support))) {
            sum += side.applyAsDouble(part);
        }
        return sum * frame.shareOf(support);
    }

    /** Stairs and guards that would hold down are left out, as those that relieve are everywhere. */
    private LiftForces computedLift(int support) {
        Extremes e = reaction(support);
        double down = permanentN(support, part -> Math.max(0, part));
        double nothing = ROUNDING * down;
        return new LiftForces(
                down,
                over(nothing, permanentUpN(support) + e.attachedSmallest()),
                over(nothing, e.imposedSmallest()),
                over(nothing, e.concentratedSmallest()));
    }

    private List<List<Extremes>> atStations(Curve curve) {
        List<List<Extremes>> all = new ArrayList<>();
        for (int k = 0; k < frame.spans().size(); k++) {
            Loads loads = responses.bendingIn(k);
            List<Extremes> ofSpan = new ArrayList<>();
            for (double x : responses.stationsMm().get(k)) {
                ofSpan.add(responses.extremes(loads, r -> curve.value(r, x)));
            }
            all.add(List.copyOf(ofSpan));
        }
        return List.copyOf(all);
    }

    private Effects computed(ActionFactors f) {
        List<Peak> sagging = peaks(Curve.MOMENT, 1, f);
        List<Peak> hogging = peaks(Curve.MOMENT, -1, f);
        List<Peak> down = peaks(Curve.DEFLECTION, 1, f);
        List<Peak> up = peaks(Curve.DEFLECTION, -1, f);
        double noMoment = ROUNDING * largest(sagging, hogging);
        double noDeflection = ROUNDING * largest(down, up);
        List<SpanEffects> spans = new ArrayList<>();
        for (int k = 0; k < frame.spans().size(); k++) {
            spans.add(new SpanEffects(
                    over(noMoment, sagging.get(k)),
                    over(noMoment, hogging.get(k)),
                    over(noDeflection, down.get(k)),
                    over(noDeflection, up.get(k))));
        }
        List<Extremes> reactions = IntStream.range(
                        0, frame.seats().placeOfSupport().size())
                .mapToObj(this::reaction)
                .toList();
        double noForce = ROUNDING
                * reactions.stream().mapToDouble(r -> r.largest(f)).max().orElseThrow();
        List<SupportEffects> supports = new ArrayList<>();
        for (int i = 0; i < reactions.size(); i++) {
            Extremes r = reactions.get(i);
            supports.add(new SupportEffects(shear(i, f), over(noForce, r.largest(f)), over(noForce, r.smallest(f))));
        }
        return new Effects(spans, supports);
    }

    private static double largest(List<Peak> some, List<Peak> others) {
        return Stream.concat(some.stream(), others.stream())
                .mapToDouble(Peak::value)
                .max()
                .orElseThrow();
    }

    private static Peak over(double nothing, Peak peak) {
        return new Peak(over(nothing, peak.value()), peak.atMm());
    }

    private static double over(double nothing, double value) {
        return Math.abs(value) > nothing ? value : 0;
    }

    private List<Peak> peaks(Curve curve, int sign, ActionFactors f) {
        return IntStream.range(0, frame.spans().size())
                .mapToObj(k -> peak(k, curve, sign, f))
                .toList();
    }

    /** With the concentrated load just beside the support, all of it passes through the section between them. */
    private Peak shear(int support, ActionFactors f) {
        int place = frame.placeOf(support);
        double at = frame.seats().placesMm().get(place);
        double load = actions.concentratedN();
        Extremes before = places.get(place).shearBefore().orConcentrated(at > 0 ? -load : 0);
        Extremes behind = places.get(place).shearBehind().orConcentrated(at < frame.lengthMm() ? load : 0);
        double largest = 0;
        for (Extremes side : List.of(before, behind)) {
            largest = Math.max(largest, Math.max(side.worst(f, 1), side.worst(f, -1)));
        }
        return new Peak(largest, at);
    }

    /**
     * The largest value in a span: the best stations, then for the loads that govern there the place between the
     * neighbouring stations where the curve's slope is zero.
     */
    private Peak peak(int spanIndex, Curve curve, int sign, ActionFactors f) {
        List<Extremes> extremes = (curve == Curve.MOMENT ? moments : deflections).get(spanIndex);
        double[] stations = responses.stationsMm().get(spanIndex);
        double[] values = extremes.stream().mapToDouble(e -> e.worst(f, sign)).toArray();
        Span span = frame.spans().get(spanIndex);
        Loads loads = responses.bendingIn(spanIndex).under(f);
        Peak best = new Peak(0, span.fromMm());
        for (int i = 0; i < values.length; i++) {
            boolean rises = i == 0 || values[i] > values[i - 1];
            boolean falls = i == values.length - 1 || values[i] >= values[i + 1];
            if (values[i] > 0 && rises && falls) {
                Peak station = new Peak(values[i], stations[i]);
                best = larger(best, station);
                if (i > 0) {
                    best = larger(best, refined(loads, curve, sign, f, station, stations[i - 1]));
                }
                if (i < values.length - 1) {
                    best = larger(best, refined(loads, curve, sign, f, station, stations[i + 1]));
                }
            }
        }
        return best;
    }

    /** The largest value between a station and its neighbour; the station's own where the curve falls from it at once. */
    private Peak refined(Loads loads, Curve curve, int sign, ActionFactors f, Peak station, double neighbourMm) {
        Peak best = station;
        double from = Math.min(station.atMm(), neighbourMm);
        double to = Math.max(station.atMm(), neighbourMm);
        double beside = station.atMm() + (neighbourMm - station.atMm()) * BESIDE;
        double away = Math.signum(neighbourMm - station.atMm());
        for (int round = 0; round < ROUNDS_OF_REFINEMENT; round++) {
            double at = best.atMm();
            List<Weighted> worst = responses.worstArrangement(loads, r -> sign * curve.value(r, at), f);
            Piece between = GoverningLoads.sum(worst, from, to);
            if (round == 0 && !(sign * away * curve.slopeAfter(beside - from, between, frame) > 0)) {
                break;
            }
            double x = level(curve, sign, between, from, to);
            Peak next =
                    new Peak(responses.extremes(loads, r -> curve.value(r, x)).worst(f, sign), x);
            Peak better = larger(best, next);
            if (better == best) {
                break;
            }
            best = better;
        }
        return best;
    }

    /** Between a place where the curve rises and one where it falls, where it is level. */
    private double level(Curve curve, int sign, Piece between, double risingMm, double fallingMm) {
        double low = risingMm;
        double high = fallingMm;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (sign * curve.slopeAfter(middle - between.fromMm(), between, frame) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static Peak larger(Peak best, Peak next) {
        return next.value() > best.value() * (1 + GAIN) ? next : best;
    }
}
