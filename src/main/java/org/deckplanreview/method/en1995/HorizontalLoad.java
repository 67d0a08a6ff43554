package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_METRE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.EdgeRun;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.loadpath.LoadPath;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.submission.Beam;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.JoistSeating;
import org.deckplanreview.submission.Occupancy;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/**
 * What pushes a platform sideways in one direction: a part of the design load on all of its posts, for loads that stand out
 * of plumb; people, who sway together or press against the guards of one side, whichever is more; and wind, of the pressure
 * that the submission states or else the cautious one of the ruleset. With wind, people count with their combination factor.
 *
 * @param vertical on all posts together with their weight, every span loaded; the concentrated load stands once
 * @param peopleFactor of the push of people: 1, or their psi0 where wind leads
 * @param guardedWidthMm of the guards that people can press against
 * @param guardNPerMm line load along them
 * @param windNPerMm2 0 for no wind
 * @param windAreaMm2 of frame and guards
 */
record HorizontalLoad(
        ActionForces vertical,
        double peopleFactor,
        double guardedWidthMm,
        double guardNPerMm,
        double windNPerMm2,
        double windAreaMm2) {
    private static final ParameterDescription SHARE = ParameterDescription.number(
            "notionalShare", RATIO, "horizontal load as a part of the design load on the platform's posts");
    private static final ParameterDescription WIND =
            ParameterDescription.number("windFactor", RATIO, "partial factor of wind");
    private static final ParameterDescription WIND_DURATION =
            ParameterDescription.word("windDuration", "load duration class of wind");

    private static final ParameterDescription CROWD = ParameterDescription.number(
                    "crowdShare", RATIO, "push of people who sway together, as a part of their design weight")
            .higherIsStricter();
    private static final ParameterDescription UNSTATED = ParameterDescription.number(
                    "unstatedWindPressure",
                    KILONEWTON_PER_SQUARE_METRE,
                    "wind pressure that is taken where the submission states none")
            .higherIsStricter();
    private static final ParameterDescription GUARD_LOADS = ParameterDescription.table(
            "guardLoads",
            "horizontal line load on guards by occupancy",
            wordColumn("occupancy"),
            numberColumn("line", KILONEWTON_PER_METRE));

    private static final Formula PEOPLE = Formula.of("P_d = max(κ * Q_d, γ_q * q_g * w_g)", NEWTON_, "");

    /** The whole push, with partial factors or in service. */
    private enum Push {
        DESIGN("H_d"),
        CHARACTERISTIC("H_k");

        private final Formula still;
        private final Formula windy;

        Push(String symbol) {
            still = Formula.of(symbol + " = ν * V_d + P_d", NEWTON_, "");
            windy = Formula.of(symbol + " = ν * V_d + ψ_0 * P_d + γ_w * p_w * A_w", NEWTON_, "");
        }
    }

    static final List<ParameterDescription> PARAMETERS =
            List.of(SHARE, CROWD, GUARD_LOADS, WIND, UNSTATED, Twist.SHARE);
    static final List<ParameterDescription> DURATION = List.of(WIND_DURATION);

    static final String BUILDING_HOLDS =
            "The building holds the deck in both directions through the ledger, its fixings and the boards, which are not calculated"
                    + " for that.";
    private static final Pointer PRESSURE = Pointer.of("/site/windPressure");

    static Derived<HorizontalLoad> of(
            PlatformLayout platform, Direction direction, Parameters parameters, ReviewContext context) {
        return of(platform, direction, vertical(platform, context.loadPath()), parameters, context);
    }

    /** With the load from above that is given. */
    static Derived<HorizontalLoad> of(
            PlatformLayout platform,
            Direction direction,
            Derived<ActionForces> vertical,
            Parameters parameters,
            ReviewContext context) {
        double pressure = pressure(parameters, context).in(NEWTON_PER_SQUARE_MILLIMETRE);
        double guarded = guardedWidthMm(platform, direction);
        double line = guardNPerMm(parameters, context.submission().use().occupancy());
        Derived<Double> windArea = pressure > 0 ? windArea(platform, direction) : Derived.known(0.0);
        return vertical.with(windArea, (v, area) -> new HorizontalLoad(v, 1, guarded, line, pressure, area));
    }

    private static Measure pressure(Parameters parameters, ReviewContext context) {
        return context.submission()
                .site()
                .windPressure()
                .orElseGet(() -> Measure.of(
                        parameters.number(UNSTATED.name(), KILONEWTON_PER_SQUARE_METRE), KILONEWTON_PER_SQUARE_METRE));
    }

    /** People press against the guards of one side at a time. */
    private static double guardedWidthMm(PlatformLayout platform, Direction direction) {
        double all = platform.edges().stream()
                .filter(e -> e.guard().isPresent())
                .mapToDouble(e -> SidewaysSupport.widthMm(e, direction))
                .sum();
        return Math.min(all, new SidewaysSupport(platform).widthMm(direction));
    }

    private static double guardNPerMm(Parameters parameters, Occupancy occupancy) {
        Table table = parameters.table(GUARD_LOADS.name());
        return table.find("occupancy", occupancy.word())
                .map(r -> KILONEWTON_PER_METRE.convert(r.number("line", KILONEWTON_PER_METRE), NEWTON_PER_MILLIMETRE))
                .orElseThrow(() ->
                        new IllegalArgumentException(table.source() + " has no line load for " + occupancy.word()));
    }

    private static Derived<ActionForces> vertical(PlatformLayout platform, LoadPath loads) {
        Derived<ActionForces> sum = Derived.known(ActionForces.NONE);
        for (PostPlace post : platform.posts()) {
            sum = sum.with(
                    loads.post(post).with(loads.postWeightN(post), ActionForces::withWeight), ActionForces::plus);
        }
        return sum;
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

    /** From the upper ends of the posts to the top of the boards. */
    static Derived<Double> frameDepth(PlatformLayout platform) {
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

    boolean isWindy() {
        return windNPerMm2 > 0 && windAreaMm2 > 0;
    }

    /** People in full without wind, and wind in full with people by their combination factor. */
    List<HorizontalLoad> alternatives(Combination.Psi psi) {
        HorizontalLoad still = new HorizontalLoad(vertical, 1, guardedWidthMm, guardNPerMm, 0, windAreaMm2);
        HorizontalLoad windy =
                new HorizontalLoad(vertical, psi.imposed0(), guardedWidthMm, guardNPerMm, windNPerMm2, windAreaMm2);
        return isWindy() ? List.of(still, windy) : List.of(still);
    }

    /** Without what lies on the platform: people who press against a guard do not stand where it would lift. */
    HorizontalLoad ofWeightAlone() {
        return under(new ActionForces(vertical.permanentN(), 0, 0, 0, 0));
    }

    /** With another load from above. */
    HorizontalLoad under(ActionForces forces) {
        return new HorizontalLoad(forces, peopleFactor, guardedWidthMm, guardNPerMm, windNPerMm2, windAreaMm2);
    }

    /** k_mod with this load beside the actions of the combination. */
    Modification modification(Combination combination, Parameters parameters) {
        return isWindy()
                ? Modification.of(parameters, combination.factors(), parameters.word(WIND_DURATION.name()))
                : Modification.of(parameters, combination.factors());
    }

    /** People who press against guards are imposed load: they are there where it is. */
    private static double lineFactor(Combination combination) {
        return Math.max(combination.factors().imposed(), combination.factors().concentrated());
    }

    /**
     * Calculates H_d. Wind comes on top in full, whatever else leads. Returns it in N.
     *
     * @param direction for people
     */
    double calculate(Sheet sheet, Combination combination, Parameters parameters, String direction, Pointer platform) {
        return calculate(
                sheet,
                combination,
                parameters,
                direction,
                platform,
                parameters.source(Combination.COMBINATIONS.name()));
    }

    /**
     * Calculates H_d likewise.
     *
     * @param combinations source of the combination's factors
     */
    double calculate(
            Sheet sheet,
            Combination combination,
            Parameters parameters,
            String direction,
            Pointer platform,
            String combinations) {
        enterPeople(sheet, combination, parameters, direction, platform, combinations);
        if (isWindy()) {
            enterWind(sheet, direction, platform);
            parameters.enter(sheet, "γ_w", WIND);
        }
        return sheet.calculate(isWindy() ? Push.DESIGN.windy : Push.DESIGN.still);
    }

    /** Calculates H_k, with wind as it is; the combination's factors are those of service. Returns it in N. */
    double calculateCharacteristic(
            Sheet sheet, Combination combination, Parameters parameters, String direction, Pointer platform) {
        String combinations = parameters.source(Combination.COMBINATIONS.name());
        enterPeople(sheet, combination, parameters, direction, platform, combinations);
        if (isWindy()) {
            enterWind(sheet, direction, platform);
            sheet.given("γ_w", 1, RATIO, "factor of wind", "");
        }
        return sheet.calculate(isWindy() ? Push.CHARACTERISTIC.windy : Push.CHARACTERISTIC.still);
    }

    private void enterPeople(
            Sheet sheet,
            Combination combination,
            Parameters parameters,
            String direction,
            Pointer platform,
            String combinations) {
        sheet.given(
                "V_d",
                vertical.fullN(combination.factors()),
                NEWTON_,
                () -> "design load that comes down from the platform, " + combination.id(),
                combinations,
                platform);
        parameters.enter(sheet, "ν", SHARE);
        double crowdN = vertical.peopleN(combination.factors());
        sheet.given("Q_d", crowdN, NEWTON_, "design weight of people among it", "", platform);
        parameters.enter(sheet, "κ", CROWD);
        sheet.given("γ_q", lineFactor(combination), RATIO, "partial factor of people at the guards", "");
        sheet.given(
                "q_g",
                guardNPerMm,
                NEWTON_PER_MILLIMETRE,
                "line load on guards",
                parameters.source(GUARD_LOADS.name()));
        sheet.given(
                "w_g",
                guardedWidthMm,
                MILLIMETRE,
                () -> "width of guards on one side, seen " + direction,
                "",
                platform);
        sheet.calculate(PEOPLE);
    }

    private void enterWind(Sheet sheet, String direction, Pointer platform) {
        sheet.given("ψ_0", peopleFactor, RATIO, "combination factor of people where wind leads", "");
        sheet.given("p_w", windNPerMm2, NEWTON_PER_SQUARE_MILLIMETRE, "wind pressure", "", PRESSURE);
        sheet.given(
                "A_w",
                windAreaMm2,
                SQUARE_MILLIMETRE,
                () -> "area of frame and guards, seen " + direction,
                "",
                platform);
    }

    /** For the remark of a finding. */
    String words() {
        return isWindy() ? " and wind" : "";
    }

    static List<String> assumptions(Parameters parameters, ReviewContext context) {
        List<String> all = new ArrayList<>(ofWind(parameters, context));
        all.add(
                "People sway together or press against the guards of one side, whichever is more; where wind leads they count"
                        + " with their combination factor.");
        all.add(
                "Boards hold the deck as one stiff plate, which also turns about the middle of what holds it; the push can stand"
                        + " off the deck's middle to either side.");
        return List.copyOf(all);
    }

    static List<String> ofWind(Parameters parameters, ReviewContext context) {
        List<String> all = new ArrayList<>();
        if (context.submission().site().windPressure().isEmpty()) {
            all.add(
                    "No wind pressure is stated: " + context.written(pressure(parameters, context))
                            + " is taken, as on an exposed site. On a high coast or hill it can be more; state the site's own.");
        }
        all.add(
                "Wind acts on the frame's edge and on guards as if they were closed, on both sides of the deck; it comes on"
                        + " top of the notional horizontal load in full.");
        return List.copyOf(all);
    }
}
