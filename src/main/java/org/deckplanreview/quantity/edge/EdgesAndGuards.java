package org.deckplanreview.quantity.edge;

import static org.deckplanreview.quantity.DescribedQuantity.flag;
import static org.deckplanreview.quantity.DescribedQuantity.number;
import static org.deckplanreview.quantity.DescribedQuantity.word;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Drop;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Observation;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.quantity.Observations;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.GuardInfill;
import org.deckplanreview.submission.SubjectKind;

/** What keeps people from falling over an edge. */
public final class EdgesAndGuards {
    private static final Formula HEIGHT_ABOVE_STANDING =
            Formula.of("h = max(h_guard - h_stand, 0)", MeasureUnit.MILLIMETRE, "");

    private static final List<SubjectKind> EDGES = List.of(SubjectKind.EDGES);

    private EdgesAndGuards() {}

    public static List<Quantity> quantities() {
        return List.of(
                number(
                        "drop",
                        MeasureUnit.MILLIMETRE,
                        EdgeRun.class,
                        EDGES,
                        "The largest height, along the edge, of the boards above what lies beside it: the ground, or the boards of"
                                + " another platform, and then 0 where these lie as high or higher.",
                        EdgesAndGuards::drop),
                word(
                        "edge kind",
                        EdgeKind.values(),
                        EdgeRun.class,
                        EDGES,
                        "What lies beside the edge.",
                        (edge, context) -> Observations.word(edge.edgeKind(), edge.pointer(), described(edge))),
                flag(
                        "guard present",
                        EdgeRun.class,
                        EDGES,
                        "Whether a guard stands along the edge.",
                        (edge, context) -> unlessUndescribed(
                                edge,
                                Observations.flag(
                                        edge.guard().isPresent(),
                                        edge.guard().map(Guard::displayLabel).orElse("no guard")))),
                number(
                        "guard height",
                        MeasureUnit.MILLIMETRE,
                        EdgeRun.class,
                        EDGES,
                        "The height of the guard to its top from the boards, or from what one can stand on beside it; 0 along an"
                                + " edge without a guard.",
                        (edge, context) -> height(edge)),
                word(
                        "guard infill",
                        GuardInfill.values(),
                        EdgeRun.class,
                        EDGES,
                        "What fills the guard between the boards and its top.",
                        (edge, context) -> ofGuard(
                                edge,
                                (guard, pointer) -> Observations.word(
                                        guard.infill(),
                                        pointer.child("infill"),
                                        "what fills " + guard.displayLabel()
                                                + ": balusters, panel, horizontal-rails or none"))),
                number(
                        "largest opening",
                        MeasureUnit.MILLIMETRE,
                        EdgeRun.class,
                        EDGES,
                        "The smaller side of the largest opening in the guard, and so the sphere that just passes; without infill, the"
                                + " guard's whole height.",
                        (edge, context) -> ofGuard(edge, EdgesAndGuards::opening)),
                flag(
                        "guard climbable",
                        EdgeRun.class,
                        EDGES,
                        "Whether the guard gives a foothold; horizontal rails always do.",
                        (edge, context) -> ofGuard(edge, EdgesAndGuards::climbable)),
                flag(
                        "guard posts notched",
                        EdgeRun.class,
                        EDGES,
                        "Whether the posts of the guard are notched where they meet the frame.",
                        (edge, context) -> ofGuard(
                                edge,
                                (guard, pointer) -> Observations.flag(
                                        guard.postsNotched(),
                                        pointer.child("postsNotched"),
                                        "whether the posts of " + guard.displayLabel() + " are notched"))),
                flag(
                        "frame blocked at guard posts",
                        GuardRun.class,
                        List.of(SubjectKind.GUARDS),
                        "Whether blocking holds the rim or joist to which the guard's posts are fixed against twisting.",
                        (guard, context) -> blocked(guard)));
    }

    private static Observation blocked(GuardRun guard) {
        return guard.edges().isEmpty()
                ? Observations.notApplicable("the guard stands along no edge of the deck")
                : Observations.flag(
                        guard.guard().blocked(),
                        guard.pointer().child("blocked"),
                        "whether blocking holds the frame at the posts of " + guard.label() + " against twisting");
    }

    private static Observation drop(EdgeRun edge, ReviewContext context) {
        if (edge.drop() instanceof Derived.Known<Drop> known) {
            Drop drop = known.value();
            return Observations.number(
                    "h_drop",
                    drop.largestMm(),
                    MeasureUnit.MILLIMETRE,
                    edge.edgeKind().filter(EdgeKind.PLATFORM::equals).isPresent()
                            ? "step down to the boards of the platform beside the edge"
                            : "height of the boards above the ground beside the edge",
                    "at x = " + context.written(Measure.mm(drop.at().xMm())) + ", y = "
                            + context.written(Measure.mm(drop.at().yMm())));
        }
        return Observations.missing(edge.drop().needs());
    }

    private static Observation height(EdgeRun edge) {
        return edge.guard().isPresent()
                ? ofGuard(edge, EdgesAndGuards::ofGuardHeight)
                : unlessUndescribed(
                        edge,
                        Observations.number(
                                "h_guard",
                                0,
                                MeasureUnit.MILLIMETRE,
                                "height of the guard",
                                "no guard",
                                edge.pointer()));
    }

    /** What people can stand on beside a guard makes it lower. */
    private static Observation ofGuardHeight(Guard guard, Pointer pointer) {
        String meaning = "the height of " + guard.displayLabel() + " above the boards";
        double surface = guard.standingSurface().map(Length::mm).orElse(0.0);
        if (surface == 0 || guard.height().isEmpty()) {
            return Observations.length(guard.height(), "h_guard", meaning, pointer.child("height"));
        }
        Sheet w = Sheet.blank();
        double height = w.given(
                "h_guard", guard.height().get().mm(), MeasureUnit.MILLIMETRE, meaning, "", pointer.child("height"));
        double stand = w.given(
                "h_stand",
                surface,
                MeasureUnit.MILLIMETRE,
                "height above the boards of what one can stand on beside it",
                "",
                pointer.child("standingSurface"));
        double left = w.calculate(HEIGHT_ABOVE_STANDING);
        return Observations.found(left, MeasureUnit.MILLIMETRE, w);
    }

    private static Observation opening(Guard guard, Pointer pointer) {
        if (guard.infill().filter(GuardInfill.NONE::equals).isPresent()) {
            return guard.height()
                    .map(h -> Observations.number(
                            "d",
                            h.mm(),
                            MeasureUnit.MILLIMETRE,
                            "opening under the top rail",
                            "no infill",
                            pointer.child("infill"),
                            pointer.child("height")))
                    .orElseGet(() -> Observations.missing(
                            pointer.child("height"),
                            "the height of " + guard.displayLabel() + ", which has no infill"));
        }
        return Observations.length(
                guard.largestOpening(),
                "d",
                "the largest opening in " + guard.displayLabel(),
                pointer.child("largestOpening"));
    }

    private static Observation climbable(Guard guard, Pointer pointer) {
        return guard.infill().filter(GuardInfill.HORIZONTAL_RAILS::equals).isPresent()
                ? Observations.flag(true, "horizontal rails")
                : Observations.flag(
                        guard.climbable(),
                        pointer.child("climbable"),
                        "whether " + guard.displayLabel() + " gives a foothold to climb");
    }

    private static Observation ofGuard(EdgeRun edge, BiFunction<Guard, Pointer, Observation> observing) {
        Optional<Guard> guard = edge.guard();
        return guard.isPresent()
                ? observing.apply(guard.get(), edge.guardPointer().orElse(edge.pointer()))
                : unlessUndescribed(edge, Observations.notApplicable("no guard stands there"));
    }

    private static Observation unlessUndescribed(EdgeRun edge, Observation otherwise) {
        return edge.edgeKind().isPresent() ? otherwise : Observations.missing(edge.pointer(), described(edge));
    }

    private static String described(EdgeRun edge) {
        return "what lies along " + edge.label() + ": open, with its guard if it has one, wall or platform";
    }
}
