package org.deckplanreview.method.foundation;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_METRE_;

import java.util.Comparator;
import java.util.List;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.method.foundation.PadPlan.Sides;

/** Where the resultant on a footing lies, and the area that is left for it: EN 1997-1, 6.5.2 and annex D.3, by Meyerhof. */
record Eccentricity(PadPlan plan, double alongMm, double acrossMm) {
    private static final Formula OF_CIRCLE = Formula.of("A = π * B^2 / 4", SQUARE_METRE_, "");
    private static final Formula OF_RECTANGLE = Formula.of("A = l_1 * l_2", SQUARE_METRE_, "");

    /** Two equal segments of the circle about the resultant. */
    static final Formula LEFT_OF_CIRCLE = Formula.of(
            "A = 2 * (B^2 / 4 * acos(2 * e / B) - e * sqrt(B^2 / 4 - e^2))", SQUARE_METRE_, "EN 1997-1, 6.5.4(1)");

    private static final Formula LEFT_OF_RECTANGLE =
            Formula.of("A = (l_1 - 2 * e_1) * (l_2 - 2 * e_2)", SQUARE_METRE_, "EN 1997-1, annex D.3");

    boolean isCentral() {
        return totalMm() == 0;
    }

    private double totalMm() {
        return Math.sqrt(alongMm * alongMm + acrossMm * acrossMm);
    }

    /** The larger part of a side, or of the diameter, by which the resultant is off the middle. */
    double partOfSide() {
        if (plan.isRound()) {
            return totalMm() / plan.breadthMm();
        }
        List<Sides> turns = plan.turns();
        return turns.stream()
                .mapToDouble(s -> Math.max(alongMm / s.alongMm(), acrossMm / s.acrossMm()))
                .max()
                .orElseThrow();
    }

    /** A sheet on which A stands: the part of the base that has the resultant at its middle, in the worse turn. */
    Sheet area() {
        return plan.isRound()
                ? ofCircle()
                : plan.turns().stream()
                        .map(this::ofRectangle)
                        .min(Comparator.comparingDouble(sheet -> sheet.value("A")))
                        .orElseThrow();
    }

    private Sheet ofCircle() {
        Pointer footing = plan.footing().pointer();
        Sheet sheet = Sheet.blank();
        sheet.given("B", plan.breadthMm(), MILLIMETRE, "diameter of the footing", "", footing.child("breadth"));
        if (!isCentral()) {
            sheet.given(
                    "e", totalMm(), MILLIMETRE, "from the footing's centre to the resultant", "", footing.child("at"));
        }
        sheet.calculate(isCentral() ? OF_CIRCLE : LEFT_OF_CIRCLE);
        return sheet;
    }

    private Sheet ofRectangle(Sides sides) {
        Pointer footing = plan.footing().pointer();
        Sheet sheet = Sheet.blank();
        if (!isCentral()) {
            enterOffset(sheet, "e_1", alongMm, "along");
            enterOffset(sheet, "e_2", acrossMm, "across");
        }
        sheet.given("l_1", sides.alongMm(), MILLIMETRE, "side of the footing along", "", footing.child("breadth"));
        sheet.given("l_2", sides.acrossMm(), MILLIMETRE, "side of the footing across", "", footing.child("breadth"));
        sheet.calculate(isCentral() ? OF_RECTANGLE : LEFT_OF_RECTANGLE);
        return sheet;
    }

    private void enterOffset(Sheet sheet, String symbol, double mm, String direction) {
        sheet.given(
                symbol,
                mm,
                MILLIMETRE,
                () -> "from the footing's centre to the resultant, " + direction,
                "",
                plan.footing().pointer().child("at"));
    }
}
