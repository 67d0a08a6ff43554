package org.deckplanreview.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;

/** Found and allowed of one finding, rounded for show. */
record Comparison(Optional<Found> found, Optional<Allowed> allowed) {
    /** A double has at most 17 significant decimal digits, so that more would show nothing new. */
    private static final int MOST_DIGITS = 17;

    private static final int USUAL_DIGITS = 6;

    static Comparison of(Finding finding) {
        Optional<Allowed> allowed = finding.sense()
                .filter(s -> !finding.allowed().isEmpty())
                .map(s -> new Allowed(
                        s,
                        finding.allowed().stream().map(Comparison::shown).toList(),
                        unit(finding.allowed().get(0))));
        Optional<Found> found = Optional.of(finding.quantity())
                .filter(q -> !q.isBlank())
                .map(q -> new Found(
                        q,
                        finding.found().map(v -> shownFound(v, finding)),
                        finding.found().flatMap(Comparison::unit)));
        return new Comparison(found, allowed);
    }

    /** Six digits, and as many more as it takes for a value that fails not to look as if it complied. */
    private static ShownValue shownFound(Value value, Finding finding) {
        if (value instanceof Measure found
                && finding.determination() == Determination.DOES_NOT_COMPLY
                && finding.sense().isPresent()
                && finding.allowed().size() == 1
                && finding.allowed().get(0) instanceof Measure allowed
                && allowed.unit().sameDimension(found.unit())) {
            double limit = Numbers.rounded(allowed.in(found.unit())).doubleValue();
            for (int digits = USUAL_DIGITS; digits <= MOST_DIGITS; digits++) {
                BigDecimal shown = rounded(found.value(), digits);
                if (!finding.sense().get().holds(shown.doubleValue(), limit)) {
                    return new ShownValue.Number(shown);
                }
            }
        }
        return shown(value);
    }

    private static BigDecimal rounded(double value, int digits) {
        BigDecimal r = new BigDecimal(value)
                .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        return r.scale() < 0 ? r.setScale(0) : r;
    }

    private static ShownValue shown(Value value) {
        if (value instanceof Measure m) {
            return new ShownValue.Number(Numbers.rounded(m.value()));
        }
        return value instanceof Word w ? new ShownValue.Word(w.word()) : new ShownValue.Flag(((Flag) value).yes());
    }

    private static Optional<MeasureUnit> unit(Value value) {
        return value instanceof Measure m ? Optional.of(m.unit()) : Optional.empty();
    }
}
