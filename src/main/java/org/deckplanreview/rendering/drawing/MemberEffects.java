package org.deckplanreview.rendering.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Span;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.loadpath.Effects.Peak;
import org.deckplanreview.loadpath.Effects.SpanEffects;
import org.deckplanreview.loadpath.MemberAnalysis;

/**
 * The effects on a member that a drawing tells.
 *
 * @param alternatives of them the farthest counts
 * @param alike labels of others with the same effects
 */
record MemberEffects(MemberAnalysis analysis, List<Effects> alternatives, List<String> alike, ShownUnits units) {

    /** Permanent load with each variable load by itself. */
    static final List<ActionFactors> FACTORS =
            List.of(new ActionFactors(1, 1, 0, 0), new ActionFactors(1, 0, 1, 0), new ActionFactors(1, 0, 0, 1));

    MemberEffects {
        alternatives = List.copyOf(alternatives);
        alike = List.copyOf(alike);
    }

    static MemberEffects of(MemberAnalysis analysis, ShownUnits units) {
        return new MemberEffects(
                analysis, FACTORS.stream().map(analysis::effects).toList(), List.of(), units);
    }

    Member member() {
        return analysis.member();
    }

    MemberEffects andAlike(MemberEffects other) {
        List<String> labels = new ArrayList<>(alike);
        labels.add(other.member().label());
        return new MemberEffects(analysis, alternatives, labels, units);
    }

    /** The largest of an effect in each span; 0 where there is none. */
    List<Peak> peaks(Function<SpanEffects, Peak> effect) {
        List<Peak> peaks = new ArrayList<>();
        for (int k = 0; k < member().spans().size(); k++) {
            int span = k;
            peaks.add(alternatives.stream()
                    .map(e -> effect.apply(e.spans().get(span)))
                    .max(Comparator.comparingDouble(Peak::value))
                    .orElseThrow());
        }
        return peaks;
    }

    /** The largest shear beside each support. */
    List<Peak> shears() {
        List<Peak> peaks = new ArrayList<>();
        for (int k = 0; k < member().supports().size(); k++) {
            int support = k;
            peaks.add(alternatives.stream()
                    .map(e -> e.supports().get(support).shear())
                    .max(Comparator.comparingDouble(Peak::value))
                    .orElseThrow());
        }
        return peaks;
    }

    double largestMomentNMm() {
        return largest(Stream.concat(peaks(SpanEffects::sagging).stream(), peaks(SpanEffects::hogging).stream()));
    }

    private static double largest(Stream<Peak> peaks) {
        return peaks.mapToDouble(Peak::value).max().orElse(0);
    }

    /** Spans and largest effects in words; members with the same words are drawn once. */
    String told() {
        StringBuilder text = new StringBuilder("spans ");
        for (Span s : member().spans()) {
            text.append(units.length(s.lengthMm())).append(s.isCantilever() ? " (cantilever), " : ", ");
        }
        return text + "largest moment " + units.moment(largestMomentNMm()) + ", shear "
                + units.force(largest(shears().stream())) + ", deflection "
                + units.deflection(largest(peaks(SpanEffects::down).stream()));
    }

    String described() {
        return member().label() + ": " + told() + ".";
    }
}
