package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.layout.TimberPiece;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Effective length of posts and braces over the radius of gyration, the larger of both axes. */
final class Slenderness implements Method {
    private static final ParameterDescription LARGEST =
            ParameterDescription.number("largestSlenderness", RATIO, "largest slenderness of a member in compression");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.slenderness",
            "EN 1995-1-1:2004+A1:2008+A2:2014, lambda of (6.21) and (6.22), against a largest value from elsewhere",
            "slenderness",
            RATIO,
            List.of(SubjectKind.POSTS, SubjectKind.BRACES),
            List.of(PostLength.FACTORS, LARGEST),
            "The larger of both slendernesses: effective length over the radius of gyration. Braces count from end to end.");

    /** An effective length and the side of the section that bends over it. */
    private record Lean(double lengthMm, double sideMm, String plane, Pointer side, List<String> assumptions) {
        double slenderness() {
            return Buckling.slenderness(lengthMm, sideMm);
        }
    }

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        Pointer timber = context.submission()
                .timberPointer(((TimberPiece) subject).timber().id());
        if (subject instanceof BraceLine brace) {
            double breadth = brace.timber().breadth().mm();
            double depth = brace.timber().depth().mm();
            Lean lean = new Lean(
                    brace.lengthMm(),
                    Math.min(breadth, depth),
                    "across its thinner side",
                    timber.child(breadth <= depth ? "breadth" : "depth"),
                    List.of());
            return measured(lean, subject, parameters);
        }
        return post((PostPlace) subject, timber, parameters, context);
    }

    private static Evaluation post(PostPlace post, Pointer timber, Parameters parameters, ReviewContext context) {
        Derived<Lean> lean = post.heightMm()
                .with(PostBasis.foot(post), (height, foot) -> foot)
                .with(
                        PostBasis.direction(post, context),
                        (foot, along) -> worse(post, foot, along, timber, parameters, context));
        return lean.isKnown() ? measured(lean.get(), post, parameters) : new Evaluation.Missing(lean.needs());
    }

    private static Lean worse(
            PostPlace post,
            FootingKind foot,
            Direction along,
            Pointer timber,
            Parameters parameters,
            ReviewContext context) {
        SidewaysSupport support = new SidewaysSupport(context.layout().platformOf(post));
        double height = post.heightMm().get();
        PostLength lengthAlong = PostLength.of(post, foot, height, along, support, parameters);
        PostLength lengthAcross = PostLength.of(post, foot, height, SidewaysSupport.across(along), support, parameters);
        Lean a = new Lean(
                lengthAlong.effectiveMm(),
                post.timber().breadth().mm(),
                PostBasis.ALONG,
                timber.child("breadth"),
                List.of(lengthAlong.assumption(PostBasis.ALONG, foot)));
        Lean b = new Lean(
                lengthAcross.effectiveMm(),
                post.timber().depth().mm(),
                PostBasis.ACROSS,
                timber.child("depth"),
                List.of(lengthAcross.assumption(PostBasis.ACROSS, foot)));
        return a.slenderness() >= b.slenderness() ? a : b;
    }

    private static Evaluation measured(Lean lean, Subject subject, Parameters parameters) {
        double largest = parameters.number(LARGEST.name(), RATIO);
        Sheet w = Sheet.blank();
        w.given(
                "l_ef",
                lean.lengthMm(),
                MILLIMETRE,
                "effective length, buckling " + lean.plane(),
                "",
                subject.pointer());
        w.given("h", lean.sideMm(), MILLIMETRE, "side of the section", "", lean.side());
        w.step("λ", "l_ef * sqrt(12) / h", lean.slenderness(), RATIO, "");
        w.given("λ_max", largest, RATIO, "largest slenderness", parameters.source(LARGEST.name()));
        w.step("utilisation", "λ / λ_max", lean.slenderness() / largest, RATIO, "");
        return new Evaluation.Measured(
                Measure.of(lean.slenderness(), RATIO),
                Sense.AT_MOST,
                Measure.of(largest, RATIO),
                lean.slenderness() / largest,
                lean.plane(),
                w.steps(),
                lean.assumptions());
    }
}
