package org.deckplanreview.assessment;

import static org.deckplanreview.vocabulary.ParameterDescription.flag;
import static org.deckplanreview.vocabulary.ParameterDescription.number;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.table;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.deckplanreview.kernel.Derived;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.GuardRun;
import org.deckplanreview.layout.Layout;
import org.deckplanreview.layout.PlatformLayout;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.loadpath.LoadModel;
import org.deckplanreview.loadpath.LoadModel.OnEdges;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.LoadRules;
import org.deckplanreview.submission.GuardInfill;
import org.deckplanreview.submission.Site;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.Use;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/**
 * The loads that an edition puts on a layout.
 *
 * @param categories of the imposed load, by platform
 * @param assumptions each choice of a load, in words
 */
record Loads(LoadModel model, List<Derived<String>> categories, List<String> assumptions) {

    private static final String LEAST_SHARE = "concentratedShareOnJoist";
    private static final String LEAST_DEAD = "leastDead";
    private static final String STAIR_WEIGHT = "stairPermanentLoad";
    private static final String STAIR_LOADS = "stairLoads";
    private static final String GUARD_WEIGHTS = "guardWeights";
    private static final Pointer OCCUPANCY = Pointer.of("/use/occupancy");
    private static final String NO_CATEGORY = "none";

    static final List<ParameterDescription> PARAMETERS = List.of(
            table(
                    "strengthClasses",
                    "Mean stiffness and density of strength classes",
                    wordColumn("class"),
                    numberColumn("e0Mean", MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE),
                    numberColumn("gMean", MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE),
                    numberColumn("rhoMean", MeasureUnit.KILOGRAM_PER_CUBIC_METRE)),
            number("concreteWeight", MeasureUnit.KILONEWTON_PER_CUBIC_METRE, "Weight of concrete in footings"),
            number("gravity", MeasureUnit.METRE_PER_SECOND_SQUARED, "To turn a density into a weight"),
            flag("shearDeformation", "Whether deflections include the part from shear"),
            number("shearAreaFactor", MeasureUnit.RATIO, "Area of a section over its shear area"),
            number(
                    LEAST_SHARE,
                    MeasureUnit.RATIO,
                    "Least part of a concentrated load in mid-span that bends one joist where boards spread it"),
            number(
                            STAIR_WEIGHT,
                            MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                            "Weight of a flight: treads, risers and strings, in plan")
                    .higherIsStricter(),
            table(
                    STAIR_LOADS,
                    "Imposed loads on stairs by occupancy, in plan: on each area, and on one place",
                    wordColumn("occupancy"),
                    numberColumn("uniform", MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
                    numberColumn("concentrated", MeasureUnit.KILONEWTON)),
            table(
                    GUARD_WEIGHTS,
                    "Weight of guards by what fills them",
                    wordColumn("infill"),
                    numberColumn("weight", MeasureUnit.KILONEWTON_PER_METRE)),
            number(
                            LEAST_DEAD,
                            MeasureUnit.KILONEWTON_PER_SQUARE_METRE,
                            "Least permanent load of finishes, boards and joists together")
                    .orNone()
                    .higherIsStricter());

    static Loads of(Edition edition, Layout layout, Conditions conditions) {
        LoadRules rules = edition.loads();
        List<LoadModel.PlatformLoads> platforms = new ArrayList<>();
        List<Derived<String>> categories = new ArrayList<>();
        List<String> assumptions = new ArrayList<>();
        Use use = layout.submission().use();
        Site site = layout.submission().site();
        Optional<Measure> snow = site.snowLoad().or(site::groundSnowLoad);
        for (PlatformLayout platform : layout.platforms()) {
            Candidates rows = candidates(rules, platform, conditions);
            categories.add(rows.agreed(r -> r.category().orElse(NO_CATEGORY)));
            Derived<Double> uniform = rows.agreed(
                    r -> larger(Optional.of(r.uniform()), use.imposedLoad(), MeasureUnit.KILONEWTON_PER_SQUARE_METRE));
            Derived<Double> concentrated =
                    rows.agreed(r -> larger(r.concentrated(), use.concentratedLoad(), MeasureUnit.NEWTON_));
            uniform.with(concentrated, Imposed::new)
                    .optional()
                    .ifPresent(i -> assumptions.add(imposedText(platform, rows, i, layout.submission())));
            platforms.add(new LoadModel.PlatformLoads(
                    uniform,
                    rows.only().map(r -> r.citation().text()).orElse(""),
                    concentrated,
                    finishes(platform, assumptions),
                    snow.map(s -> s.in(MeasureUnit.KILONEWTON_PER_SQUARE_METRE)).orElse(0.0)));
        }
        if (site.snowLoad().isEmpty()) {
            assumptions.add(
                    site.groundSnowLoad().isPresent()
                            ? "No snow load on the deck is stated; all the snow on the ground is taken to lie on the deck."
                            : "No snow load is stated; none is applied.");
        }
        if (!use.heavyItems().isEmpty()) {
            assumptions.add("The imposed load is applied under heavy items too, in addition to their weight.");
        }
        double leastShare = rules.parameters().number(LEAST_SHARE, MeasureUnit.RATIO);
        if (leastShare < 1) {
            assumptions.add(
                    "Of a concentrated load in mid-span the board under it passes a part to the joists on both sides,"
                            + " by their stiffness; the joist keeps at least "
                            + Phrases.of(Measure.of(leastShare * 100, MeasureUnit.PERCENT_))
                            + " of it. Supports, overhangs and the outermost joists take the whole.");
        }
        return new Loads(
                new LoadModel(
                        platforms,
                        materials(rules.parameters()),
                        rules.parameters().number("concreteWeight", MeasureUnit.KILONEWTON_PER_CUBIC_METRE),
                        rules.parameters().number("gravity", MeasureUnit.METRE_PER_SECOND_SQUARED),
                        rules.parameters().flag("shearDeformation"),
                        rules.parameters().number("shearAreaFactor", MeasureUnit.RATIO),
                        leastShare,
                        leastDead(
                                rules.parameters(), layout.submission().units().system(), assumptions),
                        onEdges(rules.parameters(), layout, assumptions)),
                List.copyOf(categories),
                List.copyOf(assumptions));
    }

    /**
     * The rows that hold on a platform or could hold, and what would tell which of them does. A value in which all of them
     * agree does not wait for it.
     */
    private record Candidates(List<LoadRules.ImposedRow> rows, List<Need> needs) {

        <T> Derived<T> agreed(Function<LoadRules.ImposedRow, T> value) {
            List<T> values = rows.stream().map(value).distinct().toList();
            return values.size() == 1 ? Derived.known(values.get(0)) : Derived.missing(needs);
        }

        /** The row that holds; empty where it is not known which. */
        Optional<LoadRules.ImposedRow> only() {
            return rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty();
        }
    }

    private record Imposed(double uniform, double concentratedN) {}

    private static Candidates candidates(LoadRules rules, PlatformLayout platform, Conditions conditions) {
        List<LoadRules.ImposedRow> rows = new ArrayList<>();
        List<Need> needs = new ArrayList<>();
        for (LoadRules.ImposedRow row : rules.imposed()) {
            Derived<Boolean> holds = conditions.holds(row.when(), platform);
            if (!holds.isKnown() || holds.get()) {
                rows.add(row);
                needs.addAll(holds.needs());
            }
            if (holds.isKnown() && holds.get()) {
                return new Candidates(rows, needs);
            }
        }
        // No row holds for sure: the edition may have no load for this platform.
        return new Candidates(
                List.of(),
                needs.isEmpty()
                        ? List.of(new Need(
                                platform.pointer(),
                                "an occupancy and height for which the edition gives an imposed load"))
                        : needs);
    }

    private static double larger(Optional<Measure> required, Optional<Measure> stated, MeasureUnit unit) {
        return Stream.of(required, stated)
                .flatMap(Optional::stream)
                .mapToDouble(m -> m.in(unit))
                .max()
                .orElse(0);
    }

    private static double finishes(PlatformLayout platform, List<String> assumptions) {
        Optional<Measure> stated = platform.platform().finishes();
        if (stated.isEmpty()) {
            assumptions.add(
                    "On " + platform.label() + " nothing is laid on the boards for good: no finishes are stated.");
        }
        return stated.map(f -> f.in(MeasureUnit.KILONEWTON_PER_SQUARE_METRE)).orElse(0.0);
    }

    private static OptionalDouble leastDead(Parameters parameters, UnitSystem units, List<String> assumptions) {
        if (!parameters.has(LEAST_DEAD)) {
            return OptionalDouble.empty();
        }
        double least = parameters.number(LEAST_DEAD, MeasureUnit.KILONEWTON_PER_SQUARE_METRE);
        assumptions.add("Finishes, boards and joists together weigh at least "
                + Phrases.of(Measure.of(least, MeasureUnit.KILONEWTON_PER_SQUARE_METRE), units) + ".");
        return OptionalDouble.of(least);
    }

    private static OnEdges onEdges(Parameters parameters, Layout layout, List<String> assumptions) {
        String occupancy = layout.submission().use().occupancy().word();
        Derived<Table.Row> imposed = Derived.of(
                parameters.table(STAIR_LOADS).find("occupancy", occupancy),
                OCCUPANCY,
                "an occupancy for which the edition gives loads of stairs");
        SortedMap<GuardInfill, Double> guards = new TreeMap<>();
        for (GuardInfill infill : GuardInfill.values()) {
            parameters
                    .table(GUARD_WEIGHTS)
                    .find("infill", infill.word())
                    .ifPresent(r -> guards.put(infill, r.number("weight", MeasureUnit.KILONEWTON_PER_METRE)));
        }
        OnEdges onEdges = new OnEdges(
                parameters.number(STAIR_WEIGHT, MeasureUnit.KILONEWTON_PER_SQUARE_METRE),
                imposed.map(r -> r.number("uniform", MeasureUnit.KILONEWTON_PER_SQUARE_METRE)),
                imposed.map(r -> r.number("concentrated", MeasureUnit.NEWTON_)),
                guards);
        UnitSystem units = layout.submission().units().system();
        for (PlatformLayout platform : layout.platforms()) {
            platform.stairs().forEach(s -> assumptions.add(stairText(s, onEdges, units)));
            platform.guards().forEach(g -> assumptions.add(guardText(g, onEdges, units)));
        }
        return onEdges;
    }

    private static String stairText(StairRun stair, OnEdges loads, UnitSystem units) {
        return "Of " + stair.label() + " half goes to the frame at its head and half to the landing at its foot: "
                + Phrases.of(Measure.of(loads.stairWeightKNPerM2(), MeasureUnit.KILONEWTON_PER_SQUARE_METRE), units)
                + " of plan for its weight"
                + loads.stairImposedKNPerM2()
                        .optional()
                        .map(q -> ", "
                                + Phrases.of(Measure.of(q, MeasureUnit.KILONEWTON_PER_SQUARE_METRE), units)
                                + " for people on it")
                        .orElse("")
                + (stair.stair().strings().isPresent()
                        ? "."
                        : ". Its strings are not described; it is taken to hang evenly on its whole width.");
    }

    private static String guardText(GuardRun guard, OnEdges loads, UnitSystem units) {
        return "For its weight " + guard.label() + " counts with "
                + Phrases.of(
                        Measure.of(loads.guardKNPerM(guard.guard().infill()), MeasureUnit.KILONEWTON_PER_METRE), units)
                + (guard.guard().infill().isPresent()
                        ? "."
                        : ", the most of any kind, since what fills it is not given.");
    }

    private static String imposedText(
            PlatformLayout platform, Candidates rows, Imposed imposed, Submission submission) {
        UnitSystem units = submission.units().system();
        double uniform = imposed.uniform();
        String text = "Imposed load on " + platform.label() + ": "
                + Phrases.of(Measure.of(uniform, MeasureUnit.KILONEWTON_PER_SQUARE_METRE), units)
                + (imposed.concentratedN() > 0
                        ? " or one load of "
                                + Phrases.of(Measure.of(imposed.concentratedN() / 1000, MeasureUnit.KILONEWTON), units)
                        : "")
                + rows.agreed(LoadRules.ImposedRow::category)
                        .optional()
                        .flatMap(c -> c)
                        .map(category -> ", category " + category)
                        .orElse("")
                + ". "
                + rows.only()
                        .map(LoadRules.ImposedRow::reason)
                        .orElse("The stated load is at least what the ruleset asks for at any height of the deck.");
        boolean statedIsLower = submission
                .use()
                .imposedLoad()
                .map(s -> s.in(MeasureUnit.KILONEWTON_PER_SQUARE_METRE) < uniform)
                .orElse(false);
        return statedIsLower ? text + " The submission states less; the ruleset's value is used." : text;
    }

    private static SortedMap<String, LoadModel.Material> materials(Parameters parameters) {
        SortedMap<String, LoadModel.Material> materials = new TreeMap<>();
        for (Table.Row row : parameters.table("strengthClasses").rows()) {
            materials.put(
                    row.word("class"),
                    new LoadModel.Material(
                            row.number("e0Mean", MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE),
                            row.number("gMean", MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE),
                            row.number("rhoMean", MeasureUnit.KILOGRAM_PER_CUBIC_METRE)));
        }
        return materials;
    }
}
