package org.deckplanreview.method.stair;

import static org.deckplanreview.measure.MeasureUnit.DEGREE;
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
import java.util.stream.Stream;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.StairRun;
import org.deckplanreview.layout.Subject;
import org.deckplanreview.method.Case;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.ReviewContext;
import org.deckplanreview.method.en1995.PartialFactors;
import org.deckplanreview.method.en1995.SingleTimber;
import org.deckplanreview.submission.Guard;
import org.deckplanreview.submission.GuardInfill;
import org.deckplanreview.submission.Strings;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.submission.Timber;
import org.deckplanreview.vocabulary.MethodDescription;
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

    private static final Formula GUARD_IN_PLAN = Formula.of("g_G = g_s / cos(α)", NEWTON_PER_MILLIMETRE, "");
    private static final Formula TREAD_SPAN = Formula.of("l = (b_s - t_s) / (n - 1)", MILLIMETRE, "");

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

    /** @param what bends */
    static MethodDescription bendingOf(String name, String what, String text) {
        return new MethodDescription(
                name,
                "EN 1995-1-1:2004+A1:2008+A2:2014",
                what,
                NEWTON_PER_SQUARE_MILLIMETRE,
                List.of(SubjectKind.STAIRS),
                SingleTimber.parameters(PARAMETERS.toArray(ParameterDescription[]::new)),
                text);
    }

    /** Bending under either load, whichever is worse. */
    static Evaluation bending(
            SingleTimber timber, Function<StairLoad, Sheet> loaded, String meaning, List<String> assumptions) {
        return Case.worst(Stream.of(StairLoad.values())
                .map(load -> {
                    Sheet sheet = loaded.apply(load);
                    sheet.calculate(load.moment());
                    return timber.bending(sheet, meaning, load.meaning(), assumptions);
                })
                .toList());
    }

    /** Going, and the load along the most loaded string, p_d. */
    Sheet string(StairLoad load) {
        Sheet sheet = Sheet.blank();
        sheet.given(
                "l",
                stair.goingMm(),
                MILLIMETRE,
                "going of the whole flight, in plan",
                "",
                stair.pointer().child("going"));
        enterWidth(sheet);
        sheet.given(
                "n_s",
                strings.count() <= 2 ? strings.count() : strings.count() - 1,
                RATIO,
                "parts of the width, of which the most loaded string carries one",
                "",
                stringsMember("count"));
        enterArea(sheet, load);
        stair.guard().ifPresent(guard -> enterGuard(sheet, guard));
        sheet.calculate(load.onString(stair.guard().isPresent()));
        return sheet;
    }

    /** Length of a board of a tread from string to string, and the load along it, p_d. */
    Sheet tread(StairLoad load, Timber tread, Pointer treadPointer, Timber string) {
        Sheet sheet = Sheet.blank();
        double breadthMm = tread.breadth().mm();
        sheet.given("b_t", breadthMm, MILLIMETRE, "breadth of one board of a tread", "", treadPointer.child("breadth"));
        enterArea(sheet, load);
        sheet.calculate(load.onTread());
        enterWidth(sheet);
        sheet.given("t_s", string.breadth().mm(), MILLIMETRE, "breadth of a string", "", stringsMember("timber"));
        sheet.given("n", strings.count(), RATIO, "strings", "", stringsMember("count"));
        sheet.calculate(TREAD_SPAN);
        return sheet;
    }

    private void enterWidth(Sheet sheet) {
        sheet.given(
                "b_s",
                stair.widthMm(),
                MILLIMETRE,
                "width of the stair",
                "",
                stair.pointer().child("line"));
    }

    private void enterArea(Sheet sheet, StairLoad load) {
        sheet.given(
                "g_k",
                parameters.number(WEIGHT.name(), NEWTON_PER_SQUARE_MILLIMETRE),
                NEWTON_PER_SQUARE_MILLIMETRE,
                "weight of the stair, in plan",
                parameters.source(WEIGHT.name()));
        PartialFactors factors = PartialFactors.of(parameters);
        String source = parameters.source(PartialFactors.PARAMETER.name());
        sheet.given("γ_G", factors.permanent(), RATIO, "partial factor of weight", source);
        sheet.given("γ_Q", factors.imposed(), RATIO, "partial factor of the imposed load", source);
        Pointer occupancy = Pointer.of("/use/occupancy");
        if (load == StairLoad.ON_ONE_PLACE) {
            sheet.given(
                    "Q_k",
                    loads.number("concentrated", NEWTON_),
                    NEWTON_,
                    "imposed load on one place",
                    parameters.source(LOADS.name()),
                    occupancy);
        } else {
            sheet.given(
                    "q_k",
                    loads.number("uniform", NEWTON_PER_SQUARE_MILLIMETRE),
                    NEWTON_PER_SQUARE_MILLIMETRE,
                    "imposed load, in plan",
                    parameters.source(LOADS.name()),
                    occupancy);
        }
    }

    /** The guard on the slope; the heaviest where what fills it is not given. */
    private void enterGuard(Sheet sheet, Guard guard) {
        Optional<String> infill = guard.infill().map(GuardInfill::word);
        double weight = parameters.table(GUARDS.name()).rows().stream()
                .filter(row -> infill.isEmpty() || row.word("infill").equals(infill.get()))
                .mapToDouble(row -> row.number("weight", NEWTON_PER_MILLIMETRE))
                .max()
                .orElse(0);
        sheet.given(
                "g_s",
                weight,
                NEWTON_PER_MILLIMETRE,
                "weight of the guard beside the flight, along its slope",
                parameters.source(GUARDS.name()),
                stair.pointer().child("guard"));
        sheet.given("α", stair.pitchDegrees(), DEGREE, "pitch of the flight", "", stair.pointer());
        sheet.calculate(GUARD_IN_PLAN);
    }
}
