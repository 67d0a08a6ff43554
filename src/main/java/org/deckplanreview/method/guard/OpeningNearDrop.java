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
import org.deckplanreview.submission.GuardInfill;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Openings in the guard along an edge beside which the ground lies low within a distance, not only at the edge itself. */
final class OpeningNearDrop implements Method {

    private static final ParameterDescription SPHERE = ParameterDescription.number(
                    "sphere", MILLIMETRE, "diameter of a sphere that must not pass")
            .lowerIsStricter();

    private static final Formula UTILISATION = Formula.of("utilisation = d / d_max", RATIO, "");

    private static final NearbyDrop.OfGuard OPENING = new NearbyDrop.OfGuard(
            "d", "largest opening", "", "d_max", SPHERE, Sense.UNDER, UTILISATION, OpeningNearDrop::opening);

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.openingNearDrop",
            "geometry",
            "largest opening",
            MILLIMETRE,
            List.of(SubjectKind.EDGES),
            List.of(NearbyDrop.DROP_OVER, NearbyDrop.WITHIN, SPHERE),
            "The smaller side of the largest opening in the guard along the edge, and without infill the guard's whole height,"
                    + " where the ground anywhere within a distance square to the edge lies farther below the boards than a"
                    + " given drop; beside another platform its boards count.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return NearbyDrop.ofGuard((EdgeRun) subject, parameters, context, OPENING);
    }

    private static Derived<Double> opening(Guard guard, Pointer pointer) {
        return hasNoInfill(guard)
                ? HeightNearDrop.height(guard, pointer)
                : Derived.of(
                                guard.largestOpening(),
                                pointer.child("largestOpening"),
                                "the largest opening in " + guard.displayLabel() + ", a length")
                        .map(Length::mm);
    }

    private static boolean hasNoInfill(Guard guard) {
        return guard.infill().filter(GuardInfill.NONE::equals).isPresent();
    }
}
