package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;

import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/** Deflection on loading, or after creep, 2.2.3. */
enum DeflectionState {
    INSTANTANEOUS("w_inst", "2.2.3"),
    FINAL("w_fin", "2.2.3 (2.2)");

    private static final Formula LIMIT = Formula.of("w_lim = l / r", MILLIMETRE, "7.2");

    private final String symbol;
    private final String clause;
    private final Utilisation utilisation;

    DeflectionState(String symbol, String clause) {
        this.symbol = symbol;
        this.clause = clause;
        utilisation = Utilisation.atMost(symbol, "w_lim", MILLIMETRE, "7.2");
    }

    String symbol() {
        return symbol;
    }

    String clause() {
        return clause;
    }

    /** Calculates the limit of a length l on the sheet. */
    static double calculateLimit(Sheet sheet, Parameters parameters, ParameterDescription ratio) {
        parameters.enter(sheet, "r", ratio);
        return sheet.calculate(LIMIT);
    }

    Utilisation utilisation() {
        return utilisation;
    }
}
