package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Height of the guard along an edge beside which the ground lies low within a distance, not only at the edge itself. */
final class HeightNearDrop implements Method {

    private static final ParameterDescription LEAST_HEIGHT = ParameterDescription.number(
                    "leastHeight", MILLIMETRE, "minimum height of a guard")
            .higherIsStricter();

    /** A guard of no height at all still has a number. */
    private static final Formula UTILISATION = Formula.of("utilisation = h_min / max(h_guard, 1 [mm])", RATIO, "");

    private static final NearbyDrop.OfGuard HEIGHT = new NearbyDrop.OfGuard(
            "h_guard",
            "height of the guard",
            "height",
            "h_min",
            LEAST_HEIGHT,
            Sense.AT_LEAST,
            UTILISATION,
            HeightNearDrop::height);

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.heightNearDrop",
            "geometry",
            "guard height",
            MILLIMETRE,
            List.of(SubjectKind.EDGES),
            List.of(NearbyDrop.DROP_OVER, NearbyDrop.WITHIN, LEAST_HEIGHT),
            "The height of the guard along the edge, where the ground anywhere within a distance square to the edge lies farther"
                    + " below the boards than a given drop; beside another platform its boards count.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return NearbyDrop.ofGuard((EdgeRun) subject, parameters, context, HEIGHT);
    }

    /** Of a guard at a pointer. */
    static Derived<Double> height(Guard guard, Pointer pointer) {
        return Derived.of(
                        guard.height(),
                        pointer.child("height"),
                        "the height of " + guard.displayLabel() + " above the boards, a length")
                .map(Length::mm);
    }
}
