package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.Working;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.Derived;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.Pointer;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What pushes a platform sideways in one direction: a part of the design load on all of its posts, for loads that stand out
 * of plumb and people who sway, and wind where the submission states its pressure.
 *
 * @param vertical on all posts together with their weight, every span loaded; the concentrated load stands once
 * @param windNPerMm2 0 where none is stated
 * @param windAreaMm2 of frame and guards
 */
record HorizontalLoad(ActionForces vertical, double windNPerMm2, double windAreaMm2) {
    private static final ParameterDescription SHARE = ParameterDescription.number(
            "notionalShare", RATIO, "horizontal load as a part of the design load on the platform's posts");
    private static final ParameterDescription WIND =
            ParameterDescription.number("windFactor", RATIO, "partial factor of wind");
    private static final ParameterDescription WIND_DURATION =
            ParameterDescription.word("windDuration", "load duration class of wind");

    static final List<ParameterDescription> PARAMETERS = List.of(SHARE, WIND);
    static final List<ParameterDescription> DURATION = List.of(WIND_DURATION);

    static final String BUILDING_HOLDS =
            "The building holds the deck in both directions through the ledger, its fixings and the boards, which are not calculated"
                    + " for that.";
    private static final Pointer PRESSURE = Pointer.of("/site/windPressure");

    static Derived<HorizontalLoad> of(PlatformLayout platform, Direction direction, ReviewContext context) {
        Optional<Measure> pressure = context.submission().site().windPressure();
        Derived<Double> area = pressure.isPresent() ? windArea(platform, direction) : Derived.known(0.0);
        double p = pressure.map(m -> m.in(NEWTON_PER_SQUARE_MILLIMETRE)).orElse(0.0);
        return vertical(platform, context.loadPath()).with(area, (v, a) -> new HorizontalLoad(v, p, a));
    }

    private static Derived<ActionForces> vertical(PlatformLayout platform, LoadPath loads) {
        Derived<ActionForces> sum = Derived.known(new ActionForces(0, 0, 0, 0, 0));
        for (PostPlace post : platform.posts()) {
            sum = sum.with(
                    loads.post(post).with(loads.postWeightN(post), HorizontalLoad::withWeight), HorizontalLoad::add);
        }
        return sum;
    }

    private static ActionForces withWeight(ActionForces f, double weightN) {
        return new ActionForces(
                f.permanentN() + weightN, f.imposedLargestN(), f.imposedFullN(), f.concentratedN(), f.snowN());
    }

    private static ActionForces add(ActionForces a, ActionForces b) {
        return new ActionForces(
                a.permanentN() + b.permanentN(),
                a.imposedLargestN() + b.imposedLargestN(),
                a.imposedFullN() + b.imposedFullN(),
                Math.max(a.concentratedN(), b.concentratedN()),
                a.snowN() + b.snowN());
    }

    /** The frame's edge across the deck once, and every edge with a guard, those on the far side too. */
    private static Derived<Double> windArea(PlatformLayout platform, Direction direction) {
        double width = new SidewaysSupport(platform).widthMm(direction);
        Derived<Double> area = frameDepth(platform).map(d -> d * width);
        for (EdgeRun edge : platform.edges()) {
            if (edge.guard().isPresent()) {
                Derived<Double> height = Derived.of(
                        edge.guard().get().height().map(Length::mm),
                        edge.guardPointer().orElse(edge.pointer()).child("height"),
                        "the height of the guard at " + edge.label());
                area = area.with(height, (a, h) -> a + h * SidewaysSupport.widthMm(edge, direction));
            }
        }
        return area;
    }

    private static Derived<Double> frameDepth(PlatformLayout platform) {
        Derived<Double> boards = Derived.of(
                platform.boards().map(b -> b.timber().depth().mm()),
                platform.pointer().child("boards"),
                "the boards of " + platform.label());
        Derived<Double> joists = Derived.of(
                platform.joists().stream()
                        .findFirst()
                        .map(j -> j.timber().depth().mm()),
                platform.pointer().child("joists"),
                "the joists of " + platform.label());
        List<String> below = platform.platform().beams().stream()
                .filter(b -> b.joists() == JoistSeating.ON_TOP)
                .map(Beam::id)
                .toList();
        double beams = platform.beams().stream()
                .filter(b -> below.contains(b.id()))
                .mapToDouble(b -> b.timber().depth().mm())
                .max()
                .orElse(0);
        return boards.with(joists, (b, j) -> b + j + beams);
    }

    private static double share(Parameters parameters) {
        return parameters.number(SHARE.name(), RATIO);
    }

    private double verticalN(Combination combination) {
        return combination.factors().permanent() * vertical.permanentN()
                + combination.factors().imposed() * vertical.imposedFullN()
                + combination.factors().concentrated() * vertical.concentratedN()
                + combination.factors().snow() * vertical.snowN();
    }

    private double windN() {
        return windNPerMm2 * windAreaMm2;
    }

    boolean isWindy() {
        return windN() != 0;
    }

    /** Without wind and, where there is wind, with it. */
    List<HorizontalLoad> alternatives() {
        return isWindy() ? List.of(new HorizontalLoad(vertical, 0, 0), this) : List.of(this);
    }

    /** k_mod with this load beside the actions of the combination. */
    Modification modification(Combination combination, Parameters parameters) {
        return isWindy()
                ? Modification.of(parameters, combination.factors(), parameters.word(WIND_DURATION.name()))
                : Modification.of(parameters, combination.factors());
    }

    /** H_d, N. Wind comes on top in full, whatever else leads. */
    double designN(Combination combination, Parameters parameters) {
        return share(parameters) * verticalN(combination) + parameters.number(WIND.name(), RATIO) * windN();
    }

    /** Shows H_d and how it comes about. */
    void write(Working w, Combination combination, Parameters parameters, String direction, Pointer platform) {
        w.given(
                "V_d",
                verticalN(combination),
                NEWTON_,
                "design load on all posts of the platform, " + combination.id(),
                parameters.source(Combination.COMBINATIONS.name()),
                platform);
        w.given("ν", share(parameters), RATIO, "notional horizontal part", parameters.source(SHARE.name()));
        if (!isWindy()) {
            w.step("H_d", "ν * V_d", designN(combination, parameters), NEWTON_, "");
            return;
        }
        w.given("p_w", windNPerMm2, NEWTON_PER_SQUARE_MILLIMETRE, "stated wind pressure", "", PRESSURE);
        w.given("A_w", windAreaMm2, SQUARE_MILLIMETRE, "area of frame and guards, seen " + direction, "", platform);
        w.given(
                "γ_w",
                parameters.number(WIND.name(), RATIO),
                RATIO,
                "partial factor of wind",
                parameters.source(WIND.name()));
        w.step("H_d", "ν * V_d + γ_w * p_w * A_w", designN(combination, parameters), NEWTON_, "");
    }

    /** For the remark of a finding. */
    String words() {
        return isWindy() ? " and wind" : "";
    }

    static List<String> assumptions(ReviewContext context) {
        return List.of(
                context.submission().site().windPressure().isEmpty()
                        ? "No wind pressure is stated: the notional horizontal load stands for wind too."
                        : "Wind acts on the frame's edge and on guards as if they were closed, on both sides of the deck; it"
                                + " comes on top of the notional horizontal load in full.",
                "The deck does not twist: what holds it sideways stands evenly about its middle.");
    }
}
