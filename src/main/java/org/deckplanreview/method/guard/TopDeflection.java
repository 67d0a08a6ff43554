package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** How far a guard's top gives way under the characteristic line load: the post as a cantilever, and the rail between posts. */
final class TopDeflection implements Method {

    private static final ParameterDescription LIMIT = ParameterDescription.number(
            "guardDeflectionLimit", MILLIMETRE, "largest horizontal displacement of any point of a guard");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.deflection",
            "elastic beams",
            "deflection of the guard's top",
            MILLIMETRE,
            GuardBasis.SUBJECTS,
            SingleTimber.parameters(GuardLoads.TABLE, GuardLoads.LARGEST_HEIGHT, LIMIT),
            "Horizontal deflection on loading, without partial factors, of the top rail midway between two posts: the post's as"
                    + " a cantilever from its root, and the rail's as a simple beam from post to post.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return GuardBasis.evaluate(subject, parameters, context, TopDeflection::check);
    }

    private record Timbers(SingleTimber post, SingleTimber rail) {}

    private static Evaluation check(GuardBasis basis) {
        Derived<GuardPosts> posts = basis.guardPosts();
        Derived<String> post = posts.map(GuardPosts::timber);
        Derived<String> rail = basis.rail();
        return Stream.of(basis.outOfScope(post), basis.outOfScope(rail))
                .flatMap(o -> o.stream())
                .findFirst()
                .orElseGet(() -> {
                    Derived<Evaluation> result = basis.single(post)
                            .with(basis.single(rail), Timbers::new)
                            .with(basis.height(), (t, height) -> measured(basis, posts.get(), t, height));
                    return result.isKnown() ? result.get() : new Evaluation.Missing(result.needs());
                });
    }

    private static Evaluation measured(GuardBasis basis, GuardPosts posts, Timbers timbers, double heightMm) {
        double limit = basis.parameters().number(LIMIT.name(), MILLIMETRE);
        double q = basis.loads().lineNPerMm();
        double s = posts.spacing().mm();
        double h = basis.loadHeightMm(heightMm);
        Sheet w = Sheet.blank();
        basis.writeLineLoad(w);
        basis.writeSpacing(w, posts);
        basis.writeHeights(w, heightMm);
        double force = w.step("F", "q_k * s", q * s, NEWTON_, "");
        timbers.post().writeStiffness(w, "post", "a post");
        double ofPost = w.step(
                "w_post",
                "F * h^2 * (3 * H - h) / (6 * E_post * I_post)",
                force * h * h * (3 * heightMm - h) / (6 * stiffness(timbers.post())),
                MILLIMETRE,
                "");
        timbers.rail().writeStiffness(w, "rail", "the rail");
        double ofRail = w.step(
                "w_rail",
                "5 * q_k * s^4 / (384 * E_rail * I_rail)",
                5 * q * s * s * s * s / (384 * stiffness(timbers.rail())),
                MILLIMETRE,
                "");
        double total = w.step("w", "w_post + w_rail", ofPost + ofRail, MILLIMETRE, "");
        w.given(
                "w_lim",
                limit,
                MILLIMETRE,
                "largest displacement of a guard",
                basis.parameters().source(LIMIT.name()));
        double utilisation = w.step("utilisation", "w / w_lim", total / limit, RATIO, "");
        return new Evaluation.Measured(
                Measure.mm(total),
                Sense.AT_MOST,
                Measure.mm(limit),
                utilisation,
                "midway between two posts",
                w.steps(),
                List.of(
                        GuardBasis.ALONG_LOAD,
                        PostBending.ROOT,
                        "The frame and the fixing at the root of a guard's post do not give way."));
    }

    private static double stiffness(SingleTimber timber) {
        return timber.e0Mean() * timber.secondMomentMm4();
    }
}
