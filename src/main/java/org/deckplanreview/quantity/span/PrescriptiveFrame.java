package org.deckplanreview.quantity.span;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BoardField;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Span;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.layout.TimberPiece;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.quantity.connection.Connections;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.BeamSeating;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.LedgerFixings;
import org.deckplanreview.submission.PlanLine;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Tolerances;

/** What prescriptive rules for decks ask of one part of the frame by what another one is. */
public final class PrescriptiveFrame {
    private static final Formula BEYOND_POST = Formula.of("a = n * b - h_post", MeasureUnit.MILLIMETRE, "");
    private static final Formula THICKNESS_AND_GAP = Formula.of("a = t + g", MeasureUnit.MILLIMETRE, "");
    private static final Formula BELOW_FROST = Formula.of("a = d - d_frost", MeasureUnit.MILLIMETRE, "");

    private static final List<SubjectKind> BEAMS = List.of(SubjectKind.BEAMS);
    private static final List<SubjectKind> POSTS = List.of(SubjectKind.POSTS);
    private static final List<SubjectKind> FOOTINGS = List.of(SubjectKind.FOOTINGS);
    private static final List<SubjectKind> POSTS_AND_FOOTINGS = List.of(SubjectKind.POSTS, SubjectKind.FOOTINGS);

    private PrescriptiveFrame() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "beam span at post",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        POSTS_AND_FOOTINGS,
                        "The largest span of a beam beside the post, or beside the posts on the footing, from centre to centre of"
                                + " posts.",
                        (subject, context) -> largest(subject, context, PrescriptiveFrame::beamSpan)),
                number(
                        "joist span at post",
                        MeasureUnit.MILLIMETRE,
                        Subject.class,
                        POSTS_AND_FOOTINGS,
                        "The largest span of the joists on the beams that the post, or the posts on the footing, carry.",
                        (subject, context) ->
                                largest(subject, context, (post, beam) -> Spans.joistSpanCarried(beam, context))),
                number(
                        "plies carried",
                        MeasureUnit.RATIO,
                        PostPlace.class,
                        POSTS,
                        "The largest number of plies of a beam that the post carries.",
                        (post, context) -> largest(post, context, (p, beam) -> plies(beam))),
                number(
                        "joists under boards",
                        MeasureUnit.RATIO,
                        BoardField.class,
                        List.of(SubjectKind.BOARDS),
                        "The number of joists side by side under the boards; with two of them boards have a single span.",
                        PrescriptiveFrame::joistsUnder),
                number(
                        "beam depth over joist depth",
                        MeasureUnit.RATIO,
                        BeamLine.class,
                        BEAMS,
                        "The depth of a beam that joists hang on over the depth of the joists.",
                        PrescriptiveFrame::depthOverJoists),
                number(
                        "beam beyond post",
                        MeasureUnit.MILLIMETRE,
                        BeamLine.class,
                        BEAMS,
                        "How much broader the plies of a beam that rests on its posts are together than the narrowest of them;"
                                + " negative where the post is broader.",
                        PrescriptiveFrame::beyondPost),
                number(
                        "least bearing at ply joints",
                        MeasureUnit.MILLIMETRE,
                        BeamLine.class,
                        BEAMS,
                        "The shortest length of a ply on a post beside one of the joints in the beam's plies; 0 where no post lies"
                                + " there.",
                        PrescriptiveFrame::bearingAtJoints),
                flag(
                        "joists held upright",
                        JoistLine.class,
                        List.of(SubjectKind.JOISTS),
                        "Whether hangers or blocking hold the joist against turning over at every support.",
                        PrescriptiveFrame::heldUpright),
                number(
                        "ledger depth over joist depth",
                        MeasureUnit.RATIO,
                        LedgerLine.class,
                        List.of(SubjectKind.LEDGERS),
                        "The depth of the ledger over that of the joists that hang on it.",
                        PrescriptiveFrame::ledgerOverJoists),
                flag(
                        "beam ends meet over posts",
                        BeamLine.class,
                        BEAMS,
                        "Whether a post of the beam stands under each of its ends at which another beam goes on.",
                        PrescriptiveFrame::endsOverPosts),
                number(
                        "ledger distance from band joist",
                        MeasureUnit.MILLIMETRE,
                        LedgerLine.class,
                        List.of(SubjectKind.LEDGERS),
                        "The distance between ledger and band joist: sheathing and air gap together.",
                        (ledger, context) -> Connections.ofFixings(ledger, context, PrescriptiveFrame::behindLedger)),
                number(
                        "footing depth below frost",
                        MeasureUnit.MILLIMETRE,
                        FootingPlace.class,
                        FOOTINGS,
                        "How far the footing's underside lies below the depth that frost reaches; negative where it lies above.",
                        PrescriptiveFrame::depthBelowFrost));
    }

    /** Whether the beam is not one of several pieces. */
    private static boolean isWhole(BeamLine beam, PlatformLayout platform) {
        return platform.beams().stream().filter(b -> b.id().equals(beam.id())).count() == 1;
    }

    private static Observation largest(Subject subject, ReviewContext context, OfBeam observing) {
        PlatformLayout platform = context.layout().platformOf(subject);
        List<PostPlace> posts = subject instanceof PostPlace post
                ? List.of(post)
                : platform.posts().stream()
                        .filter(p -> ((FootingPlace) subject).posts().contains(p.id()))
                        .toList();
        List<Observation> seen = new ArrayList<>();
        for (PostPlace post : posts) {
            platform.beams().stream()
                    .filter(beam -> post.beams().contains(beam.id()))
                    .filter(beam -> isWhole(beam, platform) || beam.restsOn(post))
                    .forEach(beam -> seen.add(observing.observe(post, beam)));
        }
        List<Need> needs = seen.stream()
                .flatMap(o -> o instanceof Observation.Missing m ? m.needs().stream() : Stream.empty())
                .distinct()
                .sorted()
                .toList();
        if (!needs.isEmpty()) {
            return Observations.missing(needs);
        }
        return seen.stream()
                .reduce((a, b) -> value(b) > value(a) ? b : a)
                .orElseGet(() -> Observations.missing(
                        platform.pointer().child("beams"),
                        subject instanceof PostPlace
                                ? "the beam that " + subject.label() + " carries"
                                : "a post that carries a beam and stands on " + subject.label()));
    }

    /** Finds a quantity of a beam at one of its posts; it never is not applicable. */
    private interface OfBeam {
        Observation observe(PostPlace post, BeamLine beam);
    }

    private static double value(Observation found) {
        return ((Measure) ((Observation.Found) found).value()).value();
    }

    private static Observation beamSpan(PostPlace post, BeamLine beam) {
        return beam.supports().stream()
                .filter(support -> support.id().equals(post.id()))
                .flatMap(support -> beam.beside(support).stream())
                .filter(span -> !span.isCantilever())
                .mapToDouble(Span::lengthMm)
                .max()
                .stream()
                .mapToObj(l -> Observations.number(
                        "l", l, MeasureUnit.MILLIMETRE, "span of the beam beside the post", "of " + beam.label()))
                .findFirst()
                .orElseGet(
                        () -> Observations.missing(beam.pointer().child("posts"), "two posts under " + beam.label()));
    }

    private static Observation plies(BeamLine beam) {
        return Observations.number(
                "n",
                beam.plies(),
                MeasureUnit.RATIO,
                "plies of the beam",
                "of " + beam.label(),
                beam.pointer().child("plies"));
    }

    private static Observation joistsUnder(BoardField boards, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(boards);
        return platform.joists().isEmpty()
                ? Observations.missing(platform.pointer().child("joists"), "the joists under " + boards.label())
                : Observations.number(
                        "n",
                        platform.joists().stream()
                                .mapToInt(j -> j.fieldSize())
                                .max()
                                .orElseThrow(),
                        MeasureUnit.RATIO,
                        "joists side by side",
                        "");
    }

    private static Observation depthOverJoists(BeamLine line, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(line);
        return described(line, context).joists() == JoistSeating.ON_TOP
                ? Observations.notApplicable("joists lie on top of the beam")
                : overJoists(line, platform, "h_beam", "depth of the beam");
    }

    private static Observation ledgerOverJoists(LedgerLine ledger, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(ledger);
        return platform.platform().ledger().orElseThrow().joists() == JoistSeating.ON_TOP
                ? Observations.notApplicable("joists lie on top of the ledger")
                : overJoists(ledger, platform, "h_ledger", "depth of the ledger");
    }

    private static Observation overJoists(TimberPiece carrier, PlatformLayout platform, String symbol, String meaning) {
        if (platform.joists().isEmpty()) {
            return Observations.missing(platform.pointer().child("joists"), "the joists on " + carrier.label());
        }
        Sheet w = Sheet.blank();
        w.given(symbol, carrier.timber().depth().mm(), MeasureUnit.MILLIMETRE, meaning, "");
        w.given(
                "h_joist",
                platform.joists().get(0).timber().depth().mm(),
                MeasureUnit.MILLIMETRE,
                "depth of the joists",
                "");
        double ratio = w.calculate(Formula.of("r = " + symbol + " / h_joist", MeasureUnit.RATIO, ""));
        return Observations.found(ratio, MeasureUnit.RATIO, w);
    }

    /** A post's breadth lies along the beam that it carries, and its depth across. */
    private static Observation beyondPost(BeamLine beam, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(beam);
        if (described(beam, context).seating() != BeamSeating.ON_POST) {
            return Observations.notApplicable("it is fixed to the sides of its posts");
        }
        Optional<PostPlace> narrowest = platform.posts().stream()
                .filter(p -> p.beams().contains(beam.id()))
                .min(Comparator.comparingDouble(p -> p.timber().depth().mm()));
        if (narrowest.isEmpty()) {
            return Observations.missing(beam.pointer().child("posts"), "two posts under " + beam.label());
        }
        Sheet w = Sheet.blank();
        double n = w.given(
                "n",
                beam.plies(),
                MeasureUnit.RATIO,
                "plies of the beam",
                "",
                beam.pointer().child("plies"));
        double b = w.given("b", beam.timber().breadth().mm(), MeasureUnit.MILLIMETRE, "breadth of a ply", "");
        w.given(
                "h_post",
                narrowest.get().timber().depth().mm(),
                MeasureUnit.MILLIMETRE,
                "side of the post across the beam",
                "");
        return Observations.found(w.calculate(BEYOND_POST), MeasureUnit.MILLIMETRE, w);
    }

    private static Observation bearingAtJoints(BeamLine beam, ReviewContext context) {
        List<Length> joints = described(beam, context).plyJoints();
        if (joints.isEmpty()) {
            return Observations.notApplicable("no joint in its plies is given");
        }
        if (beam.supports().isEmpty()) {
            return Observations.missing(beam.pointer().child("posts"), "two posts under " + beam.label());
        }
        PlanLine whole = described(beam, context).line();
        double least = Double.POSITIVE_INFINITY;
        if (!isNear(beam.line().from(), whole.from())) {
            least = bearingAtEnd(beam, 0);
        }
        if (!isNear(beam.line().to(), whole.to())) {
            least = Math.min(least, bearingAtEnd(beam, beam.lengthMm()));
        }
        return Observations.number(
                "l_b",
                least,
                MeasureUnit.MILLIMETRE,
                "shortest bearing of a ply beside a joint",
                "",
                beam.pointer().child("plyJoints"));
    }

    /** Of a piece of a beam on the post under its joint with the next piece; 0 where no post lies there. */
    private static double bearingAtEnd(BeamLine piece, double endMm) {
        return piece.supports().stream()
                .flatMapToDouble(s ->
                        s.contactLengthMm().stream().filter(contactMm -> Math.abs(endMm - s.atMm()) <= contactMm))
                .max()
                .orElse(0);
    }

    private static Observation heldUpright(JoistLine joist, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(joist);
        if (joist.supports().isEmpty()) {
            return Observations.missing(List.of(Spans.supportsMissing(joist, context)));
        }
        return joist.supports().stream().allMatch(s -> s.seating() == JoistSeating.HANGERS)
                ? Observations.flag(true, "hangers at every support")
                : Observations.flag(
                        platform.platform().joists().flatMap(JoistField::blocked),
                        platform.pointer().child("joists").child("blocked"),
                        "whether blocking, or a rim joist nailed to each joist, holds the joists upright where they rest on"
                                + " top of a beam or ledger");
    }

    private static Beam described(BeamLine line, ReviewContext context) {
        return context.layout().platformOf(line).platform().beams().stream()
                .filter(b -> b.id().equals(line.id()))
                .findFirst()
                .orElseThrow();
    }

    private static Observation endsOverPosts(BeamLine beam, ReviewContext context) {
        PlatformLayout platform = context.layout().platformOf(beam);
        List<PlanPoint> spliced = Stream.of(beam.line().from(), beam.line().to())
                .filter(end -> platform.beams().stream()
                        .filter(other -> other != beam)
                        .anyMatch(other -> isNear(end, other.line().from())
                                || isNear(end, other.line().to())))
                .toList();
        return spliced.isEmpty()
                ? Observations.notApplicable("no other beam goes on where the beam ends")
                : Observations.flag(
                        spliced.stream()
                                .allMatch(end -> platform.posts().stream()
                                        .filter(post -> post.beams().contains(beam.id()))
                                        .anyMatch(post -> stands(post, end))),
                        "");
    }

    private static boolean isNear(PlanPoint a, PlanPoint b) {
        return distance(a, b) <= Tolerances.OUTLINE_MM;
    }

    /** A post's breadth lies along the beam that it carries. */
    private static boolean stands(PostPlace post, PlanPoint under) {
        return distance(post.post().at(), under) <= post.timber().breadth().mm() / 2 + Tolerances.OUTLINE_MM;
    }

    private static double distance(PlanPoint a, PlanPoint b) {
        double dx = a.xMm() - b.xMm();
        double dy = a.yMm() - b.yMm();
        return Math.sqrt(dx * dx + dy * dy);
    }

    private static Observation behindLedger(LedgerFixings fixings, Pointer pointer) {
        Derived<Double> sheathing = Derived.of(
                        fixings.sheathing(),
                        pointer.child("sheathing"),
                        "the thickness of sheathing between ledger and band joist, 0 for none")
                .map(Length::mm);
        if (!sheathing.isKnown()) {
            return Observations.missing(sheathing.needs());
        }
        Sheet w = Sheet.blank();
        double t = w.given(
                "t", sheathing.get(), MeasureUnit.MILLIMETRE, "thickness of sheathing", "", pointer.child("sheathing"));
        double g = w.given(
                "g",
                fixings.gap().map(Length::mm).orElse(0.0),
                MeasureUnit.MILLIMETRE,
                "air gap, none where none is stated",
                "",
                pointer.child("gap"));
        return Observations.found(w.calculate(THICKNESS_AND_GAP), MeasureUnit.MILLIMETRE, w);
    }

    private static Observation depthBelowFrost(FootingPlace footing, ReviewContext context) {
        Derived<Double> depth = length(
                footing.footing().depth(),
                footing.pointer().child("depth"),
                "the depth of " + footing.label() + " from the ground to its underside");
        Derived<Double> frost = length(
                context.submission().site().frostDepth(),
                Pointer.of("/site/frostDepth"),
                "the depth that frost reaches, as the local authority states it");
        Derived<Observation> below = depth.with(frost, (d, f) -> belowFrost(d, f, footing));
        return below.isKnown() ? below.get() : Observations.missing(below.needs());
    }

    private static Derived<Double> length(Optional<Length> given, Pointer pointer, String what) {
        return Derived.of(given, pointer, what).map(Length::mm);
    }

    private static Observation belowFrost(double depthMm, double frostMm, FootingPlace footing) {
        Sheet w = Sheet.blank();
        double d = w.given(
                "d",
                depthMm,
                MeasureUnit.MILLIMETRE,
                "depth of the footing",
                "",
                footing.pointer().child("depth"));
        w.given(
                "d_frost",
                frostMm,
                MeasureUnit.MILLIMETRE,
                "depth that frost reaches",
                "",
                Pointer.of("/site/frostDepth"));
        return Observations.found(w.calculate(BELOW_FROST), MeasureUnit.MILLIMETRE, w);
    }
}
