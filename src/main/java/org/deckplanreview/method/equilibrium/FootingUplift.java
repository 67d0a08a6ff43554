package org.deckplanreview.method.equilibrium;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.List;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Uplift of a footing, which nothing but its weight holds down. What soil holds by friction is not counted. */
final class FootingUplift implements Method {
    static final Hold NOTHING = Hold.none("resistance of the ground against uplift, not counted");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "equilibrium.footingUplift",
            Equilibrium.SOURCE,
            "smallest force under the footing",
            NEWTON_,
            List.of(SubjectKind.FOOTINGS),
            List.of(Balance.TABLE),
            "Smallest force under the footing with its own weight and that of its posts, under the combinations of"
                    + " equilibrium. The ground's friction is not counted: where an embedded post would need it, the method does"
                    + " not say whether it does.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        FootingPlace footing = (FootingPlace) subject;
        Derived<LiftForces> forces = context.loadPath().lift(footing);
        if (!forces.isKnown()) {
            return new Evaluation.Missing(forces.needs());
        }
        Derived<Double> weight = context.loadPath().footingWeightN(footing);
        if (!weight.isKnown()) {
            List<Joint> withoutIt = Joint.of("", forces.get(), NOTHING, parameters, List.of());
            return withoutIt.stream().allMatch(Joint::holds)
                    ? Case.worst(withoutIt)
                    : new Evaluation.Missing(weight.needs());
        }
        List<Joint> joints = Joint.of("", forces.get().withWeight(weight.get()), NOTHING, parameters, List.of());
        boolean needsFriction = !joints.stream().allMatch(Joint::holds);
        return needsFriction && footing.footing().kind() == FootingKind.EMBEDDED_POST
                ? friction(footing)
                : Case.worst(joints);
    }

    static Evaluation friction(FootingPlace footing) {
        return new Evaluation.OutOfScope(
                "the weight of its concrete does not hold " + footing.label()
                        + " down, and what the ground holds by friction is not calculated",
                "");
    }
}
