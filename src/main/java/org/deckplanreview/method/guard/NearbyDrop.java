package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Drop;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.GroundBesideEdge;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** The drop beside an edge without a guard, to the ground within a distance and not only at the edge itself. */
final class NearbyDrop implements Method {

    static final ParameterDescription DROP_OVER = ParameterDescription.number(
                    "dropOver", MILLIMETRE, "largest drop without a guard")
            .lowerIsStricter();
    static final ParameterDescription WITHIN = ParameterDescription.number(
                    "within", MILLIMETRE, "how far from the edge the ground counts")
            .higherIsStricter();

    private static final Formula UTILISATION = Formula.of("utilisation = h_drop / h_max", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.dropNearby",
            "geometry",
            "drop near the edge",
            MILLIMETRE,
            List.of(SubjectKind.EDGES),
            List.of(DROP_OVER, WITHIN),
            "The largest height of the boards at an edge without a guard above the ground within a distance square to the edge;"
                    + " beside another platform, above its boards.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return evaluate(
                (EdgeRun) subject,
                edge -> edge.guard().map(g -> "a guard stands along the edge"),
                edge -> of(edge, parameters, context),
                drop -> atMost(drop, DROP_OVER, parameters, context));
    }

    /**
     * Evaluates the drop along an edge.
     *
     * @param exempt why an edge that is described has no drop to check
     */
    static Evaluation evaluate(
            EdgeRun edge,
            Function<EdgeRun, Optional<String>> exempt,
            Function<EdgeRun, Derived<Drop>> finding,
            Function<Drop, Evaluation> check) {
        if (edge.edgeKind().isEmpty()) {
            return undescribed(edge);
        }
        Optional<String> reason = exempt.apply(edge);
        if (reason.isPresent()) {
            return new Evaluation.NotApplicable(reason.get());
        }
        Derived<Evaluation> result = finding.apply(edge).map(check);
        return result.isKnown() ? result.get() : new Evaluation.Missing(result.needs());
    }

    /** A drop against the largest that is allowed. */
    static Evaluation atMost(Drop drop, ParameterDescription largest, Parameters parameters, ReviewContext context) {
        Sheet sheet = sheet(drop);
        parameters.enter(sheet, "h_max", largest);
        sheet.calculate(UTILISATION);
        return Evaluation.Measured.on(
                sheet, sheet.measure("h_drop"), Sense.AT_MOST, sheet.measure("h_max"), place(drop, context), List.of());
    }

    private static Evaluation undescribed(EdgeRun edge) {
        return new Evaluation.Missing(List.of(new Need(
                edge.pointer(),
                "what lies along " + edge.label() + ": open, with its guard if it has one, wall or platform")));
    }

    /**
     * What of a guard is measured.
     *
     * @param member of the guard from which it is read; blank for the guard as a whole
     * @param bound symbol of the limit
     */
    record OfGuard(
            String symbol,
            String meaning,
            String member,
            String bound,
            ParameterDescription limit,
            Sense sense,
            Formula utilisation,
            BiFunction<Guard, Pointer, Derived<Double>> finding) {}

    /** Measures something of the guard along an edge beside which lies so large a drop that it needs one. */
    static Evaluation ofGuard(EdgeRun edge, Parameters parameters, ReviewContext context, OfGuard what) {
        if (edge.guard().isEmpty()) {
            return edge.edgeKind().isEmpty()
                    ? undescribed(edge)
                    : new Evaluation.NotApplicable("no guard stands there");
        }
        Pointer pointer = edge.guardPointer().orElse(edge.pointer());
        Derived<Drop> drop = of(edge, parameters, context);
        if (drop.isKnown() && !isLarge(drop.get(), parameters)) {
            return new Evaluation.NotApplicable(
                    "nothing near the edge lies so far below the boards that it needs a guard");
        }
        Derived<Evaluation> result = drop.with(
                what.finding().apply(edge.guard().get(), pointer),
                (d, foundMm) -> measured(d, foundMm, pointer, what, parameters, context));
        return result.isKnown() ? result.get() : new Evaluation.Missing(result.needs());
    }

    private static Evaluation measured(
            Drop drop, double foundMm, Pointer guard, OfGuard what, Parameters parameters, ReviewContext context) {
        Sheet sheet = sheet(drop);
        Pointer from = what.member().isEmpty() ? guard : guard.child(what.member());
        sheet.given(what.symbol(), foundMm, MILLIMETRE, what.meaning(), "", from);
        parameters.enter(sheet, what.bound(), what.limit());
        sheet.calculate(what.utilisation());
        return Evaluation.Measured.on(
                sheet,
                sheet.measure(what.symbol()),
                what.sense(),
                sheet.measure(what.bound()),
                place(drop, context),
                List.of());
    }

    /** A drop at the edge itself that needs a guard decides, where the ground farther out is not known. */
    private static Derived<Drop> of(EdgeRun edge, Parameters parameters, ReviewContext context) {
        Derived<Drop> nearby =
                GroundBesideEdge.largestDrop(context.layout(), edge, parameters.number(WITHIN.name(), MILLIMETRE));
        boolean edgeDecides =
                edge.drop().optional().filter(drop -> isLarge(drop, parameters)).isPresent();
        return !nearby.isKnown() && edgeDecides ? edge.drop() : nearby;
    }

    private static boolean isLarge(Drop drop, Parameters parameters) {
        return Sense.OVER.holds(drop.largestMm(), parameters.number(DROP_OVER.name(), MILLIMETRE));
    }

    /** The sheet with which workings begin: h_drop. */
    private static Sheet sheet(Drop drop) {
        Sheet sheet = Sheet.blank();
        sheet.given("h_drop", drop.largestMm(), MILLIMETRE, "height of the boards above the ground near the edge", "");
        return sheet;
    }

    /** Where the largest drop is, in the units of the review. */
    private static String place(Drop drop, ReviewContext context) {
        return "the largest drop is at x = "
                + context.written(Measure.mm(drop.at().xMm())) + ", y = "
                + context.written(Measure.mm(drop.at().yMm()));
    }
}
