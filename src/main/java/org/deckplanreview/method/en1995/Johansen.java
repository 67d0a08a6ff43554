package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_SQUARE_MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;

/**
 * Yielding of fasteners in two timbers, 8.2.2, with bolts' yield moment. In double shear the first timber stands on both sides
 * of the second.
 */
enum Johansen {
    SINGLE_SHEAR("(8.6)", YieldMode.A, YieldMode.B, YieldMode.C, YieldMode.D, YieldMode.E, YieldMode.F),
    DOUBLE_SHEAR("(8.7)", YieldMode.G, YieldMode.H, YieldMode.J, YieldMode.K);

    private static final Formula RATIO_OF_STRENGTHS = Formula.of("β = f_h,2,k / f_h,1,k", RATIO, "(8.8)");
    private static final Formula YIELD_MOMENT = Formula.ofNumbers(
            "M_y,Rk = 0.3 * f_u,k * d^2.6",
            NEWTON_MILLIMETRE,
            "(8.30)",
            Map.of("f_u,k", NEWTON_PER_SQUARE_MILLIMETRE, "d", MILLIMETRE));

    private final List<YieldMode> modes;
    private final Formula weakest;

    Johansen(String clause, YieldMode... modes) {
        this.modes = List.of(modes);
        weakest = Formula.of(
                this.modes.stream().map(YieldMode::symbol).collect(Collectors.joining(", ", "F_v,Rk = min(", ")")),
                NEWTON_,
                clause);
    }

    /** Calculates β and M_y,Rk from the embedment strengths, d and f_u,k on the sheet. */
    static void calculateYieldMoment(Sheet sheet) {
        sheet.calculate(RATIO_OF_STRENGTHS);
        sheet.calculate(YIELD_MOMENT);
    }

    /**
     * Calculates F_v,Rk for one shear plane of one fastener. Returns the weakest mode.
     *
     * @param roped whether F_ax,Rk stands on the sheet
     */
    YieldMode calculate(Sheet sheet, boolean roped) {
        modes.forEach(m -> m.calculate(sheet, roped));
        double least = sheet.calculate(weakest);
        return modes.stream()
                .filter(m -> sheet.value(m.symbol()) == least)
                .findFirst()
                .orElseThrow();
    }
}
