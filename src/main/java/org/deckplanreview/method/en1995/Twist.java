package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;

import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.layout.SidewaysSupport;
import org.deckplanreview.layout.SidewaysSupport.Evenness;
import org.deckplanreview.submission.Direction;
import org.deckplanreview.submission.PlanPoint;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * What a brace or post takes more than its even share because the deck twists: boards hold it as one stiff plate, which turns
 * about the middle of what holds it in the direction of the push.
 *
 * @param armMm from that middle to the brace or post, across the push
 * @param loadOffMm from that middle to the deck's, on the same side
 * @param widthMm of the deck, seen along the push
 * @param squareMm2 mean square of the arms of all; 0 for one line, which takes no twist
 */
record Twist(double armMm, double loadOffMm, double widthMm, double squareMm2) {
    static final ParameterDescription SHARE = ParameterDescription.number(
                    "twistShare",
                    RATIO,
                    "how far the push can stand off the middle of the deck, as a part of the width that it meets")
            .higherIsStricter();

    private static final Formula ECCENTRICITY = Formula.of("e_t = max(0, e_0 + ε_t * w_t)", MILLIMETRE, "");
    private static final Formula FACTOR = Formula.of("τ = 1 + e_t * x_t / i_t", RATIO, "");

    static Twist of(SidewaysSupport support, Direction direction, PlanPoint at) {
        Optional<Evenness> evenness = support.evenness(direction);
        if (evenness.isEmpty() || evenness.get().squareMm2() == 0) {
            return new Twist(0, 0, 0, 0);
        }
        double arm = SidewaysSupport.acrossMm(direction, at) - evenness.get().middleMm();
        return new Twist(
                Math.abs(arm),
                Math.signum(arm) * evenness.get().loadOffMm(),
                support.widthMm(direction),
                evenness.get().squareMm2());
    }

    /** Calculates τ, the factor on the even share; at least 1. */
    double calculate(Sheet sheet, Parameters parameters, Pointer at, Pointer platform) {
        if (squareMm2 == 0) {
            return sheet.given(
                    "τ",
                    1,
                    RATIO,
                    "factor for twist: none, as all that holds the deck stands in one line",
                    "",
                    platform);
        }
        sheet.given(
                "e_0",
                loadOffMm,
                MILLIMETRE,
                "from the middle of what holds the deck to the middle of the deck, on this side",
                "",
                platform);
        parameters.enter(sheet, "ε_t", SHARE);
        sheet.given("w_t", widthMm, MILLIMETRE, "width of the deck that the push meets", "", platform);
        sheet.calculate(ECCENTRICITY);
        sheet.given("x_t", armMm, MILLIMETRE, "from that middle to this place, across the push", "", at);
        sheet.given("i_t", squareMm2, SQUARE_MILLIMETRE, "mean square of that distance for all", "", platform);
        return sheet.calculate(FACTOR);
    }
}
