package org.deckplanreview.assessment;

import static org.deckplanreview.measure.MeasureUnit.RATIO;

import java.util.Optional;
import org.deckplanreview.formula.Formula;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.vocabulary.Sense;

/**
 * What is carried is more than the table assumes.
 *
 * @param ratio of the one to the other, over 1
 * @param reason as a sentence
 */
record Overload(double ratio, String reason) {
    private static final Formula SHORTENED =
            Formula.of("l_q = l_t / sqrt(r_q)", MeasureUnit.MILLIMETRE, "moments grow as q l^2");

    /**
     * A span shorter by the root of the ratio carries as much: moments grow with its square, deflections with more, and
     * shear forces, which grow with the span alone, do not decide the spans of the tables.
     */
    Optional<TableEntry.Bound> shorten(TableEntry.Bound bound, Rule.LookUp rule) {
        if (rule.sense() != Sense.AT_MOST) {
            return Optional.empty();
        }
        Sheet sheet = Sheet.blank();
        sheet.given("r_q", ratio, RATIO, "load over what the table assumes", "");
        sheet.given(
                "l_t",
                bound.value().value(),
                bound.value().unit(),
                rule.table().labels().column(rule.column()) + " by the table",
                "");
        sheet.calculate(SHORTENED.in(bound.value().unit()));
        return Optional.of(new TableEntry.Bound(
                sheet.measure("l_q"),
                bound.reason() + " Shortened in the root of the ratio of loads.",
                bound.way().then(sheet)));
    }
}
