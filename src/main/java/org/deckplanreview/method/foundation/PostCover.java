package org.deckplanreview.method.foundation;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** How far a footing reaches beyond its posts on all sides. */
final class PostCover implements Method {

    private static final ParameterDescription LEAST = ParameterDescription.number(
                    "leastCover", MILLIMETRE, "least distance from a post's face to the footing's edge")
            .higherIsStricter();

    /** Over half the breadth, which is there also where the cover is nothing or less. */
    private static final Formula UTILISATION =
            Formula.of("utilisation = max(0, B / 2 - c + c_min) / (B / 2)", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.postCover",
            "common practice",
            "concrete beside the post",
            MILLIMETRE,
            List.of(SubjectKind.FOOTINGS),
            List.of(LEAST),
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
        Sheet working = Sheet.blank();
        working.given(
                "B",
                plan.get().breadthMm(),
                MILLIMETRE,
                "breadth of the footing",
                "",
                footing.pointer().child("breadth"));
        working.given(
                "c",
                plan.get().leastCoverMm(),
                MILLIMETRE,
                "smallest distance from a post's face to the footing's edge",
                "",
                footing.pointer());
        parameters.enter(working, "c_min", LEAST);
        return SheetCase.of(
                        working, UTILISATION, "c", Sense.AT_LEAST, "c_min", () -> "", () -> List.of(PadPlan.ASSUMPTION))
                .measured();
    }
}
