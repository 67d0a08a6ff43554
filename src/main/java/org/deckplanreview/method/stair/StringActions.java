package org.deckplanreview.method.stair;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_METRE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.PartialFactors;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.GuardInfill;
import org.deckplanreview.submission.Strings;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/**
 * Design loads of a stair: on the string that carries most, as a simple beam over the flight's going, and on one tread. Either
 * the load on each area acts or the load on one place.
 */
record StringActions(StairRun stair, Strings strings, Table.Row loads, Parameters parameters) {

    private static final ParameterDescription LOADS = ParameterDescription.table(
            "stairLoads",
            "imposed loads on stairs by occupancy, in plan: on each area, and on one place",
            wordColumn("occupancy"),
            numberColumn("uniform", KILONEWTON_PER_SQUARE_METRE),
            numberColumn("concentrated", KILONEWTON));
    private static final ParameterDescription WEIGHT = ParameterDescription.number(
            "stairPermanentLoad", KILONEWTON_PER_SQUARE_METRE, "weight of treads, risers and strings, in plan");
    private static final ParameterDescription GUARDS = ParameterDescription.table(
            "guardWeights",
            "weight of guards by what fills them",
            wordColumn("infill"),
            numberColumn("weight", KILONEWTON_PER_METRE));

    static final List<ParameterDescription> PARAMETERS = List.of(LOADS, WEIGHT, GUARDS, PartialFactors.PARAMETER);

    static final List<String> ASSUMPTIONS = List.of(
            "A string spans from the foot of the stair to the frame as a simple beam; of more than two strings an inner one"
                    + " carries most.",
            "The guard beside a stair weighs on the string that carries most.");

    /** Of a stair whose strings are described and whose loads the ruleset has; missing or out of scope else. */
    static Evaluation evaluate(
            Subject subject, Parameters parameters, ReviewContext context, Function<StringActions, Evaluation> check) {
        StairRun stair = (StairRun) subject;
        String occupancy = context.submission().use().occupancy().word();
        Optional<Table.Row> row = parameters.table(LOADS.name()).find("occupancy", occupancy);
        if (row.isEmpty()) {
            return new Evaluation.OutOfScope(
                    "The table has no loads on stairs for the occupancy " + occupancy, parameters.source(LOADS.name()));
        }
        return stair.stair()
                .strings()
                .map(strings -> check.apply(new StringActions(stair, strings, row.get(), parameters)))
                .orElseGet(() -> new Evaluation.Missing(List.of(new Need(
                        stair.pointer().child("strings"),
                        "the strings of " + stair.label() + ": their timber and number"))));
    }

    Pointer stringsMember(String name) {
        return stair.pointer().child("strings").child(name);
    }

    double spanMm() {
        return stair.goingMm();
    }

    /** γ_Q Q_k, N. */
    double pointN() {
        return factors().imposed() * loads.number("concentrated", NEWTON_);
    }

    /** On one string along its going, N/mm, with the load on each area or with weight alone. */
    double stringNPerMm(boolean onOnePlace) {
        return areaNPerMm2(onOnePlace) * stair.widthMm() / shares() + factors().permanent() * guardNPerMm();
    }

    /** On a tread of this breadth along it, N/mm, likewise. */
    double treadNPerMm(boolean onOnePlace, double breadthMm) {
        return areaNPerMm2(onOnePlace) * breadthMm;
    }

    /** Writes going, the load along a string as p_d and, where it acts, the load on one place as Q_k. */
    Sheet writeString(boolean onOnePlace) {
        Sheet w = Sheet.blank();
        w.given(
                "l",
                spanMm(),
                MILLIMETRE,
                "going of the whole flight, in plan",
                "",
                stair.pointer().child("going"));
        w.given(
                "b_s",
                stair.widthMm(),
                MILLIMETRE,
                "width of the stair",
                "",
                stair.pointer().child("line"));
        w.given(
                "n_s",
                shares(),
                RATIO,
                "parts of the width, of which the most loaded string carries one",
                "",
                stringsMember("count"));
        writeArea(w, onOnePlace);
        String guard = "";
        if (guardNPerMm() > 0) {
            w.given(
                    "g_G",
                    guardNPerMm(),
                    NEWTON_PER_MILLIMETRE,
                    "weight of the guard beside the flight, along the going",
                    parameters.source(GUARDS.name()),
                    stair.pointer().child("guard"));
            guard = " + γ_G * g_G";
        }
        w.step("p_d", area(onOnePlace) + " * b_s / n_s" + guard, stringNPerMm(onOnePlace), NEWTON_PER_MILLIMETRE, "");
        return w;
    }

    /** Writes the load along a tread as p_d and, where it acts, the load on one place as Q_k. */
    Sheet writeTread(boolean onOnePlace, double breadthMm, Pointer breadth) {
        Sheet w = Sheet.blank();
        w.given("b_t", breadthMm, MILLIMETRE, "breadth of one board of a tread", "", breadth);
        writeArea(w, onOnePlace);
        w.step("p_d", area(onOnePlace) + " * b_t", treadNPerMm(onOnePlace, breadthMm), NEWTON_PER_MILLIMETRE, "");
        return w;
    }

    private void writeArea(Sheet w, boolean onOnePlace) {
        w.given(
                "g_k",
                weightNPerMm2(),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "weight of the stair, in plan",
                parameters.source(WEIGHT.name()));
        String source = parameters.source(PartialFactors.PARAMETER.name());
        w.given("γ_G", factors().permanent(), RATIO, "partial factor of weight", source);
        w.given("γ_Q", factors().imposed(), RATIO, "partial factor of the imposed load", source);
        Pointer occupancy = Pointer.of("/use/occupancy");
        if (onOnePlace) {
            w.given(
                    "Q_k",
                    loads.number("concentrated", NEWTON_),
                    NEWTON_,
                    "imposed load on one place",
                    parameters.source(LOADS.name()),
                    occupancy);
        } else {
            w.given(
                    "q_k",
                    imposedNPerMm2(),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "imposed load, in plan",
                    parameters.source(LOADS.name()),
                    occupancy);
        }
    }

    static String remark(boolean onOnePlace) {
        return onOnePlace ? "load on one place" : "load on each area";
    }

    private static String area(boolean onOnePlace) {
        return onOnePlace ? "γ_G * g_k" : "(γ_G * g_k + γ_Q * q_k)";
    }

    private double areaNPerMm2(boolean onOnePlace) {
        return factors().permanent() * weightNPerMm2()
                + (onOnePlace ? 0 : factors().imposed() * imposedNPerMm2());
    }

    private PartialFactors factors() {
        return PartialFactors.of(parameters);
    }

    private int shares() {
        return strings.count() <= 2 ? strings.count() : strings.count() - 1;
    }

    private double weightNPerMm2() {
        return parameters.number(WEIGHT.name(), NEWTON_PER_SQUARE_MILLIMETRE);
    }

    private double imposedNPerMm2() {
        return loads.number("uniform", NEWTON_PER_SQUARE_MILLIMETRE);
    }

    /** Of the guard on the slope, in plan; the heaviest where what fills it is not given. */
    private double guardNPerMm() {
        return stair.guard().map(this::guardNPerMm).orElse(0.0)
                / StrictMath.cos(StrictMath.toRadians(stair.pitchDegrees()));
    }

    private double guardNPerMm(Guard guard) {
        Optional<String> infill = guard.infill().map(GuardInfill::word);
        return parameters.table(GUARDS.name()).rows().stream()
                .filter(row -> infill.isEmpty() || row.word("infill").equals(infill.get()))
                .mapToDouble(row -> row.number("weight", NEWTON_PER_MILLIMETRE))
                .max()
                .orElse(0);
    }
}
