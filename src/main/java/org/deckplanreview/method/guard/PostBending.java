package org.deckplanreview.method.guard;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.PartialFactors;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.GuardPosts;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Bending of a guard's post at its root: a cantilever with the line load of one spacing near its top. */
final class PostBending implements Method {

    static final String ROOT = "The root of a guard's post is at the boards' upper face.";

    private static final String WHOLE =
            "The root of a guard's post is at the boards' upper face, and the post is not notched there.";

    private static final Formula MOMENT = Formula.of("M_d = γ_Q * q_k * s * h", MeasureUnit.NEWTON_MILLIMETRE, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "guard.postBending",
            "EN 1995-1-1:2004+A1:2008+A2:2014",
            "bending stress of the guard's posts",
            MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE,
            GuardBasis.SUBJECTS,
            SingleTimber.parameters(GuardLoads.TABLE, GuardLoads.LARGEST_HEIGHT, PartialFactors.PARAMETER),
            "Bending stress of a post at its root under the line load over one spacing of posts, acting at the guard's height"
                    + " or the largest height of the load, whichever is less, against the design bending strength: equation"
                    + " (6.11) for one axis, on what a notch leaves of the post.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        return GuardBasis.evaluate(subject, parameters, context, PostBending::check);
    }

    private static Evaluation check(GuardBasis basis) {
        Derived<GuardPosts> posts = basis.guardPosts();
        Derived<String> id = posts.map(GuardPosts::timber);
        Optional<Evaluation> outOfScope = basis.outOfScope(id);
        if (outOfScope.isPresent()) {
            return outOfScope.get();
        }
        Guard guard = basis.run().guard();
        Pointer notchDepth = basis.run().pointer().child("postNotchDepth");
        if (guard.postsNotched().orElse(false) && guard.postNotchDepth().isEmpty()) {
            return new Evaluation.Missing(List.of(new Need(
                    notchDepth,
                    "the depth of the notch of the posts of " + basis.run().label())));
        }
        Derived<SingleTimber> whole = basis.single(id);
        Optional<Double> notch =
                guard.postsNotched().orElse(true) ? guard.postNotchDepth().map(Length::mm) : Optional.empty();
        double depthMm = posts.map(basis::postDepthMm).optional().orElse(Double.POSITIVE_INFINITY);
        if (notch.filter(d -> d >= depthMm).isPresent()) {
            return new Evaluation.OutOfScope("The notch takes the whole depth of the post", "");
        }
        Derived<SingleTimber> left =
                whole.map(t -> notch.map(d -> t.notched(d, notchDepth)).orElse(t));
        String silent = guard.postsNotched().isEmpty() && notch.isEmpty() ? WHOLE : ROOT;
        Derived<Evaluation> result =
                left.with(basis.height(), (timber, height) -> measured(basis, posts.get(), timber, height, silent));
        return result.isKnown() ? result.get() : new Evaluation.Missing(result.needs());
    }

    private static Evaluation measured(
            GuardBasis basis, GuardPosts posts, SingleTimber timber, double heightMm, String root) {
        Sheet sheet = basis.loadOnPost(posts, heightMm);
        sheet.calculate(MOMENT);
        return timber.bending(sheet, "a post", "", List.of(GuardBasis.ALONG_LOAD, GuardBasis.SEPARATE, root))
                .measured();
    }
}
