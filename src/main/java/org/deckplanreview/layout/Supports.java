package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Tolerances;

/** Where members meet what carries them, and the spans that follow. */
final class Supports {

    /** A joist that ends this close to what carries it, or within half its breadth, is drawn to reach it. */
    private static final double REACH_MM = Tolerances.LEDGER_MM;
    /** Supports closer together than this are one; a cantilever shorter than this is none. */
    private static final double SAME_MM = 1;

    private static final double ROUNDING_MM = 1e-6;
    private static final double PARALLEL_SINE = 1e-6;

    private Supports() {}

    /** A beam or ledger as joists see it. */
    record Carrier(
            MemberSupport.Kind kind,
            String id,
            Pointer pointer,
            String label,
            PlanLine line,
            double breadthMm,
            JoistSeating seating,
            OptionalDouble bearingLengthMm) {}

    /** A joist's support and how far along its carrier it lies. */
    record Crossing(MemberSupport support, double alongCarrierMm) {}

    static List<Crossing> ofJoist(JoistPiece joist, Axis axis, double joistBreadthMm, List<Carrier> carriers) {
        List<Crossing> crossings = new ArrayList<>();
        for (Carrier carrier : carriers) {
            crossing(joist, axis, joistBreadthMm, carrier).ifPresent(crossings::add);
        }
        return apart(crossings, c -> c.support().atMm());
    }

    private static Optional<Crossing> crossing(JoistPiece joist, Axis axis, double joistBreadthMm, Carrier carrier) {
        double sine = axis.sineTo(Axis.of(carrier.line()));
        if (!(sine > PARALLEL_SINE)) {
            return Optional.empty();
        }
        double length = Axis.length(carrier.line());
        double fromAcross = axis.across(carrier.line().from());
        double toAcross = axis.across(carrier.line().to());
        double alongCarrier = (joist.across() - fromAcross) / (toAcross - fromAcross) * length;
        // A joist whose centre line just misses the carrier's end still lies on it with part of its breadth.
        double slack = joistBreadthMm / 2 / sine + ROUNDING_MM;
        double fromAlong = axis.along(carrier.line().from());
        double toAlong = axis.along(carrier.line().to());
        double along = fromAlong + alongCarrier / length * (toAlong - fromAlong);
        double halfBreadth = carrier.breadthMm() / 2 / sine;
        double reach = Math.max(REACH_MM / sine, halfBreadth) + ROUNDING_MM;
        if (alongCarrier < -slack
                || alongCarrier > length + slack
                || along < joist.from() - reach
                || along > joist.to() + reach) {
            return Optional.empty();
        }
        OptionalDouble contact = carrier.kind() == MemberSupport.Kind.BEAM && carrier.seating() == JoistSeating.ON_TOP
                ? contact(along - joist.from(), halfBreadth, joist.lengthMm())
                : carrier.bearingLengthMm();
        return Optional.of(new Crossing(
                new MemberSupport(
                        joist.nearest(along),
                        carrier.kind(),
                        carrier.id(),
                        carrier.pointer(),
                        carrier.label(),
                        contact,
                        carrier.seating()),
                Math.max(0, Math.min(length, alongCarrier))));
    }

    /** The length of a member over its support, which its end may cut short; unknown where the drawing shows none. */
    private static OptionalDouble contact(double centre, double half, double memberLength) {
        double contact = Math.min(memberLength, centre + half) - Math.max(0, centre - half);
        return contact > ROUNDING_MM ? OptionalDouble.of(contact) : OptionalDouble.empty();
    }

    /** In order along the member; of supports at one place the first named is kept. */
    private static <T> List<T> apart(List<T> supports, ToDoubleFunction<T> place) {
        List<T> kept = new ArrayList<>();
        for (T s : supports.stream().sorted(Comparator.comparingDouble(place)).toList()) {
            if (kept.isEmpty() || place.applyAsDouble(s) - place.applyAsDouble(kept.get(kept.size() - 1)) >= SAME_MM) {
                kept.add(s);
            }
        }
        return kept;
    }

    /** Posts under a beam, projected on its line. */
    static List<MemberSupport> ofBeam(Submission submission, Beam beam, List<Post> posts, Pointer postsPointer) {
        Axis axis = Axis.of(beam.line());
        double start = axis.along(beam.line().from());
        double length = Axis.length(beam.line());
        List<MemberSupport> supports = new ArrayList<>();
        for (int i = 0; i < posts.size(); i++) {
            Post post = posts.get(i);
            if (!beam.posts().contains(post.id())) {
                continue;
            }
            double at = axis.along(post.at()) - start;
            boolean onPost = beam.seating() == BeamSeating.ON_POST;
            double half = submission.timber(post.timber()).breadth().mm() / 2;
            supports.add(new MemberSupport(
                    Math.max(0, Math.min(length, at)),
                    MemberSupport.Kind.POST,
                    post.id(),
                    postsPointer.child(i),
                    post.displayLabel(),
                    onPost ? contact(at, half, length) : OptionalDouble.empty(),
                    onPost ? JoistSeating.ON_TOP : JoistSeating.HANGERS));
        }
        return apart(supports, MemberSupport::atMm);
    }

    /** A member's spans and cantilevers, in order. */
    static List<Span> spans(double lengthMm, List<MemberSupport> supports) {
        List<Span> spans = new ArrayList<>();
        if (supports.isEmpty()) {
            return spans;
        }
        double first = supports.get(0).atMm();
        double last = supports.get(supports.size() - 1).atMm();
        if (first >= SAME_MM) {
            spans.add(new Span(Span.Kind.CANTILEVER_AT_START, 0, first));
        }
        for (int i = 1; i < supports.size(); i++) {
            spans.add(new Span(
                    Span.Kind.BETWEEN_SUPPORTS,
                    supports.get(i - 1).atMm(),
                    supports.get(i).atMm()));
        }
        if (lengthMm - last >= SAME_MM) {
            spans.add(new Span(Span.Kind.CANTILEVER_AT_END, last, lengthMm));
        }
        return spans;
    }
}
