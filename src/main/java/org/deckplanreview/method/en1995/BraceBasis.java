package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.BraceLine;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.Combination.Psi;
import org.deckplanreview.method.en1995.Combination.State;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What a check of a brace starts from. Post and beam are hinged where they meet and at the post's foot: the part of the
 * horizontal load at the foot, over the post's height, is held by the brace over its distance below the post's upper end.
 *
 * @param heightMm of its post
 */
record BraceBasis(
        BraceLine brace, HorizontalLoad load, double heightMm, Psi psi, Parameters parameters, ReviewContext context) {

    static final List<ParameterDescription> PARAMETERS =
            MemberBasis.parameters(HorizontalLoad.PARAMETERS, List.of(Combination.COMBINATIONS, Combination.Psi.TABLE));

    private record Loads(HorizontalLoad load, double heightMm) {}

    static Evaluation evaluate(
            BraceLine brace, Parameters parameters, ReviewContext context, Function<BraceBasis, Evaluation> check) {
        PlatformLayout platform = context.layout().platformOf(brace);
        if (new SidewaysSupport(platform).isTiedToBuilding()) {
            return new Evaluation.NotApplicable("the building holds the deck through the ledger");
        }
        Derived<Loads> loads = HorizontalLoad.of(platform, brace.brace().direction(), parameters, context)
                .with(height(brace, platform), Loads::new);
        Derived<String> category = context.loadCategories().get(brace.platformIndex());
        if (!loads.isKnown() || !category.isKnown()) {
            return new Evaluation.Missing(loads.with(category, (a, b) -> a).needs());
        }
        Optional<Psi> psi = Psi.find(parameters, category.get());
        return psi.map(p -> check.apply(
                        new BraceBasis(brace, loads.get().load(), loads.get().heightMm(), p, parameters, context)))
                .orElseGet(() -> Inputs.noFactors(category.get(), parameters));
    }

    private static Derived<Double> height(BraceLine brace, PlatformLayout platform) {
        return post(brace, platform)
                .map(PostPlace::heightMm)
                .orElseGet(() -> Derived.missing(brace.pointer().child("post"), "the post of " + brace.label()));
    }

    private static Optional<PostPlace> post(BraceLine brace, PlatformLayout platform) {
        return platform.posts().stream()
                .filter(p -> p.id().equals(brace.brace().post()))
                .findFirst();
    }

    List<Combination> combinations() {
        return Combination.of(parameters, State.ULTIMATE, psi, load.vertical().snowN() != 0);
    }

    /** All braces that share the load, counted by how far they lie in this one's direction. */
    private double sharers() {
        Direction direction = brace.brace().direction();
        return PostSway.cosines(new SidewaysSupport(context.layout().platformOf(brace)).braces(direction), direction);
    }

    private double belowMm() {
        return brace.brace().below().mm();
    }

    private Twist twist() {
        return post(brace, context.layout().platformOf(brace))
                .map(p -> Twist.of(
                        new SidewaysSupport(context.layout().platformOf(brace)),
                        brace.brace().direction(),
                        p.post().at(),
                        parameters))
                .orElseThrow();
    }

    /** At least 1: a brace that meets the post below the ground has no more effect than one at its foot. */
    private double lever() {
        return Math.max(1, heightMm / belowMm());
    }

    private double cosine() {
        return brace.brace().reach().mm() / brace.lengthMm();
    }

    /** Each of the loads that may lead. */
    List<BraceBasis> alternatives() {
        return load.alternatives(psi).stream()
                .map(l -> new BraceBasis(brace, l, heightMm, psi, parameters, context))
                .toList();
    }

    /** F_b,d, N, along the brace, in compression or tension as the deck is pushed to and fro. */
    double forceN(Combination combination) {
        return load.designN(combination, parameters) * twist().factor() * lever() / (sharers() * cosine());
    }

    /** The combination of the largest force. */
    Combination worst() {
        return combinations().stream()
                .max(Comparator.comparingDouble(this::forceN))
                .orElseThrow();
    }

    void writeForce(Sheet w, Combination combination) {
        Pointer at = brace.pointer();
        load.write(
                w,
                combination,
                parameters,
                "along the brace",
                context.layout().platformOf(brace).pointer());
        w.given("n_b", sharers(), RATIO, "braces that share it, by their part in this direction", "", at);
        w.given("h_p", heightMm, MILLIMETRE, "clear height of the post", "", at.child("post"));
        w.given("a_b", belowMm(), MILLIMETRE, "from the post's upper end down to the brace", "", at.child("below"));
        w.given("cosθ", cosine(), RATIO, "of the angle between the brace and the horizontal", "", at.child("reach"));
        twist().write(w, at, context.layout().platformOf(brace).pointer());
        w.step("F_b,d", "τ * H_d / n_b * max(1, h_p / a_b) / cosθ", forceN(combination), NEWTON_, "");
    }

    List<String> assumptions() {
        List<String> all = new ArrayList<>(HorizontalLoad.assumptions(parameters, context));
        all.add(
                "Braces in one direction share the horizontal load equally but for twist, in compression and in tension; posts are hinged at"
                        + " their feet and under the beam, and beam and joints take the brace's push.");
        return List.copyOf(all);
    }
}
