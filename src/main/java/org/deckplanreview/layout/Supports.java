package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.Post;
import org.deckplanreview.submission.Submission;

/** Where members meet what carries them, and the spans that follow. */
final class Supports {

    /** Supports closer together than this are one; a cantilever shorter than this is none. */
    private static final double SAME_MM = 1;

    /** What rounding makes of two faces that touch. */
    static final double ROUNDING_MM = 1e-7;

    private Supports() {}

    /** A joist's support and how far along its carrier it lies. */
    record Crossing(MemberSupport support, double alongCarrierMm) {}

    /** A joist rests only on what it overlaps, and hangs only on a face that it reaches with its whole breadth. */
    static List<Crossing> ofJoist(JoistPiece joist, double joistBreadthMm, List<Carrier> carriers) {
        record Met(Crossing crossing, double breadthMm) {}
        List<Met> met = new ArrayList<>();
        for (Carrier carrier : carriers) {
            if (carrier.takes(joist.across(), joistBreadthMm)) {
                crossing(joist, joistBreadthMm, carrier)
                        .ifPresent(c -> met.add(new Met(c, carrier.breadthMet(joist.across(), joistBreadthMm))));
            }
        }
        met.sort(Comparator.comparingDouble((Met m) -> -m.breadthMm()));
        return apart(met.stream().map(Met::crossing).toList(), c -> c.support().atMm());
    }

    private static Optional<Crossing> crossing(JoistPiece joist, double joistBreadthMm, Carrier carrier) {
        Carrier.Stretch body = carrier.body(joist.across(), joist.middle());
        double overlap = body.overlap(joist.from(), joist.to());
        if (carrier.hangs() ? !touches(joist, body) : !(overlap > ROUNDING_MM)) {
            return Optional.empty();
        }
        double along = carrier.line().alongAt(joist.across());
        double place = carrier.line().placeMm(joist.across());
        return Optional.of(new Crossing(
                new MemberSupport(
                        joist.nearest(along),
                        carrier.kind(),
                        carrier.id(),
                        carrier.pointer(),
                        carrier.label(),
                        contact(
                                carrier,
                                overlap
                                        * Math.min(
                                                1,
                                                carrier.breadthMet(joist.across(), joistBreadthMm) / joistBreadthMm)),
                        carrier.seating()),
                Math.max(0, Math.min(carrier.line().lengthMm(), place))));
    }

    private static boolean touches(JoistPiece joist, Carrier.Stretch body) {
        return Math.abs(joist.to() - body.from()) <= ROUNDING_MM || Math.abs(joist.from() - body.to()) <= ROUNDING_MM;
    }

    /**
     * The length of a joist over what carries it: as drawn; on a ledger as stated, but not more than is drawn. A joist
     * that lies with a part of its breadth beside the end of what carries it has the length that covers as much in full breadth.
     */
    private static OptionalDouble contact(Carrier carrier, double overlapMm) {
        if (carrier.hangs()) {
            return carrier.bearingLengthMm();
        }
        if (carrier.isLedger()) {
            OptionalDouble stated = carrier.bearingLengthMm();
            return stated.isPresent() ? OptionalDouble.of(Math.min(stated.getAsDouble(), overlapMm)) : stated;
        }
        return OptionalDouble.of(overlapMm);
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

    /** Posts that a beam names and touches, projected on its line. */
    static List<MemberSupport> ofBeam(Submission submission, Beam beam, List<Post> posts, Pointer postsPointer) {
        List<MemberSupport> supports = new ArrayList<>();
        for (int i = 0; i < posts.size(); i++) {
            Post post = posts.get(i);
            if (!beam.posts().contains(post.id())) {
                continue;
            }
            PostContact contact = PostContact.of(submission, beam, post);
            if (contact.carries()) {
                supports.add(new MemberSupport(
                        Math.max(0, Math.min(Axis.length(beam.line()), contact.atMm())),
                        MemberSupport.Kind.POST,
                        post.id(),
                        postsPointer.child(i),
                        post.displayLabel(),
                        contact.isOnPost() ? OptionalDouble.of(contact.alongMm()) : OptionalDouble.empty(),
                        contact.isOnPost() ? JoistSeating.ON_TOP : JoistSeating.HANGERS));
            }
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
