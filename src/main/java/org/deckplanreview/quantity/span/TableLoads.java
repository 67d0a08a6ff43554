package org.deckplanreview.quantity.span;

import static org.deckplanreview.quantity.DescribedQuantity.number;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.Action;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.Effects;
import org.deckplanreview.loadpath.LoadPath.DeckLoads;
import org.deckplanreview.loadpath.MemberAnalysis;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.SubjectKind;

/**
 * What really loads a part of the frame, as the uniform load of a span table: a table counts for a member only while its
 * moment is about that of a simple span with the load that the table assumes, whatever brings more.
 */
public final class TableLoads {

    private static final List<SubjectKind> CARRYING = List.of(
            SubjectKind.JOISTS, SubjectKind.BEAMS, SubjectKind.LEDGERS, SubjectKind.POSTS, SubjectKind.FOOTINGS);

    /** Each action once, as tables of allowable loads add them. */
    private static final double ONCE = 1;

    /** Largest shear force over w l under uniform load of two equal spans, for which tables are as for one. */
    private static final double SHEAR_OF_TWO_SPANS = 5 / 8.0;

    private static final double KN_PER_M2_OF_N_PER_MM2 = 1e3;
    private static final double N_PER_MM2_OF_KN_PER_M2 = 1e-3;

    private TableLoads() {}

    public static List<Quantity> quantities() {
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
                        (subject, context) -> observe(subject, context, true)),
                number(
                        "equivalent load",
                        MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                        Member.class,
                        List.of(SubjectKind.JOISTS, SubjectKind.BEAMS),
                        "The uniform load that makes the largest moment or the largest shear force of the joist or beam, whichever"
                                + " asks for more, under permanent load with imposed load or with snow: moment in the simple span"
                                + " that the equivalent permanent load has, shear over the middle of two such spans.",
                        TableLoads::equivalent),
                number(
                        "load at the tip of overhang",
                        MeasureUnit.NEWTON_,
                        JoistLine.class,
                        List.of(SubjectKind.JOISTS),
                        "The load at the tip of the joist's overhang that makes, with the uniform imposed load or snow on it, the"
                                + " largest moment over its support: so weights, finishes, stairs and guards are counted.",
                        TableLoads::atTip));
    }

    private static Observation atTip(JoistLine joist, ReviewContext context) {
        Derived<DeckLoads> loads = context.loadPath().deckLoads(joist.platformIndex());
        Observation spacing = Spans.spacing(joist, context);
        List<Need> needs = missing(spacing);
        if (!needs.isEmpty()) {
            return Observations.missing(needs);
        }
        if (joist.spans().stream().noneMatch(Span::isCantilever)) {
            return Observations.notApplicable("the joist does not overhang");
        }
        Derived<Double> load = context.loadPath()
                .member(joist)
                .with(
                        loads,
                        (analysis, l) -> Stream.of(false, true)
                                .mapToDouble(withSnow -> atTipN(
                                        joist,
                                        analysis.effects(factors(analysis, l, withSnow)),
                                        mm(spacing) * (withSnow ? l.snow() : l.imposed()) * N_PER_MM2_OF_KN_PER_M2))
                                .max()
                                .orElseThrow());
        return Observations.derived(load, "P", MeasureUnit.NEWTON_, "load at the tip of the overhang");
    }

    private static double atTipN(JoistLine joist, Effects effects, double uniformNPerMm) {
        return IntStream.range(0, joist.spans().size())
                .filter(k -> joist.spans().get(k).isCantilever())
                .mapToDouble(k -> {
                    double overhangMm = joist.spans().get(k).lengthMm();
                    return effects.spans().get(k).hogging().value() / overhangMm - uniformNPerMm * overhangMm / 2;
                })
                .max()
                .orElse(0);
    }

    /** The simple span whose moment and shear force under a uniform load are those of a member. */
    private record SimpleSpan(Derived<MemberAnalysis> analysis, double spanMm, double spacingMm, double widthMm) {

        /**
         * Over the uniform load. Joists lie on a beam at their spacing: l² + s² in place of l² is the most that this makes of
         * the moment in its spans.
         */
        double momentMm3() {
            return widthMm * (spanMm * spanMm + spacingMm * spacingMm) / 8;
        }

        /** Over the uniform load, beside the middle one of two such spans. */
        double shearMm2() {
            return widthMm * (spanMm + spacingMm) * SHEAR_OF_TWO_SPANS;
        }
    }

    private static Observation ofSpan(
            Member member, ReviewContext context, Function<SimpleSpan, Observation> observation) {
        Observation span = Spans.largestSpan(member, "largest span", Spans.supportsMissing(member, context));
        Observation spacing = Spans.spacing(member, context);
        Observation width = member instanceof BeamLine beam ? Spans.widthFromOneSide(beam, context) : spacing;
        List<Need> needs = missing(span, spacing, width);
        return needs.isEmpty()
                ? observation.apply(new SimpleSpan(
                        context.loadPath().member(member),
                        mm(span),
                        member instanceof BeamLine ? mm(spacing) : 0,
                        mm(width)))
                : Observations.missing(needs);
    }

    private static Observation equivalent(Member member, ReviewContext context) {
        Derived<DeckLoads> loads = context.loadPath().deckLoads(member.platformIndex());
        return ofSpan(member, context, span -> {
            Derived<Double> load = span.analysis()
                    .with(
                            loads,
                            (analysis, l) -> Stream.of(false, true)
                                    .map(withSnow -> analysis.effects(factors(analysis, l, withSnow)))
                                    .mapToDouble(e ->
                                            Math.max(largestNmm(e) / span.momentMm3(), largestN(e) / span.shearMm2()))
                                    .max()
                                    .orElseThrow())
                    .map(q -> q * KN_PER_M2_OF_N_PER_MM2);
            return Observations.derived(load, "q", MeasureUnit.KILONEWTON_PER_SQUARE_METRE, "equivalent uniform load");
        });
    }

    private static double largestN(Effects effects) {
        return effects.supports().stream()
                .mapToDouble(s -> s.shear().value())
                .max()
                .orElse(0);
    }

    private static List<Need> missing(Observation... observations) {
        return Stream.of(observations)
                .flatMap(o -> o instanceof Observation.Missing m ? m.needs().stream() : Stream.empty())
                .distinct()
                .sorted()
                .toList();
    }

    private static Observation observe(Subject subject, ReviewContext context, boolean withSnow) {
        Derived<DeckLoads> loads = context.loadPath().deckLoads(subject.platformIndex());
        if (!(subject instanceof Member member)) {
            return shown(loads.map(l -> l.ownPermanent() + (withSnow ? l.snow() : 0)), withSnow);
        }
        return ofSpan(
                member,
                context,
                span -> shown(
                        span.analysis()
                                .with(
                                        loads,
                                        (analysis, l) -> largestNmm(analysis.effects(factors(analysis, l, withSnow)))
                                                / span.momentMm3())
                                .with(loads, (q, l) -> q * KN_PER_M2_OF_N_PER_MM2 - (withSnow ? 0 : l.imposed())),
                        withSnow));
    }

    /** Each action once; of the permanent load only what is there, and not what tables add to it. */
    private static ActionFactors factors(MemberAnalysis analysis, DeckLoads loads, boolean withSnow) {
        double permanentN = analysis.totalN(Action.PERMANENT);
        double areaMm2 = analysis.totalN(Action.IMPOSED) / (loads.imposed() * N_PER_MM2_OF_KN_PER_M2);
        double notThereN = (loads.permanent() - loads.ownPermanent()) * N_PER_MM2_OF_KN_PER_M2 * areaMm2;
        return new ActionFactors(ONCE - notThereN / permanentN, withSnow ? 0 : ONCE, 0, withSnow ? ONCE : 0);
    }

    private static double largestNmm(Effects effects) {
        return effects.spans().stream()
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
