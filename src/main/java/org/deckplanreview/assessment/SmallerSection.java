package org.deckplanreview.assessment;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Value;
import org.deckplanreview.method.Observation;
import org.deckplanreview.ruleset.LookUpTable;
import org.deckplanreview.ruleset.Rule;
import org.deckplanreview.ruleset.TableKey;
import org.deckplanreview.vocabulary.Sense;

/**
 * A section that a table knows and that is in no direction larger than the subject's, which it does not know: what suffices
 * of the smaller one suffices of the larger.
 *
 * @param key by which the table is entered with a section
 * @param row of the table of sections
 */
record SmallerSection(TableKey.Translated key, LookUpTable.Row row) {

    /** The entry of the subject's own section, with what the best of the smaller ones allows on its safe side. */
    static TableEntry beside(
            TableEntry own,
            Rule.LookUp rule,
            Function<String, Observation> observing,
            Function<SmallerSection, TableEntry> reading) {
        Comparator<TableEntry.Bound> rising =
                Comparator.comparingDouble(bound -> bound.value().value());
        Comparator<TableEntry.Bound> least = rule.sense() == Sense.AT_MOST ? rising.reversed() : rising;
        List<TableEntry> entries = rule.keys().stream()
                .filter(TableKey.Translated.class::isInstance)
                .map(TableKey.Translated.class::cast)
                .flatMap(key -> of(key, observing).stream())
                .map(reading)
                .toList();
        Optional<TableEntry.Bound> best =
                entries.stream().flatMap(entry -> bound(entry).stream()).min(least);
        if (best.isEmpty()) {
            return entries.stream()
                    .filter(TableEntry.Missing.class::isInstance)
                    .findFirst()
                    .orElse(own);
        }
        Optional<TableEntry.Bound> safe = Optional.empty();
        Optional<TableEntry.Bound> favourable = Optional.empty();
        if (own instanceof TableEntry.NotHeld beside) {
            safe = beside.safe();
            favourable = beside.favourable();
        }
        return new TableEntry.NotHeld(
                safe.filter(bound -> least.compare(bound, best.get()) <= 0).or(() -> best),
                favourable,
                own.reason(),
                own.way());
    }

    private static Optional<TableEntry.Bound> bound(TableEntry entry) {
        if (!(entry instanceof TableEntry.Allowed allowed)) {
            return Optional.empty();
        }
        String reason = "A section that is in no direction larger suffices where this one does. " + allowed.reason();
        return Optional.of(new TableEntry.Bound(allowed.value(), reason, allowed.way()));
    }

    private static List<SmallerSection> of(TableKey.Translated key, Function<String, Observation> observing) {
        return key.largest().isEmpty()
                ? List.of()
                : key.table().rows().stream()
                        .filter(row -> key.by().stream()
                                .allMatch(by -> isWithin(
                                        row.cells().get(by.column()),
                                        observing.apply(by.quantity()),
                                        Optional.ofNullable(key.largest().get(by.column())))))
                        .map(row -> new SmallerSection(key, row))
                        .toList();
    }

    /** Beyond the largest, pieces are graded otherwise and sections cannot be held against each other. */
    private static boolean isWithin(Value cell, Observation seen, Optional<Measure> largest) {
        if (!(seen instanceof Observation.Found found)) {
            return false;
        }
        if (!(cell instanceof Measure side) || !(found.value() instanceof Measure own)) {
            return cell.equals(found.value());
        }
        double value = own.in(side.unit());
        return Sense.AT_MOST.holds(side.value(), value)
                && largest.filter(end -> Sense.OVER.holds(value, end.in(side.unit())))
                        .isEmpty();
    }
}
