package org.deckplanreview.method.foundation;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** How far a footing reaches beyond its posts on all sides. */
final class PostCover implements Method {

    private static final String LEAST = "leastCover";

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.postCover",
            "common practice",
            "concrete beside the post",
            MILLIMETRE,
            List.of(SubjectKind.FOOTINGS),
            List.of(ParameterDescription.number(
                            LEAST, MILLIMETRE, "the least distance from a post's face to the footing's edge")
                    .higherIsStricter()),
            "The smallest distance in plan from a post's face to the edge of its footing; negative where the post reaches"
                    + " beyond it.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        FootingPlace footing = (FootingPlace) subject;
        if (footing.isBlock()) {
            return new Evaluation.NotApplicable("no post stands on a block");
        }
        Derived<PadPlan> plan = PadPlan.of(footing, context);
        if (!plan.isKnown()) {
            return new Evaluation.Missing(plan.needs());
        }
        double cover = plan.get().leastCoverMm();
        double least = parameters.number(LEAST, MILLIMETRE);
        double half = plan.get().breadthMm() / 2;
        Sheet working = Sheet.blank();
        working.given(
                "c",
                cover,
                MILLIMETRE,
                "smallest distance from a post's face to the footing's edge",
                "",
                footing.pointer());
        working.given("c_min", least, MILLIMETRE, "least distance", parameters.source(LEAST));
        return new Evaluation.Measured(
                Measure.mm(cover),
                Sense.AT_LEAST,
                Measure.mm(least),
                Math.max(0, half - cover + least) / half,
                "",
                working.steps(),
                List.of(PadPlan.ASSUMPTION));
    }
}
