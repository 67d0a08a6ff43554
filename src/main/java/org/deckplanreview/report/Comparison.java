package org.deckplanreview.report;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Finding;
import org.deckplanreview.assessment.ShownComparison;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Numbers;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.ruleset.Rule;

/** Found and allowed of one finding, in the report's units and rounded for show. */
record Comparison(Optional<Found> found, Optional<Allowed> allowed) {

    static Comparison of(Finding finding, UnitSystem system) {
        Optional<ShownComparison> shown = finding.found()
                .flatMap(f -> finding.sense()
                        .filter(s -> !finding.allowed().isEmpty())
                        .map(s -> ShownComparison.of(f, s, finding.allowed(), finding.determination(), system)));
        Optional<Allowed> allowed = shown.map(s -> allowed(finding, s, system));
        Optional<Found> found = Optional.of(finding.quantity())
                .filter(q -> !q.isBlank())
                .map(q -> found(q, finding.found(), shown, system));
        return new Comparison(found, allowed);
    }

    private static Found found(
            String quantity, Optional<Value> value, Optional<ShownComparison> shown, UnitSystem system) {
        Optional<MeasureUnit> unit = value.flatMap(v -> unit(v, system));
        return new Found(
                quantity,
                shown.flatMap(ShownComparison::number)
                        .<ShownValue>map(ShownValue.Number::new)
                        .or(() -> value.map(v -> shown(v, system))),
                unit,
                shown.map(ShownComparison::found)
                        .or(() -> value.map(v -> Phrases.of(v, system)))
                        .filter(t -> isInFeetAndInches(unit, system)));
    }

    private static Allowed allowed(Finding finding, ShownComparison shown, UnitSystem system) {
        List<Value> values = finding.allowed();
        Optional<MeasureUnit> unit = unit(values.get(0), system);
        return new Allowed(
                finding.sense().orElseThrow(),
                values.stream().map(v -> shown(v, system)).toList(),
                unit,
                Optional.of(shown.allowed()).filter(t -> isInFeetAndInches(unit, system)),
                Optional.of(values)
                        .filter(v -> !(finding.provision().rule() instanceof Rule.Calculation)
                                && ShownComparison.isConverted(v, system))
                        .map(Phrases::of));
    }

    private static ShownValue shown(Value value, UnitSystem system) {
        if (value instanceof Measure m) {
            return new ShownValue.Number(Numbers.rounded(system.measure(m).value()));
        }
        return value instanceof Word w ? new ShownValue.Word(w.word()) : new ShownValue.Flag(((Flag) value).yes());
    }

    private static Optional<MeasureUnit> unit(Value value, UnitSystem system) {
        return value instanceof Measure m ? Optional.of(system.unit(m.unit())) : Optional.empty();
    }

    private static boolean isInFeetAndInches(Optional<MeasureUnit> unit, UnitSystem system) {
        return system == UnitSystem.INCH_POUND && unit.equals(Optional.of(MeasureUnit.INCH));
    }
}
