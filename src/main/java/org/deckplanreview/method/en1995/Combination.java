package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.List;
import java.util.Optional;
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
