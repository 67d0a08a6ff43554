package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.PartialFactors;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** The upper fixing of a guard's post to the frame: the couple with the lower fixing that holds the moment, and the load itself. */
final class PostFixing implements Method {

    static final String UPPER =
            "The upper fixing of a guard's post is at the boards' upper face; one lower down carries more.";

    private static final Formula LOAD = Formula.of("F_d = γ_Q * q_k * s", NEWTON_, "");
    private static final Formula MOMENT = Formula.of("M_d = F_d * h", NEWTON_MILLIMETRE, "");
    private static final Formula TENSION = Formula.of("T_d = M_d / a + F_d", NEWTON_, "");
    private static final Formula UTILISATION = Formula.of("utilisation = T_d / R_d", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.postFixing",
            "equilibrium",
            "tension in the upper fixing of the guard's posts",
            KILONEWTON,
            GuardBasis.SUBJECTS,
            List.of(GuardLoads.TABLE, GuardLoads.LARGEST_HEIGHT, PartialFactors.PARAMETER),
            "Tension in the upper fixing of a post under the design line load over one spacing: the moment at the root over the"
                    + " distance between upper and lower fixing, and the load itself; against the design resistance that the"
                    + " submission states.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return GuardBasis.evaluate(subject, parameters, context, PostFixing::check);
    }

    private static Evaluation check(GuardBasis basis) {
        Derived<GuardPosts> posts = basis.guardPosts();
        Derived<Double> leverArm = posts.flatMap(p -> Derived.of(
                        p.leverArm(),
                        basis.postsMember("leverArm"),
                        "the distance between the upper and the lower fixing of a post of "
                                + basis.run().label() + " to the frame, a length")
                .map(Length::mm));
        Derived<Evaluation> result =
                leverArm.with(basis.height(), (arm, height) -> against(basis, posts.get(), arm, height));
        if (result.isKnown()) {
            return result.get();
        }
        List<Need> needs = new ArrayList<>(result.needs());
        posts.optional().filter(p -> p.fixingResistance().isEmpty()).ifPresent(p -> needs.add(resistance(basis, "")));
        return new Evaluation.Missing(needs.stream().distinct().sorted().toList());
    }

    private static Need resistance(GuardBasis basis, String from) {
        return new Need(
                basis.postsMember("fixingResistance"),
                "the design resistance in tension of one fixing of a post of "
                        + basis.run().label() + " to the frame, in "
                        + basis.context().units().unit(KILONEWTON).symbol() + from);
    }

    private static Evaluation against(GuardBasis basis, GuardPosts posts, double armMm, double heightMm) {
        Sheet sheet = basis.loadOnPost(posts, heightMm);
        sheet.calculate(LOAD);
        sheet.calculate(MOMENT);
        sheet.given(
                "a", armMm, MILLIMETRE, "between the upper and the lower fixing", "", basis.postsMember("leverArm"));
        sheet.calculate(TENSION);
        Measure tension = sheet.measure("T_d").to(KILONEWTON);
        if (posts.fixingResistance().isEmpty()) {
            return new Evaluation.Missing(List.of(
                    resistance(basis, "; it complies from " + basis.context().written(tension))));
        }
        sheet.given(
                "R_d",
                posts.fixingResistance().get().in(NEWTON_),
                NEWTON_,
                "design resistance of one fixing in tension",
                "",
                basis.postsMember("fixingResistance"));
        sheet.calculate(UTILISATION);
        return Evaluation.Measured.on(
                sheet,
                tension,
                Sense.AT_MOST,
                sheet.measure("R_d").to(KILONEWTON),
                "",
                List.of(GuardBasis.SEPARATE, UPPER));
    }
}
