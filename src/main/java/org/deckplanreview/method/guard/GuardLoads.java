package org.deckplanreview.method.guard;

import static org.deckplanreview.measure.MeasureUnit.KILONEWTON;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_METRE;
import static org.deckplanreview.measure.MeasureUnit.KILONEWTON_PER_SQUARE_METRE;
import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_;
import static org.deckplanreview.measure.MeasureUnit.NEWTON_PER_MILLIMETRE;
import static org.deckplanreview.vocabulary.ParameterDescription.numberColumn;
import static org.deckplanreview.vocabulary.ParameterDescription.wordColumn;

import java.util.Optional;
import org.deckplanreview.submission.Occupancy;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;

/**
 * Characteristic horizontal loads on a guard. They are separate cases and never added together.
 *
 * @param lineNPerMm along the guard
 * @param infillPointN on any one place of the infill
 */
record GuardLoads(double lineNPerMm, double infillPointN) {

    static final ParameterDescription TABLE = ParameterDescription.table(
            "guardLoads",
            "horizontal loads on guards by occupancy: along the top, on the infill's area, and on one place of it",
            wordColumn("occupancy"),
            numberColumn("line", KILONEWTON_PER_METRE),
            numberColumn("infill", KILONEWTON_PER_SQUARE_METRE),
            numberColumn("infillPoint", KILONEWTON));
    static final ParameterDescription LARGEST_HEIGHT = ParameterDescription.number(
            "guardLoadHeight", MILLIMETRE, "largest height above the boards at which the line load acts");

    /** Empty where the table lacks the occupancy. */
    static Optional<GuardLoads> find(Parameters parameters, Occupancy occupancy) {
        return parameters
                .table(TABLE.name())
                .find("occupancy", occupancy.word())
                .map(r -> new GuardLoads(
                        KILONEWTON_PER_METRE.convert(r.number("line", KILONEWTON_PER_METRE), NEWTON_PER_MILLIMETRE),
                        KILONEWTON.convert(r.number("infillPoint", KILONEWTON), NEWTON_)));
    }
}
