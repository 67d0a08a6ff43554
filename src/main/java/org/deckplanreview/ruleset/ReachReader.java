package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.deckplanreview.submission.SubjectKind;

/** Reads how far provisions reach: scopes that stand once, by name, and that provisions name. */
final class ReachReader {

    private final Map<String, Entry> scopes;
    private final ConditionReader conditions;
    private final Citations citations;
    private final TreeSet<String> used = new TreeSet<>();

    /** @param scopes by name */
    ReachReader(Map<String, Entry> scopes, ConditionReader conditions, Citations citations) {
        this.scopes = scopes;
        this.conditions = conditions;
        this.citations = citations;
    }

    /** The scopes that a provision names; empty if there is no such scope or one has faults, which are then told. */
    Optional<List<Reach>> read(Optional<Entry> names, SubjectKind subjects) {
        List<Reach> read = new ArrayList<>();
        boolean sound = true;
        for (Entry name : names.map(Entry::items).orElse(List.of())) {
            Optional<Reach> reach = read(name, subjects);
            sound &= reach.isPresent();
            reach.ifPresent(read::add);
        }
        return sound ? Optional.of(List.copyOf(read)) : Optional.empty();
    }

    boolean isUsed(String name) {
        return used.contains(name);
    }

    private Optional<Reach> read(Entry name, SubjectKind subjects) {
        Optional<Entry> scope = Optional.ofNullable(scopes.get(name.text()));
        if (scope.isEmpty()) {
            name.unknown(name.text(), "scope", scopes.keySet());
            return Optional.empty();
        }
        used.add(name.text());
        if (!scope.get().isSound()) {
            return Optional.empty();
        }
        Optional<Citation> citation = citations.read(scope.get().member("cite"));
        List<Reach.Beyond> beyond = new ArrayList<>();
        boolean sound = true;
        for (Entry one : scope.get().member("beyond").items()) {
            Optional<Condition> when = conditions.when(one, subjects);
            sound &= when.isPresent();
            when.ifPresent(
                    w -> beyond.add(new Reach.Beyond(w, one.member("reason").text())));
        }
        return sound ? citation.map(c -> new Reach(name.text(), beyond, c)) : Optional.empty();
    }
}
