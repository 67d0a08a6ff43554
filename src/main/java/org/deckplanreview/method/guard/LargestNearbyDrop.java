package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import java.util.List;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.GroundBesideEdge;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** The drop beside an edge, guarded or not, to the ground within a distance. */
final class LargestNearbyDrop implements Method {

    private static final ParameterDescription LARGEST = ParameterDescription.number(
                    "largestDrop", MILLIMETRE, "largest height above the ground")
            .lowerIsStricter();

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.heightNearby",
            "geometry",
            "height above the ground near the edge",
            MILLIMETRE,
            List.of(SubjectKind.EDGES),
            List.of(LARGEST, NearbyDrop.WITHIN),
            "The largest height of the boards at an edge above the ground within a distance square to the edge, with a guard or"
                    + " without.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        double withinMm = parameters.number(NearbyDrop.WITHIN.name(), MILLIMETRE);
        return NearbyDrop.evaluate(
                (EdgeRun) subject,
                edge -> edge.edgeKind().filter(EdgeKind.WALL::equals).map(w -> "a wall stands along the edge"),
                edge -> GroundBesideEdge.largestDrop(context.layout(), edge, withinMm),
                drop -> NearbyDrop.atMost(drop, LARGEST, parameters, context));
    }
}
