package org.deckplanreview.method.en1995;

import java.util.List;
import java.util.OptionalDouble;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.method.Notches;

/**
 * Where a member bears across the grain, 6.1.5(1); a notch's corner ends the bearing and the fibres beside it.
 *
 * @param lengthMm l, along the member
 * @param startMm a on the side of the member's start, from the contact to the member's end or the notch's corner
 * @param endMm a on the other side
 * @param startGapMm l_1 to the next contact towards the start, if there is one
 * @param endGapMm l_1 towards the end, likewise
 * @param loadGapMm clear distance to the next concentrated force from above; empty for load along the whole member
 */
record Contact(
        double lengthMm,
        double startMm,
        double endMm,
        OptionalDouble startGapMm,
        OptionalDouble endGapMm,
        OptionalDouble loadGapMm) {

    /** The contact at a support whose contact length is known. */
    static Contact at(Member member, int support, double joistBreadthMm) {
        List<MemberSupport> supports = member.supports();
        MemberSupport s = supports.get(support);
        double before = Notches.bearsMm(member, support, -1);
        double behind = Notches.bearsMm(member, support, 1);
        double from = s.atMm() - before;
        double to = s.atMm() + behind;
        return new Contact(
                before + behind,
                Math.max(0, Math.min(from, Notches.cornerMm(member, support, -1) - before)),
                Math.max(0, Math.min(member.lengthMm() - to, Notches.cornerMm(member, support, 1) - behind)),
                support == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Math.max(0, from - farEdge(supports.get(support - 1), 1))),
                support == supports.size() - 1
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Math.max(0, farEdge(supports.get(support + 1), -1) - to)),
                nearestJoist(member, s.atMm(), Math.max(before, behind) + joistBreadthMm / 2));
    }

    private static double farEdge(MemberSupport support, int side) {
        return support.atMm() + side * support.contactLengthMm().orElse(0) / 2;
    }

    private static OptionalDouble nearestJoist(Member member, double atMm, double halvesMm) {
        return member instanceof BeamLine beam
                ? beam.joists().stream()
                        .mapToDouble(JoistBearing::atMm)
                        .map(joist -> Math.max(0, Math.abs(joist - atMm) - halvesMm))
                        .min()
                : OptionalDouble.empty();
    }

    /** The smallest clear distance from the contact to another force on the member; infinite with none. */
    double smallestGapMm() {
        List<OptionalDouble> gaps = List.of(startGapMm, endGapMm, loadGapMm);
        return gaps.stream().flatMapToDouble(OptionalDouble::stream).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** l with what may be added at both ends, mm, 6.1.5(1). */
    double effectiveLengthMm(double extensionMm) {
        return lengthMm + startExtensionMm(extensionMm) + endExtensionMm(extensionMm);
    }

    double startExtensionMm(double extensionMm) {
        return extension(extensionMm, startMm, startGapMm);
    }

    double endExtensionMm(double extensionMm) {
        return extension(extensionMm, endMm, endGapMm);
    }

    private double extension(double extensionMm, double toEndMm, OptionalDouble gapMm) {
        double e = Math.min(extensionMm, Math.min(toEndMm, lengthMm));
        return gapMm.isPresent() ? Math.min(e, gapMm.getAsDouble() / 2) : e;
    }
}
