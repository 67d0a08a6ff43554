package org.deckplanreview.ruleset;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.measure.Flag;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.measure.Value;
import org.deckplanreview.measure.Word;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Table;

/** Parameters that were checked against what their method asks for. Asking for another is a fault of the method. */
final class ResolvedParameters implements Parameters {

    private final SortedMap<String, Parameter> parameters;

    ResolvedParameters(Map<String, Parameter> parameters) {
        this.parameters = Collections.unmodifiableSortedMap(new TreeMap<>(parameters));
    }

    /** One parameter with where it comes from. */
    sealed interface Parameter {
        Origin origin();

        /** Whether it, or a part of it, was recalled from memory. */
        default boolean recalled() {
            return origin().citation().recalled();
        }

        record Single(Value value, Origin origin) implements Parameter {}

        /** @param hasRecalledRow whether some row of its own was recalled from memory */
        record Grid(Table table, Origin origin, boolean hasRecalledRow) implements Parameter {
            @Override
            public boolean recalled() {
                return hasRecalledRow || Parameter.super.recalled();
            }
        }
    }

    /** Who gives a parameter. */
    sealed interface Origin {
        String text();

        Citation citation();

        /** The edition, in the provision itself. */
        record Given(Citation citation) implements Origin {
            @Override
            public String text() {
                return citation.text();
            }
        }

        /** A standard, or the edition in its place. */
        record FromStandard(Layered layered) implements Origin {
            @Override
            public String text() {
                return layered.source();
            }

            @Override
            public Citation citation() {
                return layered.citation();
            }
        }
    }

    SortedMap<String, Parameter> all() {
        return parameters;
    }

    @Override
    public boolean has(String name) {
        return parameters.containsKey(name);
    }

    @Override
    public double number(String name, MeasureUnit unit) {
        return value(name, Measure.class).in(unit);
    }

    @Override
    public String word(String name) {
        return value(name, Word.class).word();
    }

    @Override
    public boolean flag(String name) {
        return value(name, Flag.class).yes();
    }

    @Override
    public Table table(String name) {
        if (parameter(name) instanceof Parameter.Grid grid) {
            return grid.table();
        }
        throw new IllegalArgumentException("'" + name + "' is no table");
    }

    @Override
    public String source(String name) {
        return parameter(name).origin().text();
    }

    @Override
    public String confirmedBy(String name) {
        Parameter parameter = parameter(name);
        return (parameter.recalled()
                        ? Confirmation.MEMORY
                        : parameter.origin().citation().confirmedBy())
                .word();
    }

    @Override
    public List<String> recalled() {
        return parameters.entrySet().stream()
                .filter(p -> p.getValue().recalled())
                .map(Map.Entry::getKey)
                .toList();
    }

    private <V extends Value> V value(String name, Class<V> type) {
        if (parameter(name) instanceof Parameter.Single single && type.isInstance(single.value())) {
            return type.cast(single.value());
        }
        throw new IllegalArgumentException("'" + name + "' is no " + type.getSimpleName());
    }

    private Parameter parameter(String name) {
        Parameter parameter = parameters.get(name);
        if (parameter == null) {
            throw new IllegalArgumentException("There is no parameter '" + name + "'");
        }
        return parameter;
    }
}
