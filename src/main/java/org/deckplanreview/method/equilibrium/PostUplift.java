package org.deckplanreview.method.equilibrium;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.LiftForces;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Enough;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.PostBase;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Uplift at the foot of a post. A base that is stated as none holds nothing; a connector holds what is stated or what ordinary
 * ones do; concrete around an embedded post rises with it, and its weight counts at the footing.
 */
final class PostUplift implements Method {
    static final ParameterDescription ORDINARY = ParameterDescription.number(
                    "holdDown", NEWTON_, "resistance that the ordinary base of a post is taken to have against uplift")
            .lowerIsStricter();
    static final Hold NOTHING = Hold.none("resistance of the base against uplift");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "equilibrium.postUplift",
            Equilibrium.SOURCE,
            "smallest force at the post's foot",
            NEWTON_,
            List.of(SubjectKind.POSTS),
            List.of(Balance.TABLE, ORDINARY),
            "Smallest force at the foot of the post with its weight, under the combinations of equilibrium, against what its"
                    + " base holds down: a stated resistance, that of ordinary bases, or nothing. Beyond an ordinary base a"
                    + " resistance must be stated. An embedded post lifts its concrete with it.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        PostPlace post = (PostPlace) subject;
        Derived<LiftForces> forces =
                context.loadPath().lift(post).with(context.loadPath().postWeightN(post), LiftForces::withWeight);
        if (!forces.isKnown()) {
            return new Evaluation.Missing(forces.needs());
        }
        List<Joint> byWeight = Joint.of("", forces.get(), NOTHING, parameters, List.of());
        if (byWeight.stream().allMatch(Joint::holds)) {
            return Case.worst(byWeight);
        }
        if (isEmbedded(post)) {
            return new Evaluation.NotApplicable(
                    "the post lifts the concrete around it with it, which is looked at as a footing");
        }
        return held(
                post,
                (hold, assumed) -> Joint.of("", forces.get(), hold, parameters, assumed),
                "which loads on an overhang lift",
                parameters,
                context);
    }

    static boolean isEmbedded(PostPlace post) {
        return post.footing()
                .map(FootingPlace::footing)
                .filter(f -> f.kind() == FootingKind.EMBEDDED_POST)
                .isPresent();
    }

    /**
     * The joint at the post's foot with what its base holds.
     *
     * @param joints of a hold, with what is assumed of it
     * @param lifting what lifts the post, for the end of a sentence
     */
    static Evaluation held(
            PostPlace post,
            BiFunction<Hold, List<String>, List<Joint>> joints,
            String lifting,
            Parameters parameters,
            ReviewContext context) {
        Pointer base = post.pointer().child("base");
        Pointer pointer = post.pointer().child("holdDownResistance");
        Optional<Measure> stated = post.post().holdDownResistance();
        if (post.post().base().isEmpty()) {
            return new Evaluation.Missing(
                    List.of(new Need(base, "what holds " + post.label() + " down on its footing, " + lifting)));
        }
        if (post.post().base().get() == PostBase.NONE) {
            return Case.worst(joints.apply(Hold.none("a post without a base", base), List.of()));
        }
        if (stated.isPresent()) {
            return Case.worst(joints.apply(Hold.stated(stated.get(), "base", pointer), List.of()));
        }
        Hold ordinary = Hold.ordinary(ORDINARY, "an ordinary base", parameters);
        List<Joint> held = joints.apply(
                ordinary,
                List.of("The base of " + post.label() + " holds it down with "
                        + context.written(Measure.of(ordinary.newtons(), NEWTON_))
                        + " at least, as ordinary ones do."));
        return held.stream().allMatch(Joint::holds)
                ? Case.worst(held)
                : new Evaluation.Missing(List.of(new Need(
                        pointer,
                        "the resistance of the base of " + post.label() + " against uplift, in "
                                + context.units().unit(MeasureUnit.KILONEWTON).symbol()
                                + Enough.from(Joint.neededN(held), context.units()))));
    }
}
