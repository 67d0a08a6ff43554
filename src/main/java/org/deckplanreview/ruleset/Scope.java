package org.deckplanreview.ruleset;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.Vocabulary;

/** The subjects that a condition picks, as the values that it takes of each quantity; a quantity not named may be any. */
record Scope(SortedMap<String, ValueSet> values) {

    static Scope of(Condition condition, Vocabulary vocabulary) {
        SortedMap<String, ValueSet> values = new TreeMap<>();
        for (Condition part : parts(condition)) {
            if (part instanceof Condition.Compare c) {
                MeasureUnit unit = vocabulary
                        .quantity(c.quantity())
                        .flatMap(QuantityDescription::unit)
                        .orElse(c.value().unit());
                put(
                        values,
                        c.quantity(),
                        ValueSet.Interval.of(c.sense(), c.value().in(unit)));
            } else if (part instanceof Condition.OneOf o) {
                put(values, o.quantity(), ValueSet.Words.of(o.words()));
            } else if (part instanceof Condition.Is is) {
                put(values, is.quantity(), ValueSet.Words.of(List.of(Boolean.toString(is.yes()))));
            }
        }
        return new Scope(values);
    }

    /** The conditions that must all hold; none if it always holds. */
    static List<Condition> parts(Condition condition) {
        return condition instanceof Condition.All all
                ? all.conditions().stream().flatMap(c -> parts(c).stream()).toList()
                : List.of(condition);
    }

    private static void put(SortedMap<String, ValueSet> values, String quantity, ValueSet set) {
        values.merge(quantity, set, ValueSet::and);
    }

    boolean isWithin(Scope other) {
        return other.values.entrySet().stream()
                .allMatch(e ->
                        values.containsKey(e.getKey()) && values.get(e.getKey()).isWithin(e.getValue()));
    }

    Scope and(Scope other) {
        SortedMap<String, ValueSet> both = new TreeMap<>(values);
        other.values.forEach((quantity, set) -> put(both, quantity, set));
        return new Scope(both);
    }

    /** Whether no subject can be in it. */
    boolean isEmpty() {
        return values.values().stream().anyMatch(ValueSet::isEmpty);
    }
}
