package org.deckplanreview.method.stair;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Enough;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** What the most loaded string hands to the frame at its head. */
final class StringHead implements Method {

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "stair.stringHead",
            "equilibrium",
            "force at the head of one string",
            KILONEWTON,
            List.of(SubjectKind.STAIRS),
            StringActions.PARAMETERS,
            "Force that a string as a simple beam over the flight's going passes on at its head, under the load on each area of its"
                    + " part of the width, or under the whole load on one place at the head; against the design resistance of"
                    + " its fixing that the submission states.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return StringActions.evaluate(subject, parameters, context, actions -> check(actions, context));
    }

    private static Evaluation check(StringActions actions, ReviewContext context) {
        double l = actions.spanMm();
        double uniform = actions.stringNPerMm(false) * l / 2;
        double point = actions.stringNPerMm(true) * l / 2 + actions.pointN();
        boolean onOnePlace = point > uniform;
        double force = Math.max(uniform, point);
        Pointer pointer = actions.stringsMember("headResistance");
        if (actions.strings().headResistance().isEmpty()) {
            return new Evaluation.Missing(List.of(new Need(
                    pointer,
                    "the design resistance of the fixing of one string of "
                            + actions.stair().label() + " at its head, in "
                            + context.units().unit(KILONEWTON).symbol() + Enough.from(force, context.units()))));
        }
        Sheet w = actions.writeString(onOnePlace);
        w.step("F_d", onOnePlace ? "p_d * l / 2 + γ_Q * Q_k" : "p_d * l / 2", force, NEWTON_, "");
        double resistance = w.given(
                "R_d",
                actions.strings().headResistance().get().in(NEWTON_),
                NEWTON_,
                "design resistance of the fixing of one string at its head",
                "",
                pointer);
        double utilisation = w.step("utilisation", "F_d / R_d", force / resistance, RATIO, "");
        return new Evaluation.Measured(
                Measure.of(NEWTON_.convert(force, KILONEWTON), KILONEWTON),
                Sense.AT_MOST,
                Measure.of(NEWTON_.convert(resistance, KILONEWTON), KILONEWTON),
                utilisation,
                StringActions.remark(onOnePlace),
                w.steps(),
                StringActions.ASSUMPTIONS);
    }
}
