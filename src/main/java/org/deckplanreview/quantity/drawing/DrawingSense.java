package org.deckplanreview.quantity.drawing;

import static org.deckplanreview.quantity.DescribedQuantity.number;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BeamLine;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.Deck;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.LedgerLine;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.layout.TimberPiece;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.submission.HeavyItem;
import org.deckplanreview.submission.HeavyItemKind;
import org.deckplanreview.submission.Joint;
import org.deckplanreview.submission.JoistField;
import org.deckplanreview.submission.Ledger;
import org.deckplanreview.submission.LedgerFixings;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Platform;
import org.deckplanreview.submission.Strings;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;

/** Whether what a submission states can be: sections, resistances and weights as nature and mills have them. */
public final class DrawingSense {
    private static final Formula DEPTH_OVER_BREADTH = Formula.of("r = h / b", MeasureUnit.RATIO, "");
    private static final Formula SECTION = Formula.of("A = b * h", MeasureUnit.SQUARE_MILLIMETRE, "");
    private static final Formula BEARING_AREA = Formula.of("A = d * t", MeasureUnit.SQUARE_MILLIMETRE, "");
    private static final Formula STRESS = Formula.of("f = R / A", MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, "");
    private static final Formula LEVER_OVER_HEIGHT = Formula.of("r = a / h", MeasureUnit.RATIO, "");
    private static final Formula FOOT = Formula.of("f = h - b", MeasureUnit.MILLIMETRE, "");
    private static final Formula LOAD_ON_AREA = Formula.of("q = W / A", MeasureUnit.KILONEWTON_PER_SQUARE_METRE, "");

    private static final List<SubjectKind> TIMBERS =
            List.of(SubjectKind.BOARDS, SubjectKind.JOISTS, SubjectKind.BEAMS, SubjectKind.LEDGERS, SubjectKind.POSTS);
    private static final List<SubjectKind> THAT_RESIST = List.of(
            SubjectKind.JOISTS,
            SubjectKind.BEAMS,
            SubjectKind.LEDGERS,
            SubjectKind.POSTS,
            SubjectKind.GUARDS,
            SubjectKind.STAIRS,
            SubjectKind.BRACES);
    private static final Pointer HEAVY_ITEMS = Pointer.of("/use/heavyItems");

    private DrawingSense() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "depth over breadth",
                        MeasureUnit.RATIO,
                        TimberPiece.class,
                        TIMBERS,
                        "The depth of the section over its breadth; of a board, its thickness over its width.",
                        (piece, context) -> depthOverBreadth(piece, context)),
                number(
                        "largest stated resistance",
                        MeasureUnit.KILONEWTON,
                        Subject.class,
                        THAT_RESIST,
                        "The largest of the resistances that the submission states for the fixings, hangers and ties of the piece.",
                        DrawingSense::largestResistance),
                number(
                        "hanger resistance over joist section",
                        MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE,
                        JoistLine.class,
                        List.of(SubjectKind.JOISTS),
                        "The stated resistance of one joist hanger over the joist's section, and so the mean shear stress in a"
                                + " joist that would use it up.",
                        DrawingSense::hangerStress),
                number(
                        "ledger fixing resistance over its bearing",
                        MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE,
                        LedgerLine.class,
                        List.of(SubjectKind.LEDGERS),
                        "The stated resistance of one fixing over its diameter times the ledger's breadth, and so the stress"
                                + " under its shank in a ledger that would use it up.",
                        DrawingSense::bearingStress),
                number(
                        "tensile strength of fasteners",
                        MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE,
                        BeamLine.class,
                        List.of(SubjectKind.BEAMS),
                        "The stated strength of the steel of the bolts or screws at the beam's posts.",
                        (beam, context) -> described(beam, context)
                                .flatMap(Beam::joint)
                                .flatMap(Joint::tensileStrength)
                                .map(f -> Observations.number(
                                        "f_u",
                                        f.in(MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE),
                                        MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE,
                                        "tensile strength of the steel",
                                        "",
                                        beam.pointer().child("joint").child("tensileStrength")))
                                .orElseGet(() -> Observations.notApplicable("no strength of steel is stated"))),
                number(
                        "lever arm over depth of frame",
                        MeasureUnit.RATIO,
                        GuardRun.class,
                        List.of(SubjectKind.GUARDS),
                        "The distance between the two fixings of the guard's posts over the depth of the deepest piece of the"
                                + " frame that they can be fixed to.",
                        DrawingSense::leverArm),
                number(
                        "foot of brace above ground",
                        MeasureUnit.MILLIMETRE,
                        BraceLine.class,
                        List.of(SubjectKind.BRACES),
                        "The height at which the brace meets its post, above the ground or the top of the post's pad.",
                        DrawingSense::braceFoot),
                number(
                        "foot of stair off the ground",
                        MeasureUnit.MILLIMETRE,
                        StairRun.class,
                        List.of(SubjectKind.STAIRS),
                        "How far the level on which the lowest riser stands lies above or below the ground, or the boards of a"
                                + " platform, at that place.",
                        (stair, context) -> Observations.derived(
                                stair.footOffGroundMm(),
                                "e",
                                MeasureUnit.MILLIMETRE,
                                "distance in height of the stair's foot from what it stands on")),
                number(
                        "least load of spa baths",
                        MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                        Deck.class,
                        List.of(SubjectKind.DECK),
                        "The smallest weight over its own area of any spa bath on the deck.",
                        (deck, context) -> leastLoad(HeavyItemKind.SPA_BATH, "spa bath", context)),
                number(
                        "least load of planters",
                        MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                        Deck.class,
                        List.of(SubjectKind.DECK),
                        "The smallest weight over its own area of any planter on the deck.",
                        (deck, context) -> leastLoad(HeavyItemKind.PLANTER, "planter", context)));
    }

    private static Observation depthOverBreadth(TimberPiece piece, ReviewContext context) {
        Pointer at = context.submission().timberPointer(piece.timber().id());
        Sheet w = Sheet.blank();
        double h = w.given(
                "h",
                piece.timber().depth().mm(),
                MeasureUnit.MILLIMETRE,
                "depth of the section",
                "",
                at.child("depth"));
        double b = w.given(
                "b",
                piece.timber().breadth().mm(),
                MeasureUnit.MILLIMETRE,
                "breadth of the section",
                "",
                at.child("breadth"));
        return Observations.found(w.calculate(DEPTH_OVER_BREADTH), MeasureUnit.RATIO, w);
    }

    /** A resistance as stated, and where. */
    private record Resistance(Measure stated, Pointer at) {
        double kilonewtons() {
            return stated.in(MeasureUnit.KILONEWTON);
        }
    }

    private static Stream<Resistance> resistance(Optional<Measure> stated, Pointer at) {
        return stated.map(m -> new Resistance(m, at)).stream();
    }

    private static Observation largestResistance(Subject subject, ReviewContext context) {
        return resistances(subject, context)
                .max(Comparator.comparingDouble(Resistance::kilonewtons))
                .map(r -> Observations.number(
                        "R", r.kilonewtons(), MeasureUnit.KILONEWTON, "resistance as stated", "", r.at()))
                .orElseGet(() -> Observations.notApplicable("no resistance is stated"));
    }

    private static Stream<Resistance> resistances(Subject subject, ReviewContext context) {
        if (subject instanceof JoistLine joist) {
            Optional<JoistField> field = platform(joist, context).joists();
            Pointer at = context.layout().platformOf(joist).pointer().child("joists");
            return Stream.concat(
                    resistance(field.flatMap(JoistField::hangerResistance), at.child("hangerResistance")),
                    resistance(field.flatMap(JoistField::holdDownResistance), at.child("holdDownResistance")));
        }
        if (subject instanceof BeamLine beam) {
            return resistance(
                    described(beam, context).flatMap(Beam::holdDownResistance),
                    beam.pointer().child("holdDownResistance"));
        }
        if (subject instanceof LedgerLine ledger) {
            return ofLedger(ledger, context);
        }
        if (subject instanceof PostPlace post) {
            return resistance(post.post().holdDownResistance(), post.pointer().child("holdDownResistance"));
        }
        if (subject instanceof GuardRun guard) {
            return resistance(
                    guard.guard().posts().flatMap(GuardPosts::fixingResistance),
                    guard.pointer().child("posts").child("fixingResistance"));
        }
        if (subject instanceof StairRun stair) {
            return resistance(
                    stair.stair().strings().flatMap(Strings::headResistance),
                    stair.pointer().child("strings").child("headResistance"));
        }
        BraceLine brace = (BraceLine) subject;
        return resistance(brace.brace().fixingResistance(), brace.pointer().child("fixingResistance"));
    }

    private static Stream<Resistance> ofLedger(LedgerLine ledger, ReviewContext context) {
        Optional<Ledger> described = platform(ledger, context).ledger();
        Optional<LedgerFixings> fixings = described.flatMap(Ledger::fixings);
        Pointer at = ledger.pointer().child("fixings");
        List<Resistance> all = new ArrayList<>();
        resistance(fixings.flatMap(LedgerFixings::resistance), at.child("resistance"))
                .forEach(all::add);
        resistance(fixings.flatMap(LedgerFixings::tensionResistance), at.child("tensionResistance"))
                .forEach(all::add);
        described.ifPresent(l -> {
            for (int i = 0; i < l.lateralConnections().size(); i++) {
                all.add(new Resistance(
                        l.lateralConnections().get(i).capacity(),
                        ledger.pointer().child("lateralConnections").child(i).child("capacity")));
            }
        });
        return all.stream();
    }

    private static Observation hangerStress(JoistLine joist, ReviewContext context) {
        Optional<Measure> stated = platform(joist, context).joists().flatMap(JoistField::hangerResistance);
        if (stated.isEmpty()) {
            return Observations.notApplicable("no resistance of hangers is stated");
        }
        return stress(
                stated.get(),
                context.layout().platformOf(joist).pointer().child("joists").child("hangerResistance"),
                "resistance of one hanger",
                w -> {
                    double b = w.given(
                            "b", joist.timber().breadth().mm(), MeasureUnit.MILLIMETRE, "breadth of the joist", "");
                    double h =
                            w.given("h", joist.timber().depth().mm(), MeasureUnit.MILLIMETRE, "depth of the joist", "");
                    return w.calculate(SECTION);
                });
    }

    private static Observation bearingStress(LedgerLine ledger, ReviewContext context) {
        Optional<LedgerFixings> fixings = platform(ledger, context).ledger().flatMap(Ledger::fixings);
        Optional<Measure> stated = fixings.flatMap(LedgerFixings::resistance);
        Optional<Length> diameter = fixings.flatMap(LedgerFixings::diameter);
        Pointer at = ledger.pointer().child("fixings");
        if (stated.isEmpty()) {
            return Observations.notApplicable("no resistance of the fixings is stated");
        }
        if (diameter.isEmpty()) {
            return Observations.missing(at.child("diameter"), "the diameter of the ledger's fixings, a length");
        }
        return stress(stated.get(), at.child("resistance"), "resistance of one fixing", w -> {
            double d = w.given(
                    "d",
                    diameter.get().mm(),
                    MeasureUnit.MILLIMETRE,
                    "diameter of the fixings",
                    "",
                    at.child("diameter"));
            double t =
                    w.given("t", ledger.timber().breadth().mm(), MeasureUnit.MILLIMETRE, "breadth of the ledger", "");
            return w.calculate(BEARING_AREA);
        });
    }

    private static Observation stress(Measure stated, Pointer at, String what, Function<Sheet, Double> areaMm2) {
        Sheet w = Sheet.blank();
        w.given("R", stated.in(MeasureUnit.NEWTON_), MeasureUnit.NEWTON_, what, "", at);
        double area = areaMm2.apply(w);
        return Observations.found(w.calculate(STRESS), MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE, w);
    }

    private static Observation leverArm(GuardRun guard, ReviewContext context) {
        Optional<Length> arm = guard.guard().posts().flatMap(GuardPosts::leverArm);
        Platform platform = platform(guard, context);
        OptionalDouble deepest = Stream.of(
                        platform.joists().stream().map(JoistField::timber),
                        platform.beams().stream().map(Beam::timber),
                        platform.ledger().stream().map(Ledger::timber))
                .flatMap(s -> s)
                .map(context.submission()::timber)
                .map(Timber::depth)
                .mapToDouble(Length::mm)
                .max();
        if (arm.isEmpty() || deepest.isEmpty()) {
            return Observations.notApplicable("no lever arm, or no frame, is described");
        }
        Sheet w = Sheet.blank();
        double a = w.given(
                "a",
                arm.get().mm(),
                MeasureUnit.MILLIMETRE,
                "distance between the two fixings of a post",
                "",
                guard.pointer().child("posts").child("leverArm"));
        double h = w.given(
                "h", deepest.getAsDouble(), MeasureUnit.MILLIMETRE, "depth of the deepest joist, beam or ledger", "");
        return Observations.found(w.calculate(LEVER_OVER_HEIGHT), MeasureUnit.RATIO, w);
    }

    private static Observation braceFoot(BraceLine brace, ReviewContext context) {
        Optional<PostPlace> post = context.layout().platformOf(brace).posts().stream()
                .filter(p -> p.id().equals(brace.brace().post()))
                .findFirst();
        Derived<Double> height = post.map(PostPlace::heightMm)
                .orElseGet(() -> Derived.missing(brace.pointer().child("post"), "the post that the brace holds"));
        if (!height.isKnown()) {
            return Observations.missing(height.needs());
        }
        Sheet w = Sheet.blank();
        double h = w.given("h", height.get(), MeasureUnit.MILLIMETRE, "height of the post above ground or pad", "");
        double below = w.given(
                "b",
                brace.brace().below().mm(),
                MeasureUnit.MILLIMETRE,
                "from the post's upper end down to the brace",
                "",
                brace.pointer().child("below"));
        return Observations.found(w.calculate(FOOT), MeasureUnit.MILLIMETRE, w);
    }

    private static Observation leastLoad(HeavyItemKind kind, String what, ReviewContext context) {
        List<HeavyItem> items = context.submission().use().heavyItems();
        Optional<Observation> least = Optional.empty();
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < items.size(); i++) {
            HeavyItem item = items.get(i);
            double load = item.weight().in(MeasureUnit.KILONEWTON) / areaM2(item.outline());
            if (item.kind().filter(kind::equals).isPresent() && load < smallest) {
                smallest = load;
                Sheet w = Sheet.blank();
                double weight = w.given(
                        "W",
                        item.weight().in(MeasureUnit.KILONEWTON),
                        MeasureUnit.KILONEWTON,
                        "weight of " + item.label().orElse(item.id()),
                        "",
                        HEAVY_ITEMS.child(i).child("weight"));
                double area = w.given(
                        "A",
                        areaM2(item.outline()),
                        MeasureUnit.SQUARE_METRE_,
                        "area that it stands on",
                        "",
                        HEAVY_ITEMS.child(i).child("outline"));
                least = Optional.of(
                        Observations.found(w.calculate(LOAD_ON_AREA), MeasureUnit.KILONEWTON_PER_SQUARE_METRE, w));
            }
        }
        return least.orElseGet(() -> Observations.notApplicable("no " + what + " stands on the deck"));
    }

    private static double areaM2(List<PlanPoint> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            PlanPoint a = outline.get(i);
            PlanPoint b = outline.get((i + 1) % outline.size());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        return MeasureUnit.SQUARE_MILLIMETRE.convert(Math.abs(twice) / 2, MeasureUnit.SQUARE_METRE_);
    }

    private static Platform platform(Subject subject, ReviewContext context) {
        return context.layout().platformOf(subject).platform();
    }

    private static Optional<Beam> described(BeamLine beam, ReviewContext context) {
        return platform(beam, context).beams().stream()
                .filter(b -> b.id().equals(beam.id()))
                .findFirst();
    }
}
