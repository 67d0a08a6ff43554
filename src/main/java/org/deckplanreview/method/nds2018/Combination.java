package org.deckplanreview.method.nds2018;

import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * One combination of allowable stress design.
 *
 * @param cd C_D of its shortest load, 2.3.2
 * @param shortest the load that gives it
 */
record Combination(String id, ActionFactors factors, double cd, String shortest) {
    private static final String PERMANENT = "permanent";
    private static final String IMPOSED = "imposed";
    private static final String CONCENTRATED = "concentrated";
    private static final String SNOW = "snow";

    static final ParameterDescription COMBINATIONS = ParameterDescription.table(
            "asdCombinations",
            "combinations for allowable stress design: the factor of each load",
            wordColumn("id"),
            numberColumn(PERMANENT, RATIO),
            numberColumn(IMPOSED, RATIO),
            numberColumn(CONCENTRATED, RATIO),
            numberColumn(SNOW, RATIO));
    static final ParameterDescription DURATION_FACTORS = ParameterDescription.table(
            "durationFactors",
            "load duration factor C_D of each load: permanent, imposed, concentrated, snow, guard",
            wordColumn("action"),
            numberColumn("cd", RATIO));

    /** All combinations, in the table's order; those with snow only where there is snow. */
    static List<Combination> of(Parameters parameters, boolean snow) {
        return parameters.table(COMBINATIONS.name()).rows().stream()
                .map(r -> of(
                        parameters,
                        r.word("id"),
                        new ActionFactors(
                                r.number(PERMANENT, RATIO),
                                r.number(IMPOSED, RATIO),
                                r.number(CONCENTRATED, RATIO),
                                r.number(SNOW, RATIO))))
                .filter(c -> snow || c.factors().snow() == 0)
                .toList();
    }

    private static Combination of(Parameters parameters, String id, ActionFactors f) {
        List<String> actions = Stream.of(
                        f.permanent() != 0 ? PERMANENT : "",
                        f.imposed() != 0 ? IMPOSED : "",
                        f.concentrated() != 0 ? CONCENTRATED : "",
                        f.snow() != 0 ? SNOW : "")
                .filter(a -> !a.isEmpty())
                .toList();
        String shortest = actions.get(0);
        for (String action : actions) {
            if (durationFactor(parameters, action) > durationFactor(parameters, shortest)) {
                shortest = action;
            }
        }
        return new Combination(id, f, durationFactor(parameters, shortest), shortest);
    }

    /** Enters C_D. */
    Sheet duration(Parameters parameters) {
        return duration(parameters, cd, shortest);
    }

    /** Enters C_D of a load of that name. */
    static Sheet duration(Parameters parameters, String action, String load) {
        return duration(parameters, durationFactor(parameters, action), load);
    }

    private static Sheet duration(Parameters parameters, double cd, String load) {
        Sheet sheet = Sheet.blank();
        sheet.given(
                "C_D", cd, RATIO, () -> "load duration factor, " + load, parameters.source(DURATION_FACTORS.name()));
        return sheet;
    }

    private static double durationFactor(Parameters parameters, String action) {
        return parameters
                .table(DURATION_FACTORS.name())
                .find("action", action)
                .orElseThrow(() -> new IllegalArgumentException(
                        parameters.source(DURATION_FACTORS.name()) + " has no C_D for " + action))
                .number("cd", RATIO);
    }
}
