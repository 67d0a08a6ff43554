package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.formula.Formula;
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

    private static final Formula COSINE = Formula.of("cosθ = r_b / l_b", RATIO, "");

    /** The lever is at least 1: a brace that meets the post below the ground has no more effect than one at its foot. */
    private static final Formula FORCE = Formula.of("F_b,d = τ * H_d / n_b * max(1, h_p / a_b) / cosθ", NEWTON_, "");

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

    private List<Combination> combinations() {
        return Combination.of(parameters, State.ULTIMATE, psi, load.vertical().snowN() != 0);
    }

    /** All braces that share the load, counted by how far they lie in this one's direction. */
    private double sharers() {
        Direction direction = brace.brace().direction();
        return PostSway.cosines(new SidewaysSupport(context.layout().platformOf(brace)).braces(direction), direction);
    }

    /** What of a brace's force is the same under all combinations. */
    private Sheet shared() {
        PlatformLayout platform = context.layout().platformOf(brace);
        Pointer at = brace.pointer();
        Sheet sheet = Sheet.blank();
        sheet.given("n_b", sharers(), RATIO, "braces that share it, by their part in this direction", "", at);
        sheet.given("h_p", heightMm, MILLIMETRE, "clear height of the post", "", at.child("post"));
        double below = brace.brace().below().mm();
        sheet.given("a_b", below, MILLIMETRE, "from the post's upper end down to the brace", "", at.child("below"));
        double reach = brace.brace().reach().mm();
        sheet.given("r_b", reach, MILLIMETRE, "reach of the brace along the beam", "", at.child("reach"));
        sheet.given("l_b", brace.lengthMm(), MILLIMETRE, "length of the brace", "", at);
        sheet.calculate(COSINE);
        Twist.of(
                        new SidewaysSupport(platform),
                        brace.brace().direction(),
                        post(brace, platform).orElseThrow().post().at())
                .calculate(sheet, parameters, at, platform.pointer());
        return sheet;
    }

    /** The brace under one of the loads that may lead and one combination. */
    record Pushed(Combination combination, HorizontalLoad load, Sheet sheet, double forceN) {}

    /** F_b,d along the brace, in compression or tension as the deck is pushed to and fro, of every combination and load. */
    List<Pushed> pushed() {
        Sheet shared = shared();
        Pointer platform = context.layout().platformOf(brace).pointer();
        List<Pushed> all = new ArrayList<>();
        for (HorizontalLoad leading : load.alternatives(psi)) {
            for (Combination c : combinations()) {
                Sheet sheet = Sheet.on(shared);
                leading.calculate(sheet, c, parameters, "along the brace", platform);
                all.add(new Pushed(c, leading, sheet, sheet.calculate(FORCE)));
            }
        }
        return all;
    }

    List<String> assumptions() {
        List<String> all = new ArrayList<>(HorizontalLoad.assumptions(parameters, context));
        all.add(
                "Braces in one direction share the horizontal load equally but for twist, in compression and in tension; posts are hinged at"
                        + " their feet and under the beam, and beam and joints take the brace's push.");
        return List.copyOf(all);
    }
}
