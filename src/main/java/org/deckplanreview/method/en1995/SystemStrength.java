package org.deckplanreview.method.en1995;

import static org.deckplanreview.measure.MeasureUnit.MILLIMETRE;
import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.List;
import org.deckplanreview.layout.JoistLine;
import org.deckplanreview.layout.Member;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Sense;

/** System strength of several members side by side that share load, 6.6. */
record SystemStrength(double ksys, double leastMembers, double largestSpacingMm) {
    static final List<ParameterDescription> PARAMETERS = List.of(
            ParameterDescription.number("ksys", RATIO, "system strength factor of joists that share load"),
            ParameterDescription.number("ksysLeastMembers", RATIO, "least number of joists side by side for k_sys"),
            ParameterDescription.number("ksysLargestSpacing", MILLIMETRE, "largest spacing of joists for k_sys"));

    static SystemStrength of(Parameters p) {
        return new SystemStrength(
                p.number("ksys", RATIO),
                p.number("ksysLeastMembers", RATIO),
                p.number("ksysLargestSpacing", MILLIMETRE));
    }

    /** k_sys of the member, 6.6(2); 1 for beams and for joists that do not meet the conditions. */
    double factor(Member member) {
        return member instanceof JoistLine joist
                        && joist.fieldSize() >= leastMembers
                        && Sense.AT_MOST.holds(joist.spacingMm(), largestSpacingMm)
                ? ksys
                : 1;
    }
}
