package org.deckplanreview.assessment;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.deckplanreview.formula.Sheet;
import org.deckplanreview.formula.WorkingStep;
import org.deckplanreview.kernel.Need;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.UnitSystem;
import org.deckplanreview.method.Observation;
import org.deckplanreview.ruleset.Rule;

/** What a look-up comes to on one subject. Reasons are sentences. */
sealed interface TableEntry {

    /** The rows that were taken, the working that led to them and what was taken for it that is not stated. */
    Way way();

    String reason();

    record Way(List<WorkingStep> working, List<TakenRow> rows, List<String> assumptions) {
        public Way {
            working = List.copyOf(working);
            rows = List.copyOf(rows);
            assumptions = List.copyOf(assumptions);
        }

        /** With what is calculated from it. */
        Way then(Sheet sheet) {
            return new Way(
                    Stream.of(working, sheet.steps()).flatMap(List::stream).toList(), rows, assumptions);
        }
    }

    /** @param reason which row it is from, to follow the sentence that tells the value */
    record Allowed(Measure value, String reason, Way way) implements TableEntry {}

    record NotPermitted(String reason, Way way) implements TableEntry {}

    /** The table does not cover the case. */
    record NoRow(String reason, Way way) implements TableEntry {}

    /**
     * The row is in the source's table and is not known here, or what is carried is more than the table assumes. Rows on
     * either side tell what it can be.
     *
     * @param safe what a less favourable row allows: what complies with it complies
     * @param favourable what a more favourable row allows: what does not comply with it does not comply
     */
    record NotHeld(Optional<Bound> safe, Optional<Bound> favourable, String reason, Way way) implements TableEntry {}

    /** @param reason which row it is from, as a sentence */
    record Bound(Measure value, String reason, Way way) {}

    record Missing(List<Need> needs, String reason, Way way) implements TableEntry {}

    /**
     * @param observing finds a quantity of the subject
     * @param units in which what was found is told; rows are told as the table has them
     */
    static TableEntry of(Rule.LookUp rule, Function<String, Observation> observing, UnitSystem units) {
        TableEntry own = raised(rule, observing, units, Optional.empty());
        return own instanceof NoRow || own instanceof NotHeld
                ? SmallerSection.beside(
                        own, rule, observing, smaller -> raised(rule, observing, units, Optional.of(smaller)))
                : own;
    }

    /**
     * What the table gives; where more is carried than it assumes, the better of a row of the same load and a span shortened
     * for the load on the safe side, for what fails there may yet carry it, and what the table gives for its own load on the
     * other.
     */
    private static TableEntry raised(
            Rule.LookUp rule,
            Function<String, Observation> observing,
            UnitSystem units,
            Optional<SmallerSection> smaller) {
        TableReading raising = new TableReading(rule, observing, units, smaller, true);
        TableEntry raised = raising.read();
        if (raising.overload().isEmpty() || raised instanceof Missing) {
            return raised;
        }
        TableEntry plain = new TableReading(rule, observing, units, smaller, false).read();
        if (!(plain instanceof Allowed) && !(plain instanceof NotHeld)) {
            return plain;
        }
        Overload overload = raising.overload().get();
        Optional<Bound> safe = Stream.of(safe(raised), safe(plain).flatMap(bound -> overload.shorten(bound, rule)))
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(bound -> bound.value().value()));
        return new NotHeld(safe, favourable(plain), overload.reason(), raised.way());
    }

    private static Optional<Bound> safe(TableEntry entry) {
        return entry instanceof NotHeld n ? n.safe() : bound(entry);
    }

    private static Optional<Bound> favourable(TableEntry entry) {
        return entry instanceof NotHeld n ? n.favourable() : bound(entry);
    }

    private static Optional<Bound> bound(TableEntry entry) {
        return entry instanceof Allowed a ? Optional.of(new Bound(a.value(), a.reason(), a.way())) : Optional.empty();
    }
}
