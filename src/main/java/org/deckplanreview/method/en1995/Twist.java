package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;
import static org.deckplanreview.measure.MeasureUnit.SQUARE_MILLIMETRE;

import java.util.Optional;
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
 * @param eccentricityMm of the push on the same side of that middle, by the drawing and by chance
 * @param squareMm2 mean square of the arms of all; 0 for one line, which takes no twist
 */
record Twist(double armMm, double eccentricityMm, double squareMm2) {
    static final ParameterDescription SHARE = ParameterDescription.number(
                    "twistShare",
                    RATIO,
                    "how far the push can stand off the middle of the deck, as a part of the width that it meets")
            .higherIsStricter();

    private static final Twist NONE = new Twist(0, 0, 0);

    static Twist of(SidewaysSupport support, Direction direction, PlanPoint at, Parameters parameters) {
        Optional<Evenness> evenness = support.evenness(direction);
        if (evenness.isEmpty() || evenness.get().squareMm2() == 0) {
            return NONE;
        }
        double arm = SidewaysSupport.acrossMm(direction, at) - evenness.get().middleMm();
        double byChance = parameters.number(SHARE.name(), RATIO) * support.widthMm(direction);
        double off = Math.max(0, Math.signum(arm) * evenness.get().loadOffMm() + byChance);
        return new Twist(Math.abs(arm), off, evenness.get().squareMm2());
    }

    /** Of the even share, at least 1. */
    double factor() {
        return squareMm2 == 0 ? 1 : 1 + eccentricityMm * armMm / squareMm2;
    }

    /** Shows the factor as τ. */
    void write(Sheet w, Pointer at, Pointer platform) {
        if (squareMm2 == 0) {
            w.given(
                    "τ",
                    1,
                    RATIO,
                    "factor for twist: none, as all that holds the deck stands in one line",
                    "",
                    platform);
            return;
        }
        w.given(
                "e_t",
                eccentricityMm,
                MILLIMETRE,
                "push off the middle of what holds the deck, on this side",
                "",
                platform);
        w.given("x_t", armMm, MILLIMETRE, "from that middle to this place, across the push", "", at);
        w.given("i_t", squareMm2, SQUARE_MILLIMETRE, "mean square of that distance for all", "", platform);
        w.step("τ", "1 + e_t * x_t / i_t", factor(), RATIO, "");
    }
}
