package org.deckplanreview.loadpath;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.Span;

/**
 * A member as statics sees it. Members with equal frames and equal actions have equal effects.
 *
 * @param spans of the member
 * @param bendingStiffnessNMm2 EI of all plies
 * @param shearFlexibilityPerN kappa / GA of all plies; 0 without shear deformation
 */
record Frame(double lengthMm, Seats seats, List<Span> spans, double bendingStiffnessNMm2, double shearFlexibilityPerN) {

    Frame {
        spans = List.copyOf(spans);
    }

    /**
     * Where a member rests.
     *
     * @param placesMm distinct places, rising
     * @param placeOfSupport for each support of the member, which of the places it is at
     */
    record Seats(List<Double> placesMm, List<Integer> placeOfSupport) {

        /** Supports closer than this carry as one; a span between them would have no length to bend. */
        private static final double ONE_PLACE_MM = 1;

        static final int FEWEST = 2;

        Seats {
            placesMm = List.copyOf(placesMm);
            placeOfSupport = List.copyOf(placeOfSupport);
        }

        static Seats of(Member member) {
            List<Double> places = new ArrayList<>();
            List<Integer> placeOfSupport = new ArrayList<>();
            for (MemberSupport s : member.supports()) {
                double at = onMember(s.atMm(), member);
                if (places.isEmpty() || at - places.get(places.size() - 1) >= ONE_PLACE_MM) {
                    places.add(at);
                }
                placeOfSupport.add(places.size() - 1);
            }
            return new Seats(places, placeOfSupport);
        }

        /** Whether the member stands on them: on fewer it is a mechanism. */
        boolean suffice() {
            return placesMm.size() >= FEWEST;
        }

        /** Whether equilibrium alone gives the reactions. */
        boolean determinate() {
            return placesMm.size() == FEWEST;
        }
    }

    static Frame of(Member member, Seats seats, LoadModel.Material material, LoadModel model) {
        double depth = member.timber().depth().mm();
        double area = member.plies() * member.timber().breadth().mm() * depth;
        return new Frame(
                member.lengthMm(),
                seats,
                member.spans().stream()
                        .map(s -> new Span(s.kind(), onMember(s.fromMm(), member), onMember(s.toMm(), member)))
                        .toList(),
                material.e0MeanNPerMm2() * area * depth * depth / 12,
                model.shearDeformation() ? model.shearAreaFactor() / (material.gMeanNPerMm2() * area) : 0);
    }

    /** The place itself; the member's end where rounding put it a hair beyond. */
    static double onMember(double atMm, Member member) {
        return Math.min(Math.max(atMm, 0), member.lengthMm());
    }

    /** @throws IllegalArgumentException if the seats do not suffice */
    ContinuousBeam beam() {
        return new ContinuousBeam(
                lengthMm,
                seats.placesMm().stream().mapToDouble(Double::doubleValue).toArray(),
                bendingStiffnessNMm2,
                shearFlexibilityPerN);
    }

    /** Cantilevers, of no length too, and spans between the places where the member rests. */
    int stretches() {
        return seats.placesMm().size() + 1;
    }

    /** The stretch that a place lies in, the later one where they meet. */
    int stretchOf(double atMm) {
        return (int) seats.placesMm().stream().filter(p -> p <= atMm).count();
    }

    int stretchOf(Span span) {
        return stretchOf((span.fromMm() + span.toMm()) / 2);
    }

    int placeOf(int support) {
        return seats.placeOfSupport().get(support);
    }

    /** The part of a place's reaction that one of the supports there takes. */
    double shareOf(int support) {
        return 1.0 / Collections.frequency(seats.placeOfSupport(), placeOf(support));
    }
}
