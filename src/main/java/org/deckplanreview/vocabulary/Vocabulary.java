package org.deckplanreview.vocabulary;

import java.util.List;
import java.util.Optional;

/**
 * Everything that rulesets may name.
 *
 * @param loadParameters what an edition's {@code loads} give
 * @param scheduleParameters what an edition's {@code schedule} gives
 */
public record Vocabulary(
        List<QuantityDescription> quantities,
        List<MethodDescription> methods,
        List<ParameterDescription> loadParameters,
        List<ParameterDescription> scheduleParameters) {
    public Vocabulary {
        quantities = List.copyOf(quantities);
        methods = List.copyOf(methods);
        loadParameters = List.copyOf(loadParameters);
        scheduleParameters = List.copyOf(scheduleParameters);
    }

    public Optional<QuantityDescription> quantity(String name) {
        return quantities.stream().filter(q -> q.name().equals(name)).findFirst();
    }

    public Optional<MethodDescription> method(String name) {
        return methods.stream().filter(m -> m.name().equals(name)).findFirst();
    }
}
