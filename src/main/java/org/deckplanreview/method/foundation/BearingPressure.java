package org.deckplanreview.method.foundation;

import static org.deckplanreview.measure.MeasureUnit.CUBIC_METRE_;
import static org.deckplanreview.measure.MeasureUnit.CUBIC_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_CUBIC_METRE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.FootingPlace;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.PostPlace;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.loadpath.ActionForces;
import org.deckplanreview.measure.Length;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.SheetCase;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.submission.Soil;
import org.deckplanreview.submission.SoilClass;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Table;

/**
 * Net pressure under a footing from service loads: what the footing adds to the ground at its underside (BS 8004:1986, 1.2:
 * net loading intensity), on the area that has the resultant at its middle (EN 1997-1, annex D). The concrete counts with its
 * weight less that of the soil in whose place it stands; soil that is put back counts on both sides and drops out. Allowed is
 * the bearing resistance that an investigation states, else the presumed value of the soil's class.
 */
final class BearingPressure implements Method {

    private static final String PRESUMED = "presumedBearing";
    private static final String UNSTATED = "unstatedBearing";
    private static final ParameterDescription SOIL_WEIGHT = ParameterDescription.number(
                    "soilWeight", KILONEWTON_PER_CUBIC_METRE, "weight of the soil in whose place concrete stands")
            .lowerIsStricter();
    private static final String COMBINATIONS = "asdCombinations";
    private static final String LARGEST_ECCENTRICITY = "largestEccentricity";
    private static final Formula NET_LOAD = Formula.of("N_net = N + W - γ_s * V_s", KILONEWTON, "");
    private static final Formula PRESSURE = Formula.of("p = N_net / A", KILONEWTON_PER_SQUARE_METRE, "");
    private static final Formula UTILISATION = Formula.of("utilisation = p / q", RATIO, "");
    private static final Pointer SOIL = Pointer.of("/site/soil");

    private static final MethodDescription DESCRIPTION = new MethodDescription(
            "foundation.pressure",
            "BS 8004, net loading intensity; EN 1997-1, 6.5.4, effective area",
            "net pressure under the footing",
            KILONEWTON_PER_SQUARE_METRE,
            List.of(SubjectKind.FOOTINGS),
            List.of(
                    ParameterDescription.table(
                            PRESUMED,
                            "the presumed bearing value of each class of soil; a class without a row has none that can be"
                                    + " relied on",
                            wordColumn("soilClass"),
                            numberColumn("bearing", KILONEWTON_PER_SQUARE_METRE)),
                    ParameterDescription.number(
                                    UNSTATED,
                                    KILONEWTON_PER_SQUARE_METRE,
                                    "the bearing value where neither class nor resistance of the soil is stated")
                            .orNone()
                            .lowerIsStricter(),
                    SOIL_WEIGHT,
                    ParameterDescription.table(
                            COMBINATIONS,
                            "combinations of service loads: the factor of each load",
                            wordColumn("id"),
                            numberColumn("permanent", RATIO),
                            numberColumn("imposed", RATIO),
                            numberColumn("concentrated", RATIO),
                            numberColumn("snow", RATIO)),
                    ParameterDescription.number(
                                    LARGEST_ECCENTRICITY,
                                    RATIO,
                                    "the largest distance of the resultant from the middle over the footing's side")
                            .lowerIsStricter()),
            "Permanent and variable service loads and the footing's own weight less the weight of the soil in its place, over"
                    + " the part of its area in plan that has the resultant at its middle.");

    @Override
    public MethodDescription description() {
        return DESCRIPTION;
    }

    @Override
    public Evaluation evaluate(Subject subject, Parameters parameters, ReviewContext context) {
        Optional<Soil> soil = context.submission().site().soil();
        Optional<Measure> stated = soil.flatMap(Soil::bearingResistance);
        if (stated.filter(q -> q.value() <= 0).isPresent()) {
            return new Evaluation.OutOfScope("ground without bearing resistance carries no footing", "");
        }
        if (stated.isPresent()) {
            return on(
                    subject,
                    parameters,
                    context,
                    new Allowed(
                            stated.get(),
                            "bearing resistance that an investigation states",
                            "",
                            Optional.of(SOIL.child("bearingResistance")),
                            "The bearing resistance that is stated is the net allowable pressure at the footings' underside."));
        }
        Optional<SoilClass> soilClass = soil.flatMap(Soil::soilClass);
        if (soilClass.isEmpty()) {
            return parameters.has(UNSTATED)
                    ? on(
                            subject,
                            parameters,
                            context,
                            new Allowed(
                                    Measure.of(
                                            parameters.number(UNSTATED, KILONEWTON_PER_SQUARE_METRE),
                                            KILONEWTON_PER_SQUARE_METRE),
                                    "presumed bearing value of soil that is not described",
                                    parameters.source(UNSTATED),
                                    Optional.empty(),
                                    "The soil is not described; the lowest presumed bearing value is taken."))
                    : Foundation.missing(
                            SOIL.child("soilClass"),
                            "the class of the soil under the footings, for example firm-clay, or its bearing resistance");
        }
        String word = soilClass.get().word();
        return parameters
                .table(PRESUMED)
                .find("soilClass", word)
                .map(row -> on(
                        subject,
                        parameters,
                        context,
                        new Allowed(
                                Measure.of(
                                        row.number("bearing", KILONEWTON_PER_SQUARE_METRE),
                                        KILONEWTON_PER_SQUARE_METRE),
                                "presumed bearing value of " + word,
                                parameters.source(PRESUMED),
                                Optional.of(SOIL.child("soilClass")),
                                "Presumed bearing values are for preliminary use and must be confirmed on site; those of gravel and"
                                        + " sand suppose a base at least 1 m wide and ground water at least one width below it, so that"
                                        + " a small pad may carry less.")))
                .orElseGet(() -> new Evaluation.OutOfScope(
                        "no presumed bearing value can be relied on in " + word + "; an investigation must state one",
                        parameters.source(PRESUMED)));
    }

    private record Allowed(Measure value, String meaning, String source, Optional<Pointer> pointer, String assumption) {
        /** Enters q. */
        void enter(Sheet sheet) {
            sheet.given(
                    "q",
                    value.in(KILONEWTON_PER_SQUARE_METRE),
                    KILONEWTON_PER_SQUARE_METRE,
                    meaning,
                    source,
                    pointer.stream().toArray(Pointer[]::new));
        }
    }

    private static Evaluation on(Subject subject, Parameters parameters, ReviewContext context, Allowed allowed) {
        FootingPlace footing = (FootingPlace) subject;
        Derived<List<ActionForces>> forces = forces(footing, context);
        Derived<Base> base = PadPlan.of(footing, context)
                .with(context.loadPath().footingWeightN(footing), Weighted::new)
                .with(forces, (w, f) -> new Base(w.plan(), f, w.weightN(), inGroundMm3(footing), parameters, allowed));
        if (!base.isKnown()) {
            return new Evaluation.Missing(base.needs());
        }
        return base.get().evaluation();
    }

    private record Weighted(PadPlan plan, double weightN) {}

    /** The forces of each post where several stand on the footing, else all that comes down. */
    private static Derived<List<ActionForces>> forces(FootingPlace footing, ReviewContext context) {
        if (footing.isBlock()) {
            return onBlock(footing, context);
        }
        if (footing.posts().size() < 2) {
            return context.loadPath().footing(footing).map(List::of);
        }
        Derived<List<ActionForces>> all = Derived.known(List.of());
        for (PostPlace post : context.layout().platformOf(footing).posts()) {
            if (footing.posts().contains(post.id())) {
                Derived<ActionForces> one = context.loadPath()
                        .post(post)
                        .with(context.loadPath().postWeightN(post), BearingPressure::withWeight);
                all = all.with(one, BearingPressure::and);
            }
        }
        return all;
    }

    /** Of each joist that lies on a block, in the order of the plan's loads. */
    private static Derived<List<ActionForces>> onBlock(FootingPlace block, ReviewContext context) {
        Derived<List<ActionForces>> all = Derived.known(List.of());
        for (JoistLine joist : context.layout().platformOf(block).joists()) {
            for (int i = 0; i < joist.supports().size(); i++) {
                if (block.carries(joist.supports().get(i))) {
                    int support = i;
                    all = all.with(context.loadPath().member(joist).map(m -> m.forces(support)), BearingPressure::and);
                }
            }
        }
        return all;
    }

    private static ActionForces withWeight(ActionForces f, double weightN) {
        return new ActionForces(
                f.permanentN() + weightN, f.imposedLargestN(), f.imposedFullN(), f.concentratedN(), f.snowN());
    }

    private static List<ActionForces> and(List<ActionForces> some, ActionForces more) {
        List<ActionForces> all = new ArrayList<>(some);
        all.add(more);
        return List.copyOf(all);
    }

    /** Concrete below the ground; empty where the submission does not tell how far the footing rises above it. */
    private static Optional<Double> inGroundMm3(FootingPlace footing) {
        return footing.footing()
                .topAboveGround()
                .map(Length::mm)
                .flatMap(top -> footing.concreteVolumeMm3()
                        .optional()
                        .map(v -> Math.min(v, Math.max(0, v - footing.areaMm2() * top))));
    }

    /** One footing with what comes down on it. */
    private record Base(
            PadPlan plan,
            List<ActionForces> posts,
            double weightN,
            Optional<Double> inGroundMm3,
            Parameters parameters,
            Allowed allowed) {

        Evaluation evaluation() {
            List<Loading> loadings = parameters.table(COMBINATIONS).rows().stream()
                    .flatMap(row -> loadings(row).stream())
                    .toList();
            double limit = parameters.number(LARGEST_ECCENTRICITY, RATIO);
            boolean tips = loadings.stream()
                    .anyMatch(l -> !Sense.AT_MOST.holds(l.eccentricity().partOfSide(), limit));
            if (tips) {
                return new Evaluation.OutOfScope(
                        "the load on the footing is farther off its middle than " + Numbers.plain(limit)
                                + " of its side",
                        parameters.source(LARGEST_ECCENTRICITY));
            }
            Evaluation.Measured worst =
                    Case.worst(loadings.stream().map(Loading::pressure).toList());
            boolean tellsWithoutTop = inGroundMm3.isPresent() || Sense.AT_MOST.holds(worst.utilisation(), 1);
            return tellsWithoutTop
                    ? worst
                    : new Evaluation.Missing(List.of(new Need(
                            plan.footing().pointer().child("topAboveGround"),
                            "the height of the top of " + plan.footing().label() + " above the ground")));
        }

        /** All posts loaded, and where there are several each of them alone. */
        private List<Loading> loadings(Table.Row row) {
            ActionFactors f = new ActionFactors(
                    row.number("permanent", RATIO),
                    row.number("imposed", RATIO),
                    row.number("concentrated", RATIO),
                    row.number("snow", RATIO));
            ActionFactors permanent = new ActionFactors(f.permanent(), 0, 0, 0);
            List<Loading> all = new ArrayList<>();
            all.add(new Loading(
                    this, row.word("id"), posts.stream().map(p -> p.largestN(f)).toList()));
            for (int i = 0; posts.size() > 1 && i < posts.size(); i++) {
                List<Double> alone = new ArrayList<>();
                for (int j = 0; j < posts.size(); j++) {
                    alone.add(posts.get(j).largestN(i == j ? f : permanent));
                }
                all.add(new Loading(
                        this,
                        row.word("id") + " on one " + (plan.footing().isBlock() ? "joist" : "post") + " alone",
                        alone));
            }
            return all;
        }
    }

    /** One combination on one footing. */
    private record Loading(Base base, String combination, List<Double> onPostsN) {

        private double downN() {
            return onPostsN.stream().mapToDouble(Double::doubleValue).sum();
        }

        Eccentricity eccentricity() {
            double along = 0;
            double across = 0;
            for (int i = 0; i < onPostsN.size(); i++) {
                PlanPoint at = base.plan().loads().get(i);
                along += onPostsN.get(i) * base.plan().along(at);
                across += onPostsN.get(i) * base.plan().across(at);
            }
            double all = downN() + base.weightN();
            return all > 0
                    ? new Eccentricity(base.plan(), Math.abs(along / all), Math.abs(across / all))
                    : new Eccentricity(base.plan(), 0, 0);
        }

        Case pressure() {
            Parameters p = base.parameters();
            Pointer footing = base.plan().footing().pointer();
            Eccentricity eccentricity = eccentricity();
            Sheet load = Sheet.blank();
            load.given(
                    "N",
                    NEWTON_.convert(downN(), KILONEWTON),
                    KILONEWTON,
                    () -> "from the deck and its posts, " + combination,
                    p.source(COMBINATIONS));
            load.given(
                    "W", NEWTON_.convert(base.weightN(), KILONEWTON), KILONEWTON, "weight of the footing", "", footing);
            load.given(
                    "V_s",
                    CUBIC_MILLIMETRE.convert(base.inGroundMm3().orElse(0.0), CUBIC_METRE_),
                    CUBIC_METRE_,
                    "concrete below the ground, in place of soil",
                    "",
                    footing);
            p.enter(load, "γ_s", SOIL_WEIGHT);
            load.calculate(NET_LOAD);
            Sheet sheet = Sheet.on(load, eccentricity.area());
            sheet.calculate(PRESSURE);
            base.allowed().enter(sheet);
            return new SheetCase(
                    Sheet::blank,
                    sheet,
                    sheet.calculate(UTILISATION),
                    () -> sheet.measure("p"),
                    Sense.AT_MOST,
                    base.allowed()::value,
                    () -> "under service loads, " + combination,
                    () -> List.of(
                            eccentricity.isCentral()
                                    ? "The load on each footing acts through its middle."
                                    : PadPlan.ASSUMPTION,
                            base.allowed().assumption()));
        }
    }
}
