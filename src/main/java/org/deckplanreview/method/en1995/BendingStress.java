package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;

import org.deckplanreview.formula.Formula;

/** Bending about one axis, 6.1.6. */
final class BendingStress {
    static final Formula OF_SECTION = Formula.of("σ_m,d = M_d / W_y", NEWTON_PER_SQUARE_MILLIMETRE, "(6.11)");
    static final Utilisation UTILISATION = Utilisation.atMost("σ_m,d", "f_m,d", NEWTON_PER_SQUARE_MILLIMETRE, "(6.11)");

    private BendingStress() {}
}
