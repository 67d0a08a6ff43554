package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.measure.Value;
import org.deckplanreview.vocabulary.Sense;

/** What differs between two look-ups of one quantity: rows by their keys, and the way to a row. */
final class LookUpChange {

    private final Rule.LookUp was;
    private final Rule.LookUp is;

    LookUpChange(Rule.LookUp was, Rule.LookUp is) {
        this.was = was;
        this.is = is;
    }

    /** Whether rows can be held against each other: by the same keys, and limits of the same sense. */
    static boolean isComparable(Rule.LookUp was, Rule.LookUp is) {
        return was.quantity().equals(is.quantity())
                && was.sense() == is.sense()
                && columns(was).equals(columns(is));
    }

    private static Map<String, LookUpTable.Column> columns(Rule.LookUp rule) {
        Map<String, LookUpTable.Column> columns =
                new LinkedHashMap<>(rule.table().columns());
        columns.remove(rule.column());
        return columns;
    }

    List<ChangedValue> values() {
        List<ChangedValue> values = new ArrayList<>();
        for (TableKey before : was.keys()) {
            TableKey after = is.keys().stream()
                    .filter(key -> key.column().equals(before.column()))
                    .findFirst()
                    .orElseThrow();
            way(before.column() + " of the row", key(before), key(after)).ifPresent(values::add);
        }
        way("interpolation", interpolation(was), interpolation(is)).ifPresent(values::add);
        way("share of what the table gives", share(was), share(is)).ifPresent(values::add);
        Map<Map<String, Value>, Value> before = rows(was);
        Map<Map<String, Value>, Value> after = rows(is);
        Set<Map<String, Value>> all = new LinkedHashSet<>(before.keySet());
        all.addAll(after.keySet());
        for (Map<String, Value> keys : all) {
            row(keys, Optional.ofNullable(before.get(keys)), Optional.ofNullable(after.get(keys)))
                    .ifPresent(values::add);
        }
        return values;
    }

    private Optional<ChangedValue> way(String what, String before, String after) {
        return before.equals(after)
                ? Optional.empty()
                : Optional.of(value(what, Optional.of(before), Optional.of(after), Strictness.UNKNOWN));
    }

    private static String key(TableKey key) {
        if (key instanceof TableKey.Translated translated) {
            return "from " + translated.table().name() + " by "
                    + translated.by().stream().map(LookUpChange::key).collect(Collectors.joining(", ")) + ": "
                    + translated.table().rows().stream()
                            .map(row -> cells(row.cells()))
                            .collect(Collectors.joining("; "))
                    + translated.largest().entrySet().stream()
                            .map(end -> "; a smaller one up to " + end.getKey() + " " + Phrases.of(end.getValue()))
                            .collect(Collectors.joining());
        }
        TableKey.Direct direct = (TableKey.Direct) key;
        return direct.quantity()
                + switch (direct.match()) {
                    case NONE -> "";
                    case UP -> ", the next larger value";
                    case DOWN -> ", the next smaller value";
                }
                + direct.least().map(m -> ", from " + Phrases.of(m)).orElse("")
                + direct.unstated().map(m -> ", unstated " + Phrases.of(m)).orElse("")
                + direct.times()
                        .map(f -> ", times " + f.column() + " of "
                                + f.table().reference()
                                + (f.interpolation().isPresent() ? ", interpolated" : ""))
                        .orElse("")
                + direct.raised()
                        .map(r -> ", in proportion to the " + r.quantity() + " where that is more than "
                                + Phrases.of(r.from()) + " times what "
                                + r.assumed().reference() + " gives")
                        .orElse("");
    }

    private static String interpolation(Rule.LookUp rule) {
        return rule.interpolation()
                .map(i -> "along " + i.column()
                        + i.roundedTo()
                                .map(step -> ", to the nearest " + Phrases.of(step))
                                .orElse(""))
                .orElse("none");
    }

    private static String share(Rule.LookUp rule) {
        return rule.share().map(Phrases::of).orElse("all of it");
    }

    private static Map<Map<String, Value>, Value> rows(Rule.LookUp rule) {
        Map<Map<String, Value>, Value> rows = new LinkedHashMap<>();
        for (LookUpTable.Row row : rule.table().rows()) {
            Map<String, Value> keys = new LinkedHashMap<>(row.cells());
            Optional.ofNullable(keys.remove(rule.column())).ifPresent(allowed -> rows.put(keys, allowed));
        }
        return rows;
    }

    private Optional<ChangedValue> row(Map<String, Value> keys, Optional<Value> before, Optional<Value> after) {
        Strictness strictness = strictness(before, after);
        return strictness == Strictness.SAME
                ? Optional.empty()
                : Optional.of(value(
                        is.quantity() + ", " + cells(keys),
                        before.map(this::asked),
                        after.map(this::asked),
                        strictness));
    }

    /** Without a row a case is undetermined, which is neither what a row permits nor what it refuses. */
    private Strictness strictness(Optional<Value> before, Optional<Value> after) {
        if (before.isEmpty() || after.isEmpty()) {
            return Strictness.UNKNOWN;
        }
        if (before.get() instanceof Measure then && after.get() instanceof Measure now) {
            double value = now.in(then.unit());
            if (Sense.EQUAL.holds(value, then.value())) {
                return Strictness.SAME;
            }
            return is.sense() == Sense.AT_MOST == value < then.value() ? Strictness.TIGHTER : Strictness.LOOSER;
        }
        if (before.get().equals(after.get())) {
            return Strictness.SAME;
        }
        return after.get() instanceof Measure ? Strictness.LOOSER : Strictness.TIGHTER;
    }

    private String asked(Value allowed) {
        return allowed instanceof Measure ? is.sense().phrase() + " " + Phrases.of(allowed) : "not permitted";
    }

    private static String cells(Map<String, Value> cells) {
        return cells.entrySet().stream()
                .map(cell -> cell.getKey() + " " + Phrases.of(cell.getValue()))
                .collect(Collectors.joining(", "));
    }

    private ChangedValue value(String what, Optional<String> before, Optional<String> after, Strictness strictness) {
        return new ChangedValue(
                what,
                was.table().standard().equals(is.table().standard())
                        ? Optional.of(is.table().standard())
                        : Optional.empty(),
                before.map(text -> new ChangedValue.Side(text, was.table().citation())),
                after.map(text -> new ChangedValue.Side(text, is.table().citation())),
                strictness);
    }
}
