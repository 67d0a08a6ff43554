package org.deckplanreview.report;

import java.math.BigDecimal;
import java.util.Optional;
import org.deckplanreview.assessment.Calculated;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.measure.Numbers;

/**
 * The worst of the calculations that stand in for a provision where it does not reach. It decides nothing.
 *
 * @param provision id of the provision that calculates it
 * @param title of that provision
 * @param determination of that provision
 * @param utilisation three decimals, rounded away from compliance
 */
public record ReportedCalculation(
        String provision, String title, Determination determination, Optional<BigDecimal> utilisation) {

    static ReportedCalculation of(Calculated calculated) {
        return new ReportedCalculation(
                calculated.by().id(),
                calculated.by().title(),
                calculated.determination(),
                calculated.utilisation().stream()
                        .filter(Double::isFinite)
                        .mapToObj(Numbers::utilisation)
                        .findFirst());
    }
}
