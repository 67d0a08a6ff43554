package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.deckplanreview.measure.Phrases;
import org.deckplanreview.vocabulary.Vocabulary;

/** What an amendment changed. A standard's value that several provisions use is told once. */
final class AmendedValues {

    private AmendedValues() {}

    /** First what holds for all provisions, then each provision's own, in the edition's order. */
    static List<Amendment.Value> between(Edition was, Edition is, Vocabulary vocabulary) {
        Set<ChangedValue> general = new LinkedHashSet<>(site(was, is));
        general.addAll(LimitChange.between(was.loads(), is.loads(), vocabulary).values());
        List<Amendment.Value> own = new ArrayList<>();
        Map<String, Provision> before = byId(was);
        Map<String, Provision> after = byId(is);
        was.provisions().stream()
                .filter(p -> !after.containsKey(p.id()))
                .forEach(p -> LimitChange.withdrawn(p).values().forEach(v -> own.add(of(p, v))));
        for (Provision provision : is.provisions()) {
            LimitChange change = Optional.ofNullable(before.get(provision.id()))
                    .map(old -> LimitChange.between(old, provision, vocabulary))
                    .orElseGet(() -> LimitChange.added(provision));
            for (ChangedValue value : change.values()) {
                if (value.standard().isPresent()) {
                    general.add(value);
                } else {
                    own.add(of(provision, value));
                }
            }
        }
        List<Amendment.Value> all = new ArrayList<>();
        general.forEach(value -> all.add(new Amendment.Value(Optional.empty(), value)));
        all.addAll(own);
        return all;
    }

    private static Amendment.Value of(Provision provision, ChangedValue value) {
        return new Amendment.Value(Optional.of(provision.id()), value);
    }

    static Map<String, Provision> byId(Edition edition) {
        Map<String, Provision> provisions = new TreeMap<>();
        edition.provisions().forEach(p -> provisions.put(p.id(), p));
        return provisions;
    }

    private static List<ChangedValue> site(Edition was, Edition is) {
        return is.site().values().stream()
                .filter(local -> !was.site().values().contains(local))
                .map(local -> new ChangedValue(
                        local.member().phrase(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new ChangedValue.Side("at least " + Phrases.of(local.value()), local.citation())),
                        Strictness.TIGHTER))
                .toList();
    }
}
