package org.deckplanreview.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.measure.Length;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.Footing;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.FootingShape;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Submission;

/**
 * A beam, ledger or block as the joists that cross it see it, along and across them.
 *
 * @param line of a beam or block its middle, of a ledger its back against the wall
 * @param sine of the angle between it and the joists
 */
record Carrier(
        MemberSupport.Kind kind,
        String id,
        Pointer pointer,
        String label,
        double breadthMm,
        JoistSeating seating,
        OptionalDouble bearingLengthMm,
        Line line,
        double sine) {

    /** Below this sine it lies along the joists and carries none. */
    private static final double PARALLEL_SINE = 1e-6;

    /** Where a carrier's line begins and ends, along and across the joists, and its length. */
    record Line(double fromAlong, double fromAcross, double toAlong, double toAcross, double lengthMm) {

        double lowAcross() {
            return Math.min(fromAcross, toAcross);
        }

        double highAcross() {
            return Math.max(fromAcross, toAcross);
        }

        /** How far along the line it is crossed by a joist; outside 0 to its length beyond its ends. */
        double placeMm(double across) {
            return (across - fromAcross) / (toAcross - fromAcross) * lengthMm;
        }

        double alongAt(double across) {
            return fromAlong + placeMm(across) / lengthMm * (toAlong - fromAlong);
        }
    }

    /** A stretch along a joist. */
    record Stretch(double from, double to) {

        double overlap(double otherFrom, double otherTo) {
            return Math.min(to, otherTo) - Math.max(from, otherFrom);
        }
    }

    /** Of a platform, its ledger first; those that lie along the joists are left out. */
    static List<Carrier> all(Submission submission, Platform platform, Pointer pointer, Axis joists) {
        List<Carrier> carriers = new ArrayList<>();
        platform.ledger()
                .flatMap(l -> of(
                        joists,
                        l.line(),
                        (line, sine) -> new Carrier(
                                MemberSupport.Kind.LEDGER,
                                PlatformDerivation.LEDGER_ID,
                                pointer.child("ledger"),
                                ledgerLabel(platform),
                                submission.timber(l.timber()).breadth().mm(),
                                l.joists(),
                                l.bearingLength()
                                        .map(Length::mm)
                                        .map(OptionalDouble::of)
                                        .orElse(OptionalDouble.empty()),
                                line,
                                sine)))
                .ifPresent(carriers::add);
        for (int i = 0; i < platform.beams().size(); i++) {
            Beam beam = platform.beams().get(i);
            Pointer at = pointer.child("beams").child(i);
            of(
                            joists,
                            beam.line(),
                            (line, sine) -> new Carrier(
                                    MemberSupport.Kind.BEAM,
                                    beam.id(),
                                    at,
                                    beam.displayLabel(),
                                    submission.timber(beam.timber()).breadth().mm() * beam.plies(),
                                    beam.joists(),
                                    OptionalDouble.empty(),
                                    line,
                                    sine))
                    .ifPresent(carriers::add);
        }
        for (int i = 0; i < platform.footings().size(); i++) {
            Footing footing = platform.footings().get(i);
            if (footing.kind() == FootingKind.BLOCK && footing.at().isPresent()) {
                carriers.add(block(footing, pointer.child("footings").child(i), joists));
            }
        }
        return carriers;
    }

    /** A block takes joists over its smaller side each way, of a round one over the square within it. */
    private static Carrier block(Footing block, Pointer pointer, Axis joists) {
        double smaller = Math.min(
                block.breadth().mm(),
                block.length().map(Length::mm).orElse(block.breadth().mm()));
        double side = block.shape() == FootingShape.ROUND ? smaller * StrictMath.sqrt(0.5) : smaller;
        double along = joists.along(block.at().orElseThrow());
        double across = joists.across(block.at().orElseThrow());
        return new Carrier(
                MemberSupport.Kind.BLOCK,
                block.id(),
                pointer,
                block.displayLabel(),
                side,
                JoistSeating.ON_TOP,
                OptionalDouble.empty(),
                new Line(along, across - side / 2, along, across + side / 2, side),
                1);
    }

    private interface Seen {
        Carrier as(Line line, double sine);
    }

    private static Optional<Carrier> of(Axis joists, PlanLine line, Seen seen) {
        double sine = joists.sineTo(Axis.of(line));
        return sine > PARALLEL_SINE
                ? Optional.of(seen.as(
                        new Line(
                                joists.along(line.from()),
                                joists.across(line.from()),
                                joists.along(line.to()),
                                joists.across(line.to()),
                                Axis.length(line)),
                        sine))
                : Optional.empty();
    }

    static String ledgerLabel(Platform platform) {
        return "ledger of " + platform.displayLabel();
    }

    boolean hangs() {
        return seating == JoistSeating.HANGERS;
    }

    boolean isLedger() {
        return kind == MemberSupport.Kind.LEDGER;
    }

    /**
     * What the carrier takes up along a joist's centre line: a beam to both sides of its line, a ledger in front of it,
     * on the side of the joist's middle.
     */
    Stretch body(double across, double joistMiddle) {
        double at = line.alongAt(across);
        double breadth = breadthMm / sine;
        if (!isLedger()) {
            return new Stretch(at - breadth / 2, at + breadth / 2);
        }
        return joistMiddle >= at ? new Stretch(at, at + breadth) : new Stretch(at - breadth, at);
    }

    /** How much of a joist's breadth lies within the carrier's length; negative by how far it lies beside its end. */
    double breadthMet(double across, double joistBreadthMm) {
        return Math.min(across + joistBreadthMm / 2, line.highAcross())
                - Math.max(across - joistBreadthMm / 2, line.lowAcross());
    }

    /** Whether a joist lies far enough within the carrier's length: with its whole breadth to hang on it, with some to lie on it. */
    boolean takes(double across, double joistBreadthMm) {
        double met = breadthMet(across, joistBreadthMm);
        return hangs() ? met >= joistBreadthMm - Supports.ROUNDING_MM : met > Supports.ROUNDING_MM;
    }
}
