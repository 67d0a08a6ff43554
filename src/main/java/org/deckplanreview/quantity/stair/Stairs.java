package org.deckplanreview.quantity.stair;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.EdgeFrame;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.Handrails;
import org.deckplanreview.submission.Stair;
import org.deckplanreview.submission.StairSides;
import org.deckplanreview.submission.SubjectKind;

/** What makes a stair safe to walk on. */
public final class Stairs {
    private static final Formula FLIGHT = Formula.of("H = n * R", MeasureUnit.MILLIMETRE, "");
    private static final Formula TWICE_RISE_PLUS_GOING = Formula.of("s = 2 * R + G", MeasureUnit.MILLIMETRE, "");
    private static final Formula MISSED_CLIMB = Formula.of("Δh = max(H, h) - min(H, h)", MeasureUnit.MILLIMETRE, "");
    private static final Formula LENGTH_OVER_WIDTH = Formula.of("k = l / w", MeasureUnit.RATIO, "");

    private static final List<SubjectKind> STAIRS = List.of(SubjectKind.STAIRS);
    private static final String RISE = "R";
    private static final String GOING = "G";

    private Stairs() {}

    public static List<Quantity> quantities() {
        return List.of(
                length("stair rise", "The height of each riser.", stair -> {
                    Sheet w = Sheet.blank();
                    return found(writeRise(w, stair), MeasureUnit.MILLIMETRE, "", w);
                }),
                length("stair going", "The depth of each tread in plan, from nosing to nosing.", stair -> {
                    Sheet w = Sheet.blank();
                    return found(writeGoing(w, stair), MeasureUnit.MILLIMETRE, "", w);
                }),
                number(
                        "stair pitch",
                        MeasureUnit.DEGREE,
                        StairRun.class,
                        STAIRS,
                        "The angle between the horizontal and the line through the nosings.",
                        (stair, context) -> Observations.number(
                                "θ",
                                stair.pitchDegrees(),
                                MeasureUnit.DEGREE,
                                "pitch, from rise and going",
                                "",
                                stair.pointer().child("rise"),
                                stair.pointer().child("going"))),
                length(
                        "twice rise plus going",
                        "Twice the rise plus the going, which goes with the length of a step.",
                        Stairs::twiceRisePlusGoing),
                number(
                        "risers in a flight",
                        MeasureUnit.RATIO,
                        StairRun.class,
                        STAIRS,
                        "How many risers the flight has.",
                        (stair, context) -> Observations.number(
                                "n",
                                stair.stair().risers(),
                                MeasureUnit.RATIO,
                                "risers",
                                "",
                                stair.pointer().child("risers"))),
                length("rise of flight", "The height of the whole flight: its risers times their rise.", stair -> {
                    Sheet w = Sheet.blank();
                    return found(writeFlight(w, stair), MeasureUnit.MILLIMETRE, "", w);
                }),
                number(
                        "difference between risers and climb",
                        MeasureUnit.MILLIMETRE,
                        StairRun.class,
                        STAIRS,
                        "How far the risers together miss the height from the foot of the stair to the boards, and so how"
                                + " much one riser differs from the others.",
                        Stairs::missedClimb),
                length(
                        "difference between risers",
                        "The largest difference in height between any two risers of the flight.",
                        stair -> Observations.length(
                                stair.stair().largestRiseDifference(),
                                "ΔR",
                                "the largest difference between two risers of " + stair.label(),
                                stair.pointer().child("largestRiseDifference"))),
                length(
                        "stair width",
                        "The width of the stair, which is the length of its line on the outline.",
                        stair -> Observations.number(
                                "w",
                                stair.widthMm(),
                                MeasureUnit.MILLIMETRE,
                                "width of the stair",
                                "",
                                stair.pointer().child("line"))),
                length(
                        "headroom",
                        "The clear height above the line through the nosings, where anything stands above the stair.",
                        stair -> stair.stair().headroom().isPresent()
                                ? Observations.length(
                                        stair.stair().headroom(),
                                        "h_head",
                                        "the headroom over " + stair.label(),
                                        stair.pointer().child("headroom"))
                                : Observations.notApplicable("nothing is said to stand above the stair")),
                flag(
                        "frame at the head",
                        StairRun.class,
                        STAIRS,
                        "Whether beams or joists of the deck lie at the head of the stair over its whole width, so that something"
                                + " holds it.",
                        Stairs::frameAtHead),
                flag(
                        "open risers",
                        StairRun.class,
                        STAIRS,
                        "Whether one can see through between the treads.",
                        (stair, context) -> Observations.flag(
                                stair.stair().openRisers(),
                                stair.pointer().child("openRisers"),
                                "whether the risers of " + stair.label() + " are open")),
                length(
                        "tread overlap",
                        "How far each tread of a stair with open risers reaches over the one below it.",
                        stair -> ifOpen(
                                stair,
                                s -> Observations.length(
                                        s.treadOverlap(),
                                        "o",
                                        "how far the treads of " + stair.label() + " overlap",
                                        stair.pointer().child("treadOverlap")))),
                length(
                        "riser opening",
                        "The smaller side of the opening between two treads, and so the sphere that just passes.",
                        stair -> ifOpen(
                                stair,
                                s -> Observations.length(
                                        s.riserOpening(),
                                        "d",
                                        "the opening between the treads of " + stair.label(),
                                        stair.pointer().child("riserOpening")))),
                word(
                        "handrail sides",
                        StairSides.values(),
                        StairRun.class,
                        STAIRS,
                        "On which sides the flight has a handrail.",
                        (stair, context) -> Observations.word(
                                stair.stair().handrails().map(Handrails::sides),
                                stair.pointer().child("handrails"),
                                "the handrails of " + stair.label() + ": none, on one side or on both")),
                length(
                        "handrail height",
                        "The height of the handrail above the line through the nosings.",
                        Stairs::handrailHeight),
                landing("top landing to width", "at the top", "topLanding", Stair::topLanding),
                landing("bottom landing to width", "at the bottom", "bottomLanding", Stair::bottomLanding),
                landingLength("top landing", "at the top", "topLanding", Stair::topLanding),
                landingLength("bottom landing", "at the bottom", "bottomLanding", Stair::bottomLanding),
                length(
                        "nosing",
                        "How far each tread's nosing projects beyond the riser below it; 0 without a nosing.",
                        stair -> Observations.length(
                                stair.stair().nosing(),
                                "n",
                                "how far the nosings of " + stair.label() + " project, 0 for none",
                                stair.pointer().child("nosing"))),
                word(
                        "guarded sides of flight",
                        StairSides.values(),
                        StairRun.class,
                        STAIRS,
                        "On which sides the flight has a guard or a wall; none where no guard is named and nothing else is said.",
                        Stairs::guardedSides),
                flag(
                        "flight guard present",
                        StairRun.class,
                        STAIRS,
                        "Whether a guard stands beside the flight.",
                        (stair, context) -> Observations.flag(
                                stair.guard().isPresent(),
                                stair.guard().map(Guard::displayLabel).orElse("no guard"))),
                ofGuard(
                        "flight guard height",
                        "The height of the guard beside the flight above the line through the nosings.",
                        "height",
                        "height",
                        Guard::height),
                ofGuard(
                        "opening in flight guard",
                        "The smaller side of the largest opening in the guard beside the flight.",
                        "largestOpening",
                        "largest opening",
                        Guard::largestOpening),
                length(
                        "triangle under flight guard",
                        "The smaller side of the largest triangle between riser, tread and the bottom rail of the guard beside the"
                                + " flight, and so the sphere that just passes.",
                        Stairs::triangle));
    }

    private static Observation frameAtHead(StairRun stair, ReviewContext context) {
        PlatformLayout platform = context.layout().platforms().get(stair.platformIndex());
        EdgeFrame frame = EdgeFrame.of(platform);
        boolean reaches = frame.reaches(stair.stair().line());
        return !reaches && !frame.isCarried()
                ? Observations.missing(
                        platform.pointer().child("joists"),
                        "the joists of " + platform.label() + " and what carries them, which hold the stair")
                : Observations.flag(reaches, "");
    }

    private static Observation guardedSides(StairRun stair, ReviewContext context) {
        return stair.guard().isEmpty() && stair.stair().guardedSides().isEmpty()
                ? Observations.word(StairSides.NONE, "no guard")
                : Observations.word(
                        stair.stair().guardedSides(),
                        stair.pointer().child("guardedSides"),
                        "on which sides " + stair.label() + " has a guard or a wall: none, one or both");
    }

    private static Observation triangle(StairRun stair) {
        return stair.guard().isEmpty()
                ? Observations.notApplicable("no guard stands beside the flight")
                : Observations.length(
                        stair.stair().guardTriangle(),
                        "d",
                        "the triangle between steps and bottom rail of the guard beside " + stair.label(),
                        stair.pointer().child("guardTriangle"));
    }

    private static Quantity landingLength(
            String name, String where, String member, Function<Stair, Optional<Length>> landing) {
        return length(
                name,
                "The length of the landing " + where + " in the direction of travel.",
                stair -> Observations.length(
                        landing.apply(stair.stair()),
                        "l",
                        "the length of the landing " + where + " of " + stair.label(),
                        stair.pointer().child(member)));
    }

    private static Quantity length(String name, String definition, Function<StairRun, Observation> observing) {
        return number(
                name,
                MeasureUnit.MILLIMETRE,
                StairRun.class,
                STAIRS,
                definition,
                (stair, context) -> observing.apply(stair));
    }

    private static double writeRise(Sheet w, StairRun stair) {
        return w.given(
                RISE,
                stair.stair().rise().mm(),
                MeasureUnit.MILLIMETRE,
                "rise",
                "",
                stair.pointer().child("rise"));
    }

    private static double writeGoing(Sheet w, StairRun stair) {
        return w.given(
                GOING,
                stair.stair().going().mm(),
                MeasureUnit.MILLIMETRE,
                "going",
                "",
                stair.pointer().child("going"));
    }

    private static double writeFlight(Sheet w, StairRun stair) {
        double n = w.given(
                "n",
                stair.stair().risers(),
                MeasureUnit.RATIO,
                "risers",
                "",
                stair.pointer().child("risers"));
        writeRise(w, stair);
        return w.calculate(FLIGHT);
    }

    private static Observation twiceRisePlusGoing(StairRun stair) {
        Sheet w = Sheet.blank();
        writeRise(w, stair);
        writeGoing(w, stair);
        return found(w.calculate(TWICE_RISE_PLUS_GOING), MeasureUnit.MILLIMETRE, "", w);
    }

    private static Observation missedClimb(StairRun stair, ReviewContext context) {
        if (!stair.climbMm().isKnown()) {
            return Observations.missing(stair.climbMm().needs());
        }
        Sheet w = Sheet.blank();
        double flight = writeFlight(w, stair);
        double climb = w.given(
                "h",
                stair.climbMm().get(),
                MeasureUnit.MILLIMETRE,
                "height from the foot of the stair to the boards, from the levels",
                "",
                stair.pointer().child("footLevel"));
        double missed = w.calculate(MISSED_CLIMB);
        String remark = "risers together " + context.written(Measure.mm(flight)) + ", climb "
                + context.written(Measure.mm(climb));
        return found(missed, MeasureUnit.MILLIMETRE, remark, w);
    }

    private static Observation handrailHeight(StairRun stair) {
        Optional<Handrails> rails = stair.stair().handrails();
        if (rails.filter(r -> r.sides() == StairSides.NONE).isPresent()) {
            return Observations.notApplicable("the flight has no handrail");
        }
        return Observations.length(
                rails.flatMap(Handrails::height),
                "h_rail",
                "the height of the handrails of " + stair.label(),
                rails.isPresent()
                        ? stair.pointer().child("handrails").child("height")
                        : stair.pointer().child("handrails"));
    }

    private static Quantity landing(
            String name, String where, String member, Function<Stair, Optional<Length>> landing) {
        return number(
                name,
                MeasureUnit.RATIO,
                StairRun.class,
                STAIRS,
                "The length of the landing " + where + " in the direction of travel, over the width of the stair.",
                (stair, context) -> landing.apply(stair.stair())
                        .map(l -> {
                            Sheet w = Sheet.blank();
                            double length = w.given(
                                    "l",
                                    l.mm(),
                                    MeasureUnit.MILLIMETRE,
                                    "length of the landing " + where,
                                    "",
                                    stair.pointer().child(member));
                            double width = w.given(
                                    "w",
                                    stair.widthMm(),
                                    MeasureUnit.MILLIMETRE,
                                    "width of the stair",
                                    "",
                                    stair.pointer().child("line"));
                            return found(w.calculate(LENGTH_OVER_WIDTH), MeasureUnit.RATIO, "", w);
                        })
                        .orElseGet(() -> Observations.missing(
                                stair.pointer().child(member),
                                "the length of the landing " + where + " of " + stair.label() + ", a length")));
    }

    private static Observation ifOpen(StairRun stair, Function<Stair, Observation> observing) {
        return stair.stair().openRisers().filter(open -> !open).isPresent()
                ? Observations.notApplicable("the risers are closed")
                : observing.apply(stair.stair());
    }

    private static Quantity ofGuard(
            String name, String definition, String member, String what, Function<Guard, Optional<Length>> length) {
        return number(
                name,
                MeasureUnit.MILLIMETRE,
                StairRun.class,
                STAIRS,
                definition,
                (stair, context) -> stair.guard()
                        .map(guard -> Observations.length(
                                length.apply(guard),
                                "l_guard",
                                "the " + what + " of " + guard.displayLabel(),
                                guardPointer(context.layout().platformOf(stair), guard)
                                        .child(member)))
                        .orElseGet(() -> Observations.notApplicable("no guard stands beside the flight")));
    }

    private static Pointer guardPointer(PlatformLayout platform, Guard guard) {
        return platform.pointer()
                .child("guards")
                .child(platform.platform().guards().indexOf(guard));
    }

    private static Observation found(double value, MeasureUnit unit, String remark, Sheet working) {
        return new Observation.Found(Measure.of(value, unit), remark, working.steps());
    }
}
