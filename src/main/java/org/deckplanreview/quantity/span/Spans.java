package org.deckplanreview.quantity.span;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.JoistBearing;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.layout.MemberSupport;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.SubjectKind;

/** How far joists and beams span and overhang, as prescriptive span tables measure it. */
public final class Spans {
    private static final Formula OVERHANG_OVER_SPAN = Formula.of("r = a / l", MeasureUnit.RATIO, "");

    private static final List<SubjectKind> JOISTS = List.of(SubjectKind.JOISTS);
    private static final List<SubjectKind> BEAMS = List.of(SubjectKind.BEAMS);
    private static final List<SubjectKind> MEMBERS = List.of(SubjectKind.JOISTS, SubjectKind.BEAMS);
    private static final List<SubjectKind> CARRIERS = List.of(SubjectKind.BEAMS, SubjectKind.LEDGERS);

    private Spans() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "joist spacing",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        List.of(SubjectKind.BOARDS, SubjectKind.JOISTS),
                        "The spacing of the joists, centre to centre, as the design states it.",
                        Spans::spacing),
                number(
                        "angle of boards to joists",
                        MeasureUnit.DEGREE,
                        BoardField.class,
                        List.of(SubjectKind.BOARDS),
                        "The angle in plan between the boards' length and the joists, 0 to 90 degrees; 90 for boards square to"
                                + " the joists.",
                        Spans::angleToJoists),
                number(
                        "joist span",
                        MeasureUnit.MILLIMETRE,
                        JoistLine.class,
                        JOISTS,
                        "The largest span of the joist between the middle lines of its supports, or from its end where it hangs"
                                + " on a beam or ledger; overhangs left out.",
                        (joist, context) -> largestSpan(
                                joist,
                                "largest span of the joist between its supports",
                                supportsMissing(joist, context))),
                number(
                        "joist overhang",
                        MeasureUnit.MILLIMETRE,
                        JoistLine.class,
                        JOISTS,
                        "The largest length of joist beyond the middle line of its first or last support; 0 without one.",
                        Spans::overhang),
                number(
                        "span beside overhang",
                        MeasureUnit.MILLIMETRE,
                        JoistLine.class,
                        JOISTS,
                        "The span of the joist beside its overhang; where it overhangs at both ends, the longer of the two.",
                        Spans::spanBesideOverhang),
                number(
                        "beam span",
                        MeasureUnit.MILLIMETRE,
                        BeamLine.class,
                        BEAMS,
                        "The largest span of the beam, from centre to centre of its posts.",
                        (beam, context) -> largestSpan(
                                beam, "largest span of the beam between its posts", supportsMissing(beam, context))),
                number(
                        "beam overhang",
                        MeasureUnit.MILLIMETRE,
                        BeamLine.class,
                        BEAMS,
                        "The largest length of beam beyond the middle of its first or last post; 0 without one.",
                        Spans::overhang),
                number(
                        "overhang over adjacent span",
                        MeasureUnit.RATIO,
                        Member.class,
                        MEMBERS,
                        "The length that overhangs the first or last support over the actual span beside it, whichever end has"
                                + " more; 0 without an overhang.",
                        Spans::overhangOverSpan),
                number(
                        "joist span carried",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        CARRIERS,
                        "The largest span of the joists on the beam or ledger, beside it; where joists come from both sides, the"
                                + " larger of the two.",
                        Spans::joistSpanCarried),
                number(
                        "joist overhang over span carried",
                        MeasureUnit.RATIO,
                        BeamLine.class,
                        BEAMS,
                        "The overhang of a joist beyond the beam over the same joist's span beside it, of the joist that has"
                                + " most; 0 without an overhang.",
                        (beam, context) -> ofCarried(
                                beam,
                                context,
                                Comparator.comparingDouble(Carried::ratio),
                                Spans::overhangOverSpanCarried)),
                number(
                        "joist overhang carried",
                        MeasureUnit.MILLIMETRE,
                        BeamLine.class,
                        BEAMS,
                        "The overhang of a joist beyond the beam, of the joist that has most; 0 without an overhang.",
                        (beam, context) -> ofCarried(
                                beam,
                                context,
                                Comparator.comparingDouble(Carried::overhangMm),
                                carried -> Observations.number(
                                        "a",
                                        carried.overhangMm(),
                                        MeasureUnit.MILLIMETRE,
                                        "overhang of the joists beyond the beam",
                                        "by " + carried.joist().label()))),
                flag(
                        "joists from both sides",
                        BeamLine.class,
                        BEAMS,
                        "Whether joists span to the beam from both of its sides, other than by an overhang.",
                        Spans::fromBothSides),
                word(
                        "beam seating",
                        BeamSeating.values(),
                        BeamLine.class,
                        BEAMS,
                        "How the beam meets its posts: on their tops, in two parts at both sides, or at one side.",
                        (beam, context) ->
                                Observations.word(described(beam, context).seating(), "")),
                number(
                        "least bearing length",
                        MeasureUnit.MILLIMETRE,
                        Member.class,
                        MEMBERS,
                        "The shortest length over which the member lies on a support; supports by hangers or bolts are left out.",
                        Spans::bearing));
    }

    /** Of a beam or a ledger. */
    static Observation joistSpanCarried(Subject carrier, ReviewContext context) {
        return ofCarried(carrier, context, Comparator.comparingDouble(Carried::spanMm), Spans::spanCarried);
    }

    /** The width of deck that the joists bring to a beam from one side, their overhang with it. */
    static Observation widthFromOneSide(BeamLine beam, ReviewContext context) {
        return ofCarried(
                beam,
                context,
                Comparator.comparingDouble(Carried::broughtMm),
                carried -> Observations.number(
                        "b",
                        carried.broughtMm(),
                        MeasureUnit.MILLIMETRE,
                        "width of deck that joists bring from one side",
                        "by " + carried.joist().label()));
    }

    static Observation spacing(Subject subject, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(subject);
        Pointer joists = platform.pointer().child("joists");
        return Observations.length(
                platform.platform().joists().map(j -> j.spacing()),
                "s",
                "the spacing of the joists",
                platform.platform().joists().isPresent() ? joists.child("spacing") : joists);
    }

    private static Observation angleToJoists(BoardField boards, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(boards);
        return platform.platform()
                .joists()
                .map(j -> Observations.number(
                        "α",
                        boards.degreesTo(j.direction()),
                        MeasureUnit.DEGREE,
                        "angle between the boards and the joists",
                        "",
                        boards.pointer().child("direction")))
                .orElseGet(() ->
                        Observations.missing(platform.pointer().child("joists"), "the joists under " + boards.label()));
    }

    /** Of the joists, their beams; of a beam, its posts. */
    static Need supportsMissing(Member member, ReviewContext context) {
        return member instanceof BeamLine beam
                ? new Need(beam.pointer().child("posts"), "two posts under " + beam.label())
                : new Need(
                        context.layout().platformOf(member).pointer().child("beams"),
                        "two beams, or a beam and a ledger, under the joists of "
                                + context.layout().platformOf(member).label());
    }

    static Observation largestSpan(Member member, String meaning, Need need, Pointer... from) {
        OptionalDouble largest = member.spans().stream()
                .filter(s -> !s.isCantilever())
                .mapToDouble(Span::lengthMm)
                .max();
        return largest.isPresent()
                ? Observations.number("l", largest.getAsDouble(), MeasureUnit.MILLIMETRE, meaning, "", from)
                : Observations.missing(List.of(need));
    }

    private static Observation overhang(Member member, ReviewContext context) {
        return member.supports().isEmpty()
                ? Observations.missing(List.of(supportsMissing(member, context)))
                : Observations.number(
                        "a",
                        member.spans().stream()
                                .filter(Span::isCantilever)
                                .mapToDouble(Span::lengthMm)
                                .max()
                                .orElse(0),
                        MeasureUnit.MILLIMETRE,
                        "largest overhang",
                        "");
    }

    private static Observation spanBesideOverhang(JoistLine joist, ReviewContext context) {
        List<Span> spans = joist.spans();
        if (spans.stream().allMatch(Span::isCantilever)) {
            return Observations.missing(List.of(supportsMissing(joist, context)));
        }
        return IntStream.range(0, spans.size())
                .filter(k -> !spans.get(k).isCantilever())
                .filter(k -> k > 0 && spans.get(k - 1).isCantilever()
                        || k < spans.size() - 1 && spans.get(k + 1).isCantilever())
                .mapToDouble(k -> spans.get(k).lengthMm())
                .max()
                .stream()
                .mapToObj(l -> Observations.number(
                        "l", l, MeasureUnit.MILLIMETRE, "span of the joist beside its overhang", ""))
                .findFirst()
                .orElseGet(() -> Observations.notApplicable("the joist does not overhang a span"));
    }

    private static Observation overhangOverSpan(Member member, ReviewContext context) {
        List<Span> spans = member.spans();
        if (spans.stream().allMatch(Span::isCantilever)) {
            return Observations.missing(List.of(supportsMissing(member, context)));
        }
        Observation none = Observations.number("r", 0, MeasureUnit.RATIO, "overhang over the span beside it", "none");
        Observation start = spans.get(0).isCantilever() ? over(spans.get(0), spans.get(1)) : none;
        int last = spans.size() - 1;
        Observation end = spans.get(last).isCantilever() ? over(spans.get(last), spans.get(last - 1)) : none;
        return ratio(start) >= ratio(end) ? start : end;
    }

    private static Observation over(Span overhang, Span beside) {
        return over(overhang.lengthMm(), beside.lengthMm(), "");
    }

    private static Observation over(double overhangMm, double spanMm, String remark) {
        Sheet w = Sheet.blank();
        w.given("a", overhangMm, MeasureUnit.MILLIMETRE, "overhang", "");
        w.given("l", spanMm, MeasureUnit.MILLIMETRE, "span beside it", "");
        double r = w.calculate(OVERHANG_OVER_SPAN);
        return new Observation.Found(Measure.of(r, MeasureUnit.RATIO), remark, w.steps());
    }

    private static double ratio(Observation found) {
        return ((Measure) ((Observation.Found) found).value()).value();
    }

    /** A joist on a beam or ledger: its spans beside it, and its overhang beyond it. */
    private record Carried(JoistLine joist, List<Span> spans, double overhangMm) {

        static Optional<Carried> of(JoistLine joist, MemberSupport support) {
            List<Span> beside = joist.beside(support);
            List<Span> between = beside.stream().filter(s -> !s.isCantilever()).toList();
            return between.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Carried(
                            joist,
                            between,
                            longest(beside.stream().filter(Span::isCantilever).toList())));
        }

        double spanMm() {
            return longest(spans);
        }

        private static double longest(List<Span> spans) {
            return spans.stream().mapToDouble(Span::lengthMm).max().orElse(0);
        }

        double ratio() {
            return overhangMm / spanMm();
        }

        /** The width of deck that the joist brings to its carrier if it spans from one side, by simple statics. */
        double broughtMm() {
            return (spanMm() + overhangMm) * (spanMm() + overhangMm) / (2 * spanMm());
        }
    }

    private static Observation spanCarried(Carried carried) {
        return Observations.number(
                "l",
                carried.spanMm(),
                MeasureUnit.MILLIMETRE,
                "span of the joists beside what carries them",
                "by " + carried.joist().label());
    }

    private static Observation overhangOverSpanCarried(Carried carried) {
        return over(
                carried.overhangMm(), carried.spanMm(), "by " + carried.joist().label());
    }

    private static Observation fromBothSides(BeamLine beam, ReviewContext context) {
        List<Carried> all = carried(beam, context);
        return all.isEmpty()
                ? carriesNone(beam, context)
                : Observations.flag(spansOn(beam, all, true) && spansOn(beam, all, false), "");
    }

    private static boolean spansOn(BeamLine beam, List<Carried> joists, boolean left) {
        return joists.stream().anyMatch(c -> c.spans().stream().anyMatch(s -> beam.isLeft(c.joist(), s) == left));
    }

    /** The largest joist in an order, the first of those alike. */
    private static Observation ofCarried(
            Subject carrier,
            ReviewContext context,
            Comparator<Carried> order,
            Function<Carried, Observation> observing) {
        Optional<Carried> largest = Optional.empty();
        for (Carried next : carried(carrier, context)) {
            if (largest.isEmpty() || order.compare(next, largest.get()) > 0) {
                largest = Optional.of(next);
            }
        }
        return largest.map(observing).orElseGet(() -> carriesNone(carrier, context));
    }

    private static List<Carried> carried(Subject carrier, ReviewContext context) {
        List<JoistLine> joists = context.layout().platformOf(carrier).joists();
        return bearings(carrier).stream()
                .flatMap(bearing -> {
                    JoistLine joist = joists.get(bearing.joist());
                    return Carried.of(joist, joist.supports().get(bearing.joistSupport())).stream();
                })
                .toList();
    }

    private static Observation carriesNone(Subject carrier, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(carrier);
        return platform.joists().isEmpty()
                ? Observations.missing(
                        platform.pointer().child("joists"), "the joists: their timber, direction and spacing")
                : Observations.missing(
                        carrier.pointer().child("line"),
                        "a line of " + carrier.label() + " on which joists end that rest on another support too");
    }

    private static List<JoistBearing> bearings(Subject carrier) {
        return carrier instanceof LedgerLine ledger ? ledger.joists() : ((BeamLine) carrier).joists();
    }

    /** The beam as the submission gives it. */
    static Beam described(BeamLine line, ReviewContext context) {
        return context.layout().platformOf(line).platform().beams().stream()
                .filter(b -> b.id().equals(line.id()))
                .findFirst()
                .orElseThrow();
    }

    private static Observation bearing(Member member, ReviewContext context) {
        if (member.supports().isEmpty()) {
            return Observations.missing(List.of(supportsMissing(member, context)));
        }
        List<Need> needs = new ArrayList<>();
        Optional<MemberSupport> shortest = Optional.empty();
        for (MemberSupport s : member.supports()) {
            if (s.seating() == JoistSeating.HANGERS) {
                continue;
            }
            if (s.contactLengthMm().isEmpty()) {
                needs.add(bearingMissing(member, s));
            } else if (shortest.isEmpty() || contact(s) < contact(shortest.get())) {
                shortest = Optional.of(s);
            }
        }
        if (!needs.isEmpty()) {
            return Observations.missing(needs.stream().distinct().sorted().toList());
        }
        return shortest.map(s -> Observations.number(
                        "l_b",
                        contact(s),
                        MeasureUnit.MILLIMETRE,
                        "shortest length of bearing",
                        "on " + s.label(),
                        s.pointer()))
                .orElseGet(() -> Observations.notApplicable("hangers or bolts carry it at every support"));
    }

    private static double contact(MemberSupport support) {
        return support.contactLengthMm().orElseThrow();
    }

    private static Need bearingMissing(Member member, MemberSupport support) {
        return support.kind() == MemberSupport.Kind.LEDGER
                ? new Need(
                        support.pointer().child("bearingLength"),
                        "the length of joist that bears on " + support.label())
                : new Need(
                        member.pointer(),
                        "a drawing on which " + member.label() + " reaches over " + support.label()
                                + ", to tell the length of its bearing");
    }
}
