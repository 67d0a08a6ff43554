package org.deckplanreview.method.geometry;

import static org.deckplanreview.method.geometry.DescribedQuantity.number;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.LoadPath.DeckLoads;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.Need;
import org.deckplanreview.submission.SubjectKind;

/**
 * What really loads a part of the frame, as the uniform load of a span table: a table counts for a member only while its
 * moment is about that of a simple span with the load that the table assumes, whatever brings more.
 */
final class TableLoads {

    private static final List<SubjectKind> CARRYING = List.of(
            SubjectKind.JOISTS, SubjectKind.BEAMS, SubjectKind.LEDGERS, SubjectKind.POSTS, SubjectKind.FOOTINGS);

    /** Each action once, as tables of allowable loads add them. */
    private static final double ONCE = 1;

    private static final double KN_PER_M2_OF_N_PER_MM2 = 1e3;
    private static final double N_PER_MM2_OF_KN_PER_M2 = 1e-3;

    private TableLoads() {}

    static List<Quantity> quantities() {
        return List.of(
                number(
                        "equivalent permanent load",
                        MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                        Subject.class,
                        CARRYING,
                        "The uniform permanent load that makes, with the uniform imposed load, the largest moment of the joist or"
                                + " beam in a simple span as long as its largest one: over the spacing of joists, over the width of"
                                + " deck that joists bring to a beam from one side. So it counts joists from both sides, stairs,"
                                + " heavy items and finishes too. Of ledgers, posts and footings, the permanent load on the"
                                + " platform's area.",
                        (subject, context) -> observe(subject, context, false)),
                number(
                        "equivalent load with snow",
                        MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                        Subject.class,
                        CARRYING,
                        "The uniform load that makes the largest moment of the joist or beam under permanent load and snow, found as"
                                + " the equivalent permanent load is; of ledgers, posts and footings, permanent load and snow on the"
                                + " platform's area.",
                        (subject, context) -> observe(subject, context, true)));
    }

    private static Observation observe(Subject subject, ReviewContext context, boolean withSnow) {
        Derived<DeckLoads> loads = context.loadPath().deckLoads(subject.platformIndex());
        if (!(subject instanceof Member member)) {
            return shown(loads.map(l -> l.ownPermanent() + (withSnow ? l.snow() : 0)), withSnow);
        }
        Observation span = Spans.largestSpan(member, "largest span", Spans.supportsMissing(member, context));
        Observation spacing = Spans.spacing(member, context);
        Observation width = member instanceof BeamLine beam ? Spans.widthFromOneSide(beam, context) : spacing;
        List<Need> needs = new ArrayList<>(Stream.of(span, spacing, width)
                .flatMap(o -> o instanceof Observation.Missing m ? m.needs().stream() : Stream.empty())
                .toList());
        if (!needs.isEmpty()) {
            return Observations.missing(needs.stream().distinct().sorted().toList());
        }
        double discrete = member instanceof BeamLine ? mm(spacing) : 0;
        double simpleMm3 = mm(width) * (mm(span) * mm(span) + discrete * discrete) / 8;
        return shown(
                context.loadPath()
                        .member(member)
                        .with(loads, (analysis, l) -> largestMomentNmm(analysis, l, withSnow) / simpleMm3)
                        .with(loads, (q, l) -> q * KN_PER_M2_OF_N_PER_MM2 - (withSnow ? 0 : l.imposed())),
                withSnow);
    }

    /** Joists lie on a beam at their spacing: l² + s² in place of l² is the most that this makes of the moment in its spans. */
    private static double largestMomentNmm(MemberAnalysis analysis, DeckLoads loads, boolean withSnow) {
        double permanentN = analysis.totalN(Action.PERMANENT);
        double areaMm2 = analysis.totalN(Action.IMPOSED) / (loads.imposed() * N_PER_MM2_OF_KN_PER_M2);
        double notThereN = (loads.permanent() - loads.ownPermanent()) * N_PER_MM2_OF_KN_PER_M2 * areaMm2;
        ActionFactors factors =
                new ActionFactors(ONCE - notThereN / permanentN, withSnow ? 0 : ONCE, 0, withSnow ? ONCE : 0);
        return analysis.effects(factors).spans().stream()
                .flatMap(s -> Stream.of(s.sagging(), s.hogging()))
                .mapToDouble(p -> p.value())
                .max()
                .orElse(0);
    }

    private static Observation shown(Derived<Double> load, boolean withSnow) {
        return Observations.derived(
                load,
                "q",
                MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                withSnow ? "equivalent uniform load with snow" : "equivalent uniform permanent load");
    }

    private static double mm(Observation found) {
        return ((Measure) ((Observation.Found) found).value()).value();
    }
}
