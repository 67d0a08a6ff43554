package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.function.Supplier;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.layout.TimberPiece;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Effective length of posts and braces over the radius of gyration, the larger of both axes. */
final class Slenderness implements Method {
    private static final ParameterDescription LARGEST =
            ParameterDescription.number("largestSlenderness", RATIO, "largest slenderness of a member in compression");

    private static final Formula SLENDERNESS = Formula.of("λ = l_ef * sqrt(12) / h", RATIO, "");
    private static final Utilisation UTILISATION = Utilisation.atMost("λ", "λ_max", RATIO, "");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "en1995.slenderness",
            "EN 1995-1-1:2004+A1:2008+A2:2014, lambda of (6.21) and (6.22), against a largest value from elsewhere",
            "slenderness",
            RATIO,
            List.of(SubjectKind.POSTS, SubjectKind.BRACES),
            List.of(PostLength.FACTORS, LARGEST),
            "The larger of both slendernesses: effective length over the radius of gyration. Braces count from end to end.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        Pointer timber = context.submission()
                .timberPointer(((TimberPiece) subject).timber().id());
        return subject instanceof BraceLine brace
                ? brace(brace, timber, parameters)
                : post((PostPlace) subject, timber, parameters, context);
    }

    private static Evaluation brace(BraceLine brace, Pointer timber, Parameters parameters) {
        String plane = "across its thinner side";
        double breadth = brace.timber().breadth().mm();
        double depth = brace.timber().depth().mm();
        Sheet sheet = Sheet.blank();
        sheet.given("l_ef", brace.lengthMm(), MILLIMETRE, "effective length, buckling " + plane, "", brace.pointer());
        return slender(
                        sheet,
                        Math.min(breadth, depth),
                        timber.child(breadth <= depth ? "breadth" : "depth"),
                        parameters,
                        plane,
                        List::of)
                .measured();
    }

    private static Evaluation post(PostPlace post, Pointer timber, Parameters parameters, ReviewContext context) {
        Derived<Evaluation.Measured> worse = post.heightMm()
                .with(PostBasis.foot(post), (height, foot) -> foot)
                .with(PostBasis.direction(post, context), (foot, along) -> {
                    Post whole = new Post(post, foot, timber, parameters, context);
                    return Case.worst(List.of(whole.along(along), whole.across(along)));
                });
        return worse.isKnown() ? worse.get() : new Evaluation.Missing(worse.needs());
    }

    /** A post that can lean along and across its beam. */
    private record Post(
            PostPlace post, FootingKind foot, Pointer timber, Parameters parameters, ReviewContext context) {
        Case along(Direction along) {
            double breadth = post.timber().breadth().mm();
            return leaning(along, PostBasis.ALONG, breadth, timber.child("breadth"));
        }

        Case across(Direction along) {
            double depth = post.timber().depth().mm();
            return leaning(SidewaysSupport.across(along), PostBasis.ACROSS, depth, timber.child("depth"));
        }

        private Case leaning(Direction direction, String plane, double sideMm, Pointer side) {
            SidewaysSupport support = new SidewaysSupport(context.layout().platformOf(post));
            PostLength length = PostLength.of(post, foot, post.heightMm().get(), direction, support, parameters);
            Sheet sheet = Sheet.blank();
            length.calculate(sheet, PostLength.Axis.ONE, plane, parameters, post.pointer());
            return slender(sheet, sideMm, side, parameters, plane, () -> List.of(length.assumption(plane, foot)));
        }
    }

    /** @param sheet on which l_ef stands */
    private static Case slender(
            Sheet sheet,
            double sideMm,
            Pointer side,
            Parameters parameters,
            String plane,
            Supplier<List<String>> assumptions) {
        sheet.given("h", sideMm, MILLIMETRE, "side of the section", "", side);
        sheet.calculate(SLENDERNESS);
        parameters.enter(sheet, "λ_max", LARGEST);
        return UTILISATION.of(sheet, () -> plane, assumptions);
    }
}
