package org.deckplanreview.ruleset;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.ruleset.ResolvedParameters.Origin;
import org.deckplanreview.ruleset.ResolvedParameters.Parameter;
import org.deckplanreview.submission.NearestName;
import org.deckplanreview.vocabulary.ParameterDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;
import org.deckplanreview.vocabulary.ValueType;

/** Finds what a method or load path asks for: in the entry itself, then by name in the standards that it lists. */
final class ParameterReader {

    private final Layers layers;
    private final Citations citations;

    ParameterReader(Layers layers, Citations citations) {
        this.layers = layers;
        this.citations = citations;
    }

    /**
     * Parameters of a sound entry with {@code values} and {@code with}; empty if one has faults, which are then told.
     *
     * @param asker who asks, for messages
     * @param own citation of tokens that have none of their own; empty where it has faults or each must have one
     */
    Optional<Parameters> read(Entry entry, String asker, List<ParameterDescription> wanted, Optional<Citation> own) {
        List<String> standards = layers.known(entry.itemsOf("values"));
        Map<String, Entry> with = entry.membersOf("with");
        List<String> names =
                wanted.stream().map(ParameterDescription::name).sorted().toList();
        with.forEach((name, value) -> {
            if (!names.contains(name)) {
                value.unknown(name, "parameter of " + asker, names);
            }
        });
        Map<String, Parameter> found = new TreeMap<>();
        boolean complete = true;
        for (ParameterDescription parameter : wanted) {
            if (!parameter.required() && !isGiven(parameter.name(), with, standards)) {
                continue;
            }
            Optional<? extends Parameter> value = with.containsKey(parameter.name())
                    ? given(with.get(parameter.name()), parameter, own)
                    : fromStandard(entry, asker, parameter, standards);
            value.ifPresent(v -> found.put(parameter.name(), v));
            complete &= value.isPresent();
        }
        return complete ? Optional.of(new ResolvedParameters(found)) : Optional.empty();
    }

    private boolean isGiven(String name, Map<String, Entry> with, List<String> standards) {
        return with.containsKey(name) || layers.find(name, standards).isPresent();
    }

    private Optional<Parameter> given(Entry with, ParameterDescription parameter, Optional<Citation> own) {
        Optional<Citation> citation = with.isMap() ? citations.read(with.member("cite")) : own;
        if (parameter.type() == ValueType.TABLE) {
            with.fault(
                    "A table cannot stand here", "a standard's file in values with a table '" + parameter.name() + "'");
            return Optional.empty();
        }
        Optional<? extends Value> value = TokenReader.read(with.isMap() ? with.member("value") : with, parameter);
        return value.isPresent() && citation.isPresent()
                ? Optional.of(new Parameter.Single(value.get(), new Origin.Given(citation.get())))
                : Optional.empty();
    }

    private Optional<Parameter> fromStandard(
            Entry entry, String asker, ParameterDescription parameter, List<String> standards) {
        Optional<Layered> layered = layers.find(parameter.name(), standards);
        if (layered.isEmpty()) {
            layers.names(standards).ifPresent(names -> unfound(entry, asker, parameter, names));
            return Optional.empty();
        }
        Origin origin = new Origin.FromStandard(layered.get());
        if (layered.get().content() instanceof StandardFile.Content.Grid grid) {
            return table(entry, asker, parameter, grid)
                    .map(rows -> new Parameter.Grid(
                            new Table(parameter.name(), origin.text(), rows),
                            origin,
                            grid.rows().stream()
                                    .anyMatch(row -> row.confirmedBy().equals(Optional.of(Confirmation.MEMORY)))));
        }
        if (parameter.type() == ValueType.TABLE) {
            entry.fault(
                    "%s needs a table '%s', the standard gives a single value".formatted(asker, parameter.name()),
                    columns(parameter));
            return Optional.empty();
        }
        return TokenReader.read(((StandardFile.Content.Single) layered.get().content()).token(), parameter)
                .map(value -> new Parameter.Single(value, origin));
    }

    private static void unfound(Entry entry, String asker, ParameterDescription parameter, Collection<String> names) {
        String nearest = NearestName.of(parameter.name(), names)
                .map(name -> "; the nearest name there is '" + name + "'")
                .orElse("");
        entry.fault(
                "Parameter '%s' of %s is not given".formatted(parameter.name(), asker),
                "it in 'with', or a standard in 'values' that has it" + nearest);
    }

    private static Optional<List<Table.Row>> table(
            Entry entry, String asker, ParameterDescription parameter, StandardFile.Content.Grid grid) {
        if (parameter.type() != ValueType.TABLE) {
            entry.fault(
                    "%s needs a single value '%s', the standard gives a table".formatted(asker, parameter.name()),
                    "a value");
            return Optional.empty();
        }
        boolean fits = true;
        for (ParameterDescription.Column wanted : parameter.columns()) {
            ColumnType column = grid.columns().get(wanted.name());
            if (column == null) {
                entry.fault(
                        "Table '%s' has no column '%s', which %s needs"
                                .formatted(parameter.name(), wanted.name(), asker),
                        columns(parameter)
                                + NearestName.of(wanted.name(), grid.columns().keySet())
                                        .map(name -> "; the nearest column there is '" + name + "'")
                                        .orElse(""));
                fits = false;
            } else if (!holds(column, wanted)) {
                entry.fault(
                        "Column '%s' of table '%s' holds %s, which %s cannot use"
                                .formatted(wanted.name(), parameter.name(), column.text(), asker),
                        columns(parameter));
                fits = false;
            } else if (grid.rows().stream()
                    .anyMatch(row -> row.cells().get(wanted.name()) == LookUpTable.NOT_PERMITTED)) {
                entry.fault(
                        "Table '%s' says in places what is not permitted, which %s cannot use"
                                .formatted(parameter.name(), asker),
                        columns(parameter));
                fits = false;
            }
        }
        return fits
                ? Optional.of(grid.rows().stream()
                        .filter(row -> row.cells().size() == grid.columns().size())
                        .map(row -> new Table.Row(row.cells()))
                        .toList())
                : Optional.empty();
    }

    private static boolean holds(ColumnType column, ParameterDescription.Column wanted) {
        if (column.type() != wanted.type()) {
            return false;
        }
        MeasureUnit unit = wanted.unit().orElse(MeasureUnit.RATIO);
        return wanted.type() != ValueType.NUMBER
                || column.unit().filter(unit::sameDimension).isPresent();
    }

    private static String columns(ParameterDescription parameter) {
        return "a table with the columns "
                + String.join(
                        ", ",
                        parameter.columns().stream()
                                .map(c -> c.name() + ": "
                                        + c.unit()
                                                .map(MeasureUnit::symbol)
                                                .orElseGet(() -> c.type().name().toLowerCase(Locale.ROOT)))
                                .toList());
    }
}
