package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.ruleset.LoadRules.ImposedRow;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Vocabulary;

/** What differs between the loads of two editions. */
final class LoadChange {

    private LoadChange() {}

    static List<ChangedValue> values(LoadRules was, LoadRules is, Vocabulary vocabulary) {
        List<ChangedValue> values = new ArrayList<>();
        Scope anywhere = Scope.of(Condition.ALWAYS, vocabulary);
        for (var pair : new Meetings(vocabulary, anywhere).of(was.imposed(), is.imposed(), ImposedRow::when)) {
            if (pair.was().isPresent() && pair.is().isPresent()) {
                values.addAll(values(pair.was().get(), pair.is().get()));
            } else if (ProvisionChange.appearing(pair) != Strictness.SAME) {
                ImposedRow only = pair.was().or(pair::is).orElseThrow();
                values.add(new ChangedValue(
                        "imposed load" + ConditionText.where(only.when()),
                        Optional.empty(),
                        pair.was().map(row -> side(row, whole(row))),
                        pair.is().map(row -> side(row, whole(row))),
                        ProvisionChange.appearing(pair)));
            }
        }
        values.addAll(new ParameterChange(vocabulary.loadParameters())
                .values((ResolvedParameters) was.parameters(), (ResolvedParameters) is.parameters()));
        return values;
    }

    private static List<ChangedValue> values(ImposedRow was, ImposedRow is) {
        String where = ConditionText.where(was.when(), is.when());
        List<ChangedValue> values = new ArrayList<>();
        load("uniform imposed load" + where, was, Optional.of(was.uniform()), is, Optional.of(is.uniform()))
                .ifPresent(values::add);
        load("concentrated imposed load" + where, was, was.concentrated(), is, is.concentrated())
                .ifPresent(values::add);
        if (!was.category().equals(is.category())) {
            values.add(new ChangedValue(
                    "category of imposed load" + where,
                    Optional.empty(),
                    was.category().map(category -> side(was, category)),
                    is.category().map(category -> side(is, category)),
                    Strictness.UNKNOWN));
        }
        return values;
    }

    /** No load is the lowest one. */
    private static Optional<ChangedValue> load(
            String what, ImposedRow was, Optional<Measure> before, ImposedRow is, Optional<Measure> after) {
        MeasureUnit unit = before.or(() -> after).map(Measure::unit).orElse(MeasureUnit.NEWTON_);
        double then = before.map(m -> m.in(unit)).orElse(0.0);
        double now = after.map(m -> m.in(unit)).orElse(0.0);
        if (Sense.EQUAL.holds(now, then)) {
            return Optional.empty();
        }
        return Optional.of(new ChangedValue(
                what,
                Optional.empty(),
                before.map(m -> side(was, Phrases.of(m))),
                after.map(m -> side(is, Phrases.of(m))),
                now > then ? Strictness.TIGHTER : Strictness.LOOSER));
    }

    private static ChangedValue.Side side(ImposedRow row, String text) {
        return new ChangedValue.Side(text, row.citation());
    }

    private static String whole(ImposedRow row) {
        return Phrases.of(row.uniform())
                + row.concentrated().map(load -> " or " + Phrases.of(load)).orElse("");
    }
}
