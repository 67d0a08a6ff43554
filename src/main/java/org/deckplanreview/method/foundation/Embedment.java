package org.deckplanreview.method.foundation;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.FootingKind;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** Depth to which a post is embedded: a fixed least depth, or a part of the post's whole length if that is more. */
final class Embedment implements Method {

    private static final ParameterDescription LEAST = ParameterDescription.number(
            "leastEmbedment", MeasureUnit.MILLIMETRE, "least depth of a post below the ground");
    private static final ParameterDescription PART = ParameterDescription.number(
            "embeddedPart", MeasureUnit.RATIO, "part of the post's whole length that stands below the ground");
    private static final Formula LARGER = Formula.of("l_req = max(l_min, k * l)", MeasureUnit.MILLIMETRE, "");
    private static final Depth LEAST_DEPTH = Depth.of("l_e", "l_min");
    private static final Depth REQUIRED_DEPTH = Depth.of("l_e", "l_req");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.embedment",
            "common practice",
            "embedded depth of the post",
            MeasureUnit.MILLIMETRE,
            List.of(SubjectKind.POSTS),
            List.of(LEAST, PART),
            "The depth of an embedded post below the ground against a least depth and a part of its whole length. Posts on"
                    + " pads have none.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        PostPlace post = (PostPlace) subject;
        if (post.footing().isEmpty()) {
            return Foundation.missing(post.pointer().child("footing"), "the footing under " + post.label());
        }
        FootingPlace footing = post.footing().get();
        if (footing.footing().kind() == FootingKind.PAD) {
            return new Evaluation.NotApplicable("the post stands on a pad");
        }
        Pointer pointer = footing.pointer().child("embedment");
        Optional<Length> embedment = footing.footing().embedment();
        if (embedment.isEmpty()) {
            return Foundation.missing(pointer, "the depth of " + post.label() + " below the ground");
        }
        Sheet working = Sheet.blank();
        double e = working.given(
                "l_e", embedment.get().mm(), MeasureUnit.MILLIMETRE, "depth of the post below the ground", "", pointer);
        double least = parameters.enter(working, "l_min", LEAST);
        if (!Sense.AT_LEAST.holds(e, least)) {
            return LEAST_DEPTH.measured(working);
        }
        Derived<Double> length = post.topLevelMm().with(post.bottomLevelMm(), (top, bottom) -> top - bottom);
        if (!length.isKnown()) {
            return new Evaluation.Missing(length.needs());
        }
        working.given("l", length.get(), MeasureUnit.MILLIMETRE, "whole length of the post", "", post.pointer());
        parameters.enter(working, "k", PART);
        working.calculate(LARGER);
        return REQUIRED_DEPTH.measured(working);
    }
}
