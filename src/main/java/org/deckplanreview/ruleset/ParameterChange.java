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
import org.deckplanreview.measure.Word;
import org.deckplanreview.ruleset.ResolvedParameters.Origin;
import org.deckplanreview.ruleset.ResolvedParameters.Parameter;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Sense;
import org.deckplanreview.vocabulary.Stricter;
import org.deckplanreview.vocabulary.Table;

/** What differs between two sets of values for the same method, or for the load path. */
final class ParameterChange {

    private final List<ParameterDescription> described;

    ParameterChange(List<ParameterDescription> described) {
        this.described = described;
    }

    List<ChangedValue> values(ResolvedParameters was, ResolvedParameters is) {
        List<ChangedValue> values = new ArrayList<>();
        for (ParameterDescription parameter : described) {
            Parameter before = was.all().get(parameter.name());
            Parameter after = is.all().get(parameter.name());
            if (before instanceof Parameter.Single a && after instanceof Parameter.Single b) {
                single(parameter, a, b).ifPresent(values::add);
            } else if (before instanceof Parameter.Grid a && after instanceof Parameter.Grid b) {
                values.addAll(rows(parameter, a, b));
            } else {
                appearing(parameter, Optional.ofNullable(before), Optional.ofNullable(after))
                        .ifPresent(values::add);
            }
        }
        return values;
    }

    /** A parameter that one side does without. Having one that is stricter when higher is stricter than having none. */
    private static Optional<ChangedValue> appearing(
            ParameterDescription parameter, Optional<Parameter> was, Optional<Parameter> is) {
        if (was.isEmpty() && is.isEmpty()) {
            return Optional.empty();
        }
        boolean isTold = parameter.stricter() == Stricter.HIGHER;
        return Optional.of(new ChangedValue(
                parameter.name(),
                Optional.empty(),
                was.map(ParameterChange::whole),
                is.map(ParameterChange::whole),
                !isTold ? Strictness.UNKNOWN : was.isEmpty() ? Strictness.TIGHTER : Strictness.LOOSER));
    }

    private static ChangedValue.Side whole(Parameter parameter) {
        return new ChangedValue.Side(
                parameter instanceof Parameter.Single single ? Phrases.of(single.value()) : "a table",
                parameter.origin().citation());
    }

    private static Optional<ChangedValue> single(
            ParameterDescription parameter, Parameter.Single was, Parameter.Single is) {
        Strictness strictness = strictness(parameter, was.value(), is.value());
        return strictness == Strictness.SAME
                ? Optional.empty()
                : Optional.of(value(
                        parameter,
                        "",
                        Optional.of(Phrases.of(was.value())),
                        Optional.of(Phrases.of(is.value())),
                        was.origin(),
                        is.origin(),
                        strictness));
    }

    private static Strictness strictness(ParameterDescription parameter, Value was, Value is) {
        if (was instanceof Measure a && is instanceof Measure b) {
            if (Sense.EQUAL.holds(b.in(a.unit()), a.value())) {
                return Strictness.SAME;
            }
            boolean isHigher = b.in(a.unit()) > a.value();
            return switch (parameter.stricter()) {
                case HIGHER -> isHigher ? Strictness.TIGHTER : Strictness.LOOSER;
                case LOWER -> isHigher ? Strictness.LOOSER : Strictness.TIGHTER;
                case UNTOLD -> Strictness.UNKNOWN;
            };
        }
        if (was.equals(is)) {
            return Strictness.SAME;
        }
        if (was instanceof Word a && is instanceof Word b && !parameter.words().isEmpty()) {
            return parameter.words().indexOf(b.word()) > parameter.words().indexOf(a.word())
                    ? Strictness.TIGHTER
                    : Strictness.LOOSER;
        }
        return Strictness.UNKNOWN;
    }

    /** Rows of the same words are held against each other; where words name several rows, whole rows are. */
    private static List<ChangedValue> rows(ParameterDescription parameter, Parameter.Grid was, Parameter.Grid is) {
        List<Table.Row> before = was.table().rows();
        List<Table.Row> after = is.table().rows();
        if (before.equals(after)) {
            return List.of();
        }
        boolean isNamed = isNamedByWords(before) && isNamedByWords(after);
        Map<String, Table.Row> old = byName(before, isNamed);
        Map<String, Table.Row> now = byName(after, isNamed);
        Set<String> names = new LinkedHashSet<>(old.keySet());
        names.addAll(now.keySet());
        List<ChangedValue> values = new ArrayList<>();
        for (String name : names) {
            Optional<Table.Row> a = Optional.ofNullable(old.get(name));
            Optional<Table.Row> b = Optional.ofNullable(now.get(name));
            if (!a.map(Table.Row::cells).equals(b.map(Table.Row::cells))) {
                values.add(value(
                        parameter,
                        ", row " + name,
                        a.map(row -> differing(row, b)),
                        b.map(row -> differing(row, a)),
                        was.origin(),
                        is.origin(),
                        Strictness.UNKNOWN));
            }
        }
        return values;
    }

    /** In the table's order; of rows with one name the first. */
    private static Map<String, Table.Row> byName(List<Table.Row> rows, boolean byWords) {
        Map<String, Table.Row> named = new LinkedHashMap<>();
        rows.forEach(row -> named.putIfAbsent(name(row, byWords), row));
        return named;
    }

    private static boolean isNamedByWords(List<Table.Row> rows) {
        return rows.stream().map(row -> name(row, true)).distinct().count() == rows.size();
    }

    private static String name(Table.Row row, boolean byWords) {
        return row.cells().values().stream()
                .filter(cell -> !byWords || !(cell instanceof Measure))
                .map(Phrases::of)
                .collect(Collectors.joining(" / "));
    }

    /** The cells of a row that the other has otherwise; all of them where there is no other. */
    private static String differing(Table.Row row, Optional<Table.Row> other) {
        return row.cells().entrySet().stream()
                .filter(cell -> other.filter(
                                o -> cell.getValue().equals(o.cells().get(cell.getKey())))
                        .isEmpty())
                .map(ParameterChange::cell)
                .collect(Collectors.joining(", "));
    }

    private static String cell(Map.Entry<String, Value> cell) {
        return cell.getKey() + " " + Phrases.of(cell.getValue());
    }

    private static ChangedValue value(
            ParameterDescription parameter,
            String row,
            Optional<String> before,
            Optional<String> after,
            Origin was,
            Origin is,
            Strictness strictness) {
        Optional<String> standard = was instanceof Origin.FromStandard a
                        && is instanceof Origin.FromStandard b
                        && a.layered().standard().equals(b.layered().standard())
                ? Optional.of(b.layered().standard())
                : Optional.empty();
        return new ChangedValue(
                parameter.name() + row,
                standard,
                before.map(text -> new ChangedValue.Side(text, was.citation())),
                after.map(text -> new ChangedValue.Side(text, is.citation())),
                strictness);
    }
}
