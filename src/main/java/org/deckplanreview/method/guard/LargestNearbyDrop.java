package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Drop;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.GroundBesideEdge;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.EdgeKind;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** The drop beside an edge, guarded or not, to the ground within a distance. */
final class LargestNearbyDrop implements Method {

    private static final String LARGEST = "largestDrop";

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.heightNearby",
            "geometry",
            "height above the ground near the edge",
            MILLIMETRE,
            List.of(SubjectKind.EDGES),
            List.of(
                    ParameterDescription.number(LARGEST, MILLIMETRE, "the largest height above the ground")
                            .lowerIsStricter(),
                    NearbyDrop.WITHIN),
            "The largest height of the boards at an edge above the ground within a distance square to the edge, with a guard or"
                    + " without.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        EdgeRun edge = (EdgeRun) subject;
        if (edge.edgeKind().isEmpty()) {
            return NearbyDrop.undescribed(edge);
        }
        if (edge.edgeKind().get() == EdgeKind.WALL) {
            return new Evaluation.NotApplicable("a wall stands along the edge");
        }
        Derived<Drop> drop = GroundBesideEdge.largestDrop(
                context.layout(), edge, parameters.number(NearbyDrop.WITHIN.name(), MILLIMETRE));
        if (!drop.isKnown()) {
            return new Evaluation.Missing(drop.needs());
        }
        Sheet w = Sheet.blank();
        double found = NearbyDrop.write(w, drop.get());
        double allowed = w.given(
                "h_max",
                parameters.number(LARGEST, MILLIMETRE),
                MILLIMETRE,
                "largest height above the ground",
                parameters.source(LARGEST));
        return new Evaluation.Measured(
                Measure.of(found, MILLIMETRE),
                Sense.AT_MOST,
                Measure.of(allowed, MILLIMETRE),
                w.step("utilisation", "h_drop / h_max", found / allowed, RATIO, ""),
                NearbyDrop.place(drop.get(), context),
                w.steps(),
                List.of());
    }
}
