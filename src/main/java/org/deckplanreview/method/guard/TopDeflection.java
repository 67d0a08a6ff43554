package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.method.en1995.SingleTimber.Stiffness;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** How far a guard's top gives way under the characteristic line load: the post as a cantilever, and the rail between posts. */
final class TopDeflection implements Method {

    private static final ParameterDescription LIMIT = ParameterDescription.number(
            "guardDeflectionLimit", MILLIMETRE, "largest horizontal displacement of any point of a guard");

    private static final Stiffness POST_STIFFNESS = Stiffness.of("post");
    private static final Stiffness RAIL_STIFFNESS = Stiffness.of("rail");
    private static final Formula FORCE = Formula.of("F = q_k * s", NEWTON_, "");
    private static final Formula OF_POST =
            Formula.of("w_post = F * h^2 * (3 * H - h) / (6 * E_post * I_post)", MILLIMETRE, "");
    private static final Formula OF_RAIL =
            Formula.of("w_rail = 5 * q_k * s^4 / (384 * E_rail * I_rail)", MILLIMETRE, "");
    private static final Formula TOTAL = Formula.of("w = w_post + w_rail", MILLIMETRE, "");
    private static final Formula UTILISATION = Formula.of("utilisation = w / w_lim", RATIO, "");

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
        Sheet sheet = Sheet.blank();
        basis.enterLineLoad(sheet);
        basis.enterSpacing(sheet, posts);
        basis.calculateLoadHeight(sheet, heightMm);
        sheet.calculate(FORCE);
        timbers.post().calculate(sheet, POST_STIFFNESS, "a post");
        sheet.calculate(OF_POST);
        timbers.rail().calculate(sheet, RAIL_STIFFNESS, "the rail");
        sheet.calculate(OF_RAIL);
        sheet.calculate(TOTAL);
        basis.parameters().enter(sheet, "w_lim", LIMIT);
        sheet.calculate(UTILISATION);
        return Evaluation.Measured.on(
                sheet,
                sheet.measure("w"),
                Sense.AT_MOST,
                sheet.measure("w_lim"),
                "midway between two posts",
                List.of(
                        GuardBasis.ALONG_LOAD,
                        PostBending.ROOT,
                        "The frame and the fixing at the root of a guard's post do not give way."));
    }
}
