package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.loadpath.ActionFactors;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/**
 * One combination of actions of EN 1990.
 *
 * @param factors partial factors, with psi0 on every variable action that does not lead
 */
record Combination(String id, ActionFactors factors) {
    static final String PERMANENT = "permanent";
    static final String IMPOSED = "imposed";
    static final String CONCENTRATED = "concentrated";
    static final String SNOW = "snow";

    static final ParameterDescription COMBINATIONS = ParameterDescription.table(
            "combinations",
            "combinations of EN 1990, each with its state (ultimate, serviceability), the leading action and"
                    + " partial factors; variable actions that do not lead are multiplied by their psi0 too",
            wordColumn("id"),
            wordColumn("state"),
            wordColumn("leading"),
            numberColumn(PERMANENT, RATIO),
            numberColumn(IMPOSED, RATIO),
            numberColumn(CONCENTRATED, RATIO),
            numberColumn(SNOW, RATIO));

    /** States of EN 1990 that combinations are made for, as the table names them. */
    enum State {
        ULTIMATE("ultimate"),
        SERVICEABILITY("serviceability");

        private final String word;

        State(String word) {
            this.word = word;
        }
    }

    /** All combinations of a state, in the table's order; those with snow only where there is snow. */
    static List<Combination> of(Parameters parameters, State state, Psi psi, boolean snow) {
        return parameters.table(COMBINATIONS.name()).rows().stream()
                .filter(r -> r.word("state").equals(state.word))
                .filter(r -> snow || r.number(SNOW, RATIO) == 0)
                .map(r -> new Combination(
                        r.word("id"),
                        new ActionFactors(
                                r.number(PERMANENT, RATIO),
                                factor(r, IMPOSED, psi.imposed0()),
                                factor(r, CONCENTRATED, psi.imposed0()),
                                factor(r, SNOW, psi.snow0()))))
                .toList();
    }

    private static double factor(Table.Row row, String action, double psi0) {
        double gamma = row.number(action, RATIO);
        return row.word("leading").equals(action) ? gamma : gamma * psi0;
    }

    boolean isConcentrated() {
        return factors.concentrated() != 0;
    }

    /**
     * Factors for the final deflection, EN 1995-1-1, 2.2.3 (2.3) to (2.5): creep follows the permanent action and the
     * quasi-permanent part of the variable ones.
     */
    ActionFactors withCreep(double kdef, Psi psi) {
        return new ActionFactors(
                factors.permanent() * (1 + kdef),
                crept(factors.imposed(), kdef * psi.imposed2()),
                crept(factors.concentrated(), kdef * psi.imposed2()),
                crept(factors.snow(), kdef * psi.snow2()));
    }

    /** Shows the factors of {@link #withCreep}; k_def stands in the working already. */
    void writeCreep(Sheet w, Parameters parameters, double kdef, Psi psi) {
        ActionFactors last = withCreep(kdef, psi);
        w.given(
                "φ_G",
                factors.permanent(),
                RATIO,
                "factor of the permanent action",
                parameters.source(COMBINATIONS.name()));
        w.step("φ_G,fin", "φ_G * (1 + k_def)", last.permanent(), RATIO, "(2.3)");
        if (factors.imposed() != 0) {
            writeCreep(w, parameters, "Q", "imposed load", factors.imposed(), psi.imposed2(), last.imposed());
        }
        if (factors.snow() != 0) {
            writeCreep(w, parameters, "S", "snow", factors.snow(), psi.snow2(), last.snow());
        }
    }

    private static void writeCreep(
            Sheet w, Parameters parameters, String index, String action, double factor, double psi2, double last) {
        w.given("φ_" + index, factor, RATIO, "factor of the " + action, parameters.source(COMBINATIONS.name()));
        w.given(
                "ψ_2," + index,
                psi2,
                RATIO,
                "quasi-permanent part of the " + action,
                parameters.source(Psi.TABLE.name()));
        w.step("φ_" + index + ",fin", "φ_" + index + " + ψ_2," + index + " * k_def", last, RATIO, "(2.4), (2.5)");
    }

    private static double crept(double factor, double creep) {
        return factor == 0 ? 0 : factor + creep;
    }

    /** Combination factors psi0 and psi2 of the imposed load's category and of snow. */
    record Psi(double imposed0, double imposed2, double snow0, double snow2) {
        static final ParameterDescription TABLE = ParameterDescription.table(
                "psi",
                "combination factors of each category of imposed load and of snow",
                wordColumn("category"),
                numberColumn("psi0", RATIO),
                numberColumn("psi2", RATIO));

        /** Empty where the table lacks the category. */
        static Optional<Psi> find(Parameters parameters, String category) {
            Table table = parameters.table(TABLE.name());
            return table.find("category", category)
                    .flatMap(i -> table.find("category", SNOW)
                            .map(s -> new Psi(
                                    i.number("psi0", RATIO),
                                    i.number("psi2", RATIO),
                                    s.number("psi0", RATIO),
                                    s.number("psi2", RATIO))));
        }
    }
}
