package org.deckplanreview.assessment;

import java.util.List;
import java.util.Optional;
import org.deckplanreview.method.Method;
import org.deckplanreview.method.Quantity;
import org.deckplanreview.schedule.SitePractice;
import org.deckplanreview.vocabulary.Vocabulary;

/** Every method and quantity that this version can compute, and so every one that a ruleset may name. */
public final class Catalogue {

    private final List<Quantity> quantities;
    private final List<Method> methods;

    public Catalogue(List<Quantity> quantities, List<Method> methods) {
        this.quantities = List.copyOf(quantities);
        this.methods = List.copyOf(methods);
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
        Optional<Quantity> found = quantities.stream()
                .filter(q -> q.description().name().equals(name))
                .findFirst();
        return found.orElseThrow(() -> new IllegalStateException("No quantity " + name));
    }

    /** @throws IllegalStateException likewise */
    Method method(String name) {
        Optional<Method> found = methods.stream()
                .filter(m -> m.description().name().equals(name))
                .findFirst();
        return found.orElseThrow(() -> new IllegalStateException("No method " + name));
    }
}
