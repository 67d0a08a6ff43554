package org.deckplanreview.method.stair;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Bending of one board of a tread between the strings that hold it. */
final class TreadBending implements Method {

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "stair.treadBending",
            "EN 1995-1-1:2004+A1:2008+A2:2014",
            "bending stress of the treads",
            NEWTON_PER_SQUARE_MILLIMETRE,
            List.of(SubjectKind.STAIRS),
            SingleTimber.parameters(StringActions.PARAMETERS.toArray(ParameterDescription[]::new)),
            "Largest bending stress of one board of a tread as a simple beam from the middle of one string to the middle of the"
                    + " next, under the load on each area or the whole load on one place, whichever is worse, against the design"
                    + " bending strength: equation (6.11) for one axis.");

    private static final List<String> ASSUMPTIONS = List.of(
            "The strings of a stair stand evenly over its width, the outer ones at its sides.",
            "The depth of the treads' timber lies upright, and one board carries the whole load on one place.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return StringActions.evaluate(subject, parameters, context, actions -> check(actions, context));
    }

    private static Evaluation check(StringActions actions, ReviewContext context) {
        Optional<String> id = actions.stair().stair().treadTimber();
        if (id.isEmpty()) {
            return new Evaluation.Missing(List.of(new Need(
                    actions.stair().pointer().child("treadTimber"),
                    "the timber of the treads of " + actions.stair().label())));
        }
        Timber timber = context.submission().timber(id.get());
        Pointer pointer = context.submission().timberPointer(id.get());
        return SingleTimber.outOfScope(timber, actions.parameters()).orElseGet(() -> {
            var single = SingleTimber.of(timber, pointer, actions.parameters());
            double string = context.submission()
                    .timber(actions.strings().timber())
                    .breadth()
                    .mm();
            return single.isKnown()
                    ? measured(actions, single.get(), timber, pointer, string)
                    : new Evaluation.Missing(single.needs());
        });
    }

    private static Evaluation measured(
            StringActions actions, SingleTimber single, Timber timber, Pointer pointer, double stringMm) {
        double width = actions.stair().widthMm();
        int count = actions.strings().count();
        double l = (width - stringMm) / (count - 1);
        double breadth = timber.breadth().mm();
        double uniformMoment = actions.treadNPerMm(false, breadth) * l * l / 8;
        double pointMoment = actions.treadNPerMm(true, breadth) * l * l / 8 + actions.pointN() * l / 4;
        boolean onOnePlace = pointMoment > uniformMoment;
        Sheet w = actions.writeTread(onOnePlace, breadth, pointer.child("breadth"));
        w.given(
                "b_s",
                width,
                MILLIMETRE,
                "width of the stair",
                "",
                actions.stair().pointer().child("line"));
        w.given("t_s", stringMm, MILLIMETRE, "breadth of a string", "", actions.stringsMember("timber"));
        w.given("n", count, RATIO, "strings", "", actions.stringsMember("count"));
        w.step("l", "(b_s - t_s) / (n - 1)", l, MILLIMETRE, "");
        double moment = w.step(
                "M_d",
                onOnePlace ? "p_d * l^2 / 8 + γ_Q * Q_k * l / 4" : "p_d * l^2 / 8",
                Math.max(uniformMoment, pointMoment),
                NEWTON_MILLIMETRE,
                "");
        single.writeBending(w, moment, "one board of a tread");
        return new Evaluation.Measured(
                Measure.of(moment / single.sectionModulusMm3(), NEWTON_PER_SQUARE_MILLIMETRE),
                Sense.AT_MOST,
                Measure.of(single.bendingStrength(), NEWTON_PER_SQUARE_MILLIMETRE),
                single.bendingUtilisation(moment),
                StringActions.remark(onOnePlace) + ", " + single.loadDuration(),
                w.steps(),
                ASSUMPTIONS);
    }
}
