package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/**
 * The modification factor of a combination, 3.1.3.
 *
 * @param duration that of the shortest action in the combination
 */
record Modification(String duration, double kmod) {
    static final ParameterDescription SERVICE_CLASS = ParameterDescription.word(
                    "serviceClass", "service class of the timber, 1 to 3")
            .rising("1", "2", "3");
    static final ParameterDescription KMOD = ParameterDescription.table(
            "kmod",
            "modification factors of solid timber by service class and load duration",
            wordColumn("serviceClass"),
            wordColumn("duration"),
            numberColumn("kmod", RATIO));
    static final ParameterDescription DURATIONS = ParameterDescription.table(
            "loadDurations",
            "load duration class of each action: permanent, imposed, concentrated, snow",
            wordColumn("action"),
            wordColumn("duration"));

    /** 3.1.3(2): the action of the shortest duration decides, which is the one with the largest factor. */
    static Modification of(Parameters parameters, ActionFactors factors) {
        Table durations = parameters.table(DURATIONS.name());
        return present(factors).stream()
                .map(action -> row(durations, "action", action).word("duration"))
                .map(duration -> ofDuration(parameters, duration))
                .max(Comparator.comparingDouble(Modification::kmod))
                .orElseThrow();
    }

    /** Of these actions together with another of a stated duration. */
    static Modification of(Parameters parameters, ActionFactors factors, String otherDuration) {
        Modification without = of(parameters, factors);
        Modification other = ofDuration(parameters, otherDuration);
        return other.kmod() > without.kmod() ? other : without;
    }

    /** Enters k_mod. */
    void enter(Sheet sheet, Parameters parameters) {
        sheet.given(
                "k_mod",
                kmod,
                RATIO,
                () -> "modification factor, service class " + parameters.word(SERVICE_CLASS.name()) + ", " + duration,
                parameters.source(KMOD.name()));
    }

    static Modification ofDuration(Parameters parameters, String duration) {
        String serviceClass = parameters.word(SERVICE_CLASS.name());
        return new Modification(
                duration,
                row(parameters.table(KMOD.name()), "serviceClass", serviceClass, "duration", duration)
                        .number("kmod", RATIO));
    }

    private static List<String> present(ActionFactors factors) {
        List<String> actions = new ArrayList<>(List.of(Combination.PERMANENT));
        if (factors.imposed() != 0) {
            actions.add(Combination.IMPOSED);
        }
        if (factors.concentrated() != 0) {
            actions.add(Combination.CONCENTRATED);
        }
        if (factors.snow() != 0) {
            actions.add(Combination.SNOW);
        }
        return actions;
    }

    private static Table.Row row(Table table, String... columnsAndWords) {
        return table.find(columnsAndWords)
                .orElseThrow(() -> new IllegalArgumentException(
                        table.source() + " has no row for " + String.join(" ", columnsAndWords)));
    }
}
