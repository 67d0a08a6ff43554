package org.deckplanreview.method.foundation;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.method.Evaluation;
import org.deckplanreview.method.SheetCase;
import org.deckplanreview.vocabulary.Sense;

/** A depth or thickness against the least that is allowed, by the symbols under which they stand on a sheet. */
record Depth(String found, String allowed, Formula utilisation) {

    /** A depth of nothing has no utilisation; it counts as 1 mm, so that the finding still carries a finite one. */
    static Depth of(String found, String allowed) {
        return new Depth(
                found,
                allowed,
                Formula.of(
                        "utilisation = " + allowed + " / " + found + " if " + found + " >= 1 [mm]; " + allowed
                                + " / 1 [mm]",
                        RATIO,
                        ""));
    }

    Evaluation.Measured measured(Sheet sheet, String... assumptions) {
        return SheetCase.of(sheet, utilisation, found, Sense.AT_LEAST, allowed, () -> "", () -> List.of(assumptions))
                .measured();
    }
}
