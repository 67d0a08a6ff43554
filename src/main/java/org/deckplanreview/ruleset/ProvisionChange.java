package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.QuantityDescription;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Vocabulary;

/** What differs between two provisions in what they ask for. */
final class ProvisionChange {

    private final Provision was;
    private final Provision is;
    private final Vocabulary vocabulary;

    ProvisionChange(Provision was, Provision is, Vocabulary vocabulary) {
        this.was = was;
        this.is = is;
        this.vocabulary = vocabulary;
    }

    /** A provision as one value. */
    static ChangedValue.Side whole(Provision provision) {
        return new ChangedValue.Side(
                provision.obligation().word() + ": " + rule(provision.rule()), provision.citation());
    }

    List<ChangedValue> values() {
        List<ChangedValue> values = new ArrayList<>();
        if (was.obligation() != is.obligation()) {
            boolean isStronger = is.obligation().compareTo(was.obligation()) < 0;
            values.add(value(
                    "obligation",
                    was.obligation().word(),
                    is.obligation().word(),
                    isStronger ? Strictness.TIGHTER : Strictness.LOOSER));
        }
        if (was.subjects() != is.subjects()) {
            values.add(value("subjects", was.subjects().word(), is.subjects().word(), Strictness.UNKNOWN));
        }
        Scope before = Scope.of(was.when(), vocabulary);
        Scope after = Scope.of(is.when(), vocabulary);
        // A provision that applies to more decks is the tighter one.
        Strictness scope = Strictness.of(before.isWithin(after), after.isWithin(before));
        if (scope != Strictness.SAME) {
            values.add(value("when it applies", ConditionText.of(was.when()), ConditionText.of(is.when()), scope));
        }
        String reachedBefore = reach(was);
        String reached = reach(is);
        if (!reachedBefore.equals(reached)) {
            values.add(value("what it does not cover", reachedBefore, reached, Strictness.UNKNOWN));
        }
        values.addAll(rules(before.and(after)));
        return values;
    }

    private static String reach(Provision provision) {
        List<String> beyond = provision.scope().stream()
                .flatMap(reach -> reach.beyond().stream())
                .map(Reach.Beyond::reason)
                .toList();
        return beyond.isEmpty() ? "nothing" : String.join("; ", beyond);
    }

    private List<ChangedValue> rules(Scope both) {
        if (was.rule() instanceof Rule.Limit before
                && is.rule() instanceof Rule.Limit after
                && before.quantity().equals(after.quantity())) {
            return limits(before, after, both);
        }
        if (was.rule() instanceof Rule.Calculation before
                && is.rule() instanceof Rule.Calculation after
                && before.method().equals(after.method())) {
            return new ParameterChange(vocabulary
                            .method(after.method())
                            .map(MethodDescription::parameters)
                            .orElse(List.of()))
                    .values((ResolvedParameters) before.parameters(), (ResolvedParameters) after.parameters());
        }
        if (was.rule() instanceof Rule.LookUp before
                && is.rule() instanceof Rule.LookUp after
                && LookUpChange.isComparable(before, after)) {
            return new LookUpChange(before, after).values();
        }
        return was.rule().equals(is.rule())
                ? List.of()
                : List.of(value("what is asked for", rule(was.rule()), rule(is.rule()), Strictness.UNKNOWN));
    }

    private List<ChangedValue> limits(Rule.Limit before, Rule.Limit after, Scope both) {
        record Asked(Sense sense, Rule.Row row) {}
        List<Asked> old = before.rows().stream()
                .map(row -> new Asked(before.sense(), row))
                .toList();
        List<Asked> now =
                after.rows().stream().map(row -> new Asked(after.sense(), row)).toList();
        List<ChangedValue> values = new ArrayList<>();
        for (var pair :
                new Meetings(vocabulary, both).of(old, now, asked -> asked.row().when())) {
            Optional<Strictness> told = pair.was()
                    .flatMap(a -> pair.is()
                            .map(b -> strictness(
                                    permitted(
                                            after.quantity(), a.sense(), a.row().values()),
                                    permitted(
                                            after.quantity(), b.sense(), b.row().values()))));
            Strictness strictness = told.orElseGet(() -> appearing(pair));
            if (strictness != Strictness.SAME) {
                Condition[] conditions = pair.was().isPresent() && pair.is().isPresent()
                        ? new Condition[] {
                            pair.was().get().row().when(), pair.is().get().row().when()
                        }
                        : pair.was()
                                .or(pair::is)
                                .map(a -> new Condition[] {a.row().when()})
                                .orElseThrow();
                values.add(new ChangedValue(
                        after.quantity() + ConditionText.where(conditions),
                        Optional.empty(),
                        pair.was().map(a -> side(was, asked(a.sense(), a.row().values()))),
                        pair.is().map(a -> side(is, asked(a.sense(), a.row().values()))),
                        strictness));
            }
        }
        return values;
    }

    /** Without a value a case is undetermined, which is neither what a value permits nor what it refuses. */
    static Strictness appearing(Meetings.Pair<?> pair) {
        return pair.was().isPresent() || pair.is().isPresent() ? Strictness.UNKNOWN : Strictness.SAME;
    }

    private static Strictness strictness(ValueSet before, ValueSet after) {
        return Strictness.of(after.isWithin(before), before.isWithin(after));
    }

    private ValueSet permitted(String quantity, Sense sense, List<Value> values) {
        QuantityDescription described = vocabulary.quantity(quantity).orElseThrow();
        if (values.get(0) instanceof Measure m) {
            return ValueSet.Interval.of(sense, m.in(described.unit().orElse(m.unit())));
        }
        if (values.get(0) instanceof Word limit && (sense == Sense.AT_LEAST || sense == Sense.AT_MOST)) {
            List<String> rising = described.words();
            int at = rising.indexOf(limit.word());
            return ValueSet.Words.of(
                    sense == Sense.AT_LEAST ? rising.subList(at, rising.size()) : rising.subList(0, at + 1));
        }
        return ValueSet.Words.of(values.stream()
                .map(v -> v instanceof Word w ? w.word() : Boolean.toString(((Flag) v).yes()))
                .toList());
    }

    private ChangedValue value(String what, String before, String after, Strictness strictness) {
        return new ChangedValue(
                what, Optional.empty(), Optional.of(side(was, before)), Optional.of(side(is, after)), strictness);
    }

    private static ChangedValue.Side side(Provision provision, String text) {
        return new ChangedValue.Side(text, provision.citation());
    }

    private static String asked(Sense sense, List<Value> values) {
        return sense == Sense.EQUAL || sense == Sense.ONE_OF
                ? Phrases.of(values)
                : sense.phrase() + " " + Phrases.of(values);
    }

    private static String rule(Rule rule) {
        if (rule instanceof Rule.Limit limit) {
            return limit.quantity() + " "
                    + limit.rows().stream()
                            .map(row -> asked(limit.sense(), row.values()) + ConditionText.where(row.when()))
                            .collect(Collectors.joining("; "));
        }
        return rule instanceof Rule.LookUp lookUp
                ? lookUp.quantity() + " " + lookUp.sense().phrase() + " what "
                        + lookUp.table().source() + " gives"
                : "calculated by " + ((Rule.Calculation) rule).method();
    }
}
