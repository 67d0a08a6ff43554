package org.deckplanreview.assessment;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.schedule.SitePractice;
import org.deckplanreview.vocabulary.Vocabulary;

/** Every method and quantity that this version can compute, and so every one that a ruleset may name. */
public final class Catalogue {

    private final List<Quantity> quantities;
    private final List<Method> methods;
    private final SortedMap<String, Quantity> quantitiesByName = new TreeMap<>();
    private final SortedMap<String, Method> methodsByName = new TreeMap<>();

    public Catalogue(List<Quantity> quantities, List<Method> methods) {
        this.quantities = List.copyOf(quantities);
        this.methods = List.copyOf(methods);
        quantities.forEach(q -> quantitiesByName.putIfAbsent(q.description().name(), q));
        methods.forEach(m -> methodsByName.putIfAbsent(m.description().name(), m));
    }

    public Vocabulary vocabulary() {
        return new Vocabulary(
                quantities.stream().map(Quantity::description).toList(),
                methods.stream().map(Method::description).toList(),
                Loads.PARAMETERS,
                SitePractice.PARAMETERS);
    }

    /** @throws IllegalStateException if there is none; a ruleset that was loaded names only those that there are */
    Quantity quantity(String name) {
        return Optional.ofNullable(quantitiesByName.get(name))
                .orElseThrow(() -> new IllegalStateException("No quantity " + name));
    }

    /** @throws IllegalStateException likewise */
    Method method(String name) {
        return Optional.ofNullable(methodsByName.get(name))
                .orElseThrow(() -> new IllegalStateException("No method " + name));
    }
}
