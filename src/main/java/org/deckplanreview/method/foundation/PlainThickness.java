package org.deckplanreview.method.foundation;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Thickness of a pad of plain concrete: at least as much as it projects beyond its post, so that its load spreads at 45 degrees
 * and nothing bends. A pad under several posts is a beam between them, which plain concrete must not be.
 */
final class PlainThickness implements Method {

    private static final ParameterDescription LEAST = ParameterDescription.number(
                    "leastThickness", MILLIMETRE, "least thickness of a pad whatever it projects")
            .higherIsStricter();
    private static final Formula LARGER = Formula.of("T_req = max(P, T_min)", MILLIMETRE, "");
    private static final Depth THICKNESS = Depth.of("T", "T_req");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.plainThickness",
            "common practice: the thickness of plain concrete is no less than its projection",
            "thickness of the concrete",
            MILLIMETRE,
            List.of(SubjectKind.FOOTINGS),
            List.of(LEAST),
            "The thickness of a pad against its largest projection beyond the post, and a least thickness. A pad under several"
                    + " posts is out of scope.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        FootingPlace footing = (FootingPlace) subject;
        if (footing.footing().kind() == FootingKind.EMBEDDED_POST) {
            return new Evaluation.NotApplicable("the post is embedded");
        }
        if (footing.isBlock()) {
            return new Evaluation.NotApplicable("a precast block is as thick as its maker makes it");
        }
        if (footing.posts().size() > 1) {
            return new Evaluation.OutOfScope("a pad under several posts bends between them and needs a design", "");
        }
        Derived<PadPlan> plan = PadPlan.of(footing, context);
        Optional<Length> thickness = footing.footing().thickness();
        Derived<Double> known = Derived.of(
                        thickness.map(Length::mm),
                        footing.pointer().child("thickness"),
                        "the thickness of the concrete of " + footing.label())
                .with(plan, (t, p) -> t);
        if (!known.isKnown()) {
            return new Evaluation.Missing(known.needs());
        }
        Sheet working = Sheet.blank();
        working.given(
                "T",
                known.get(),
                MILLIMETRE,
                "thickness of the concrete",
                "",
                footing.pointer().child("thickness"));
        working.given(
                "P",
                Math.max(0, plan.get().largestProjectionMm()),
                MILLIMETRE,
                "largest distance from the post's face to the footing's edge",
                "",
                footing.pointer().child("breadth"));
        parameters.enter(working, "T_min", LEAST);
        working.calculate(LARGER);
        return THICKNESS.measured(working, "The concrete of pads has no reinforcement.", PadPlan.ASSUMPTION);
    }
}
