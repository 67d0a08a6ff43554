package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Reads citations of one edition and keeps account of which sources are cited. */
final class Citations {

    private final Map<String, Optional<Source>> sources;
    private final Map<String, String> scopes;
    private final TreeSet<String> cited = new TreeSet<>();

    /**
     * @param sources by key; empty where the source itself has faults
     * @param scopes by path of a file whose own sources come before those that all files share: what such a source's key
     *     starts with
     */
    Citations(Map<String, Optional<Source>> sources, Map<String, String> scopes) {
        this.sources = sources;
        this.scopes = scopes;
    }

    /** A sound citation; empty if it has faults, which are then told. */
    Optional<Citation> read(Entry cite) {
        Entry key = cite.member("source");
        Optional<LocalDate> on = cite.member("confirmed").member("on").date();
        String own = scopes.getOrDefault(cite.file().path(), "") + key.text();
        String name = sources.containsKey(own) ? own : key.text();
        if (!sources.containsKey(name)) {
            key.unknown(key.text(), "source in this file", List.copyOf(sources.keySet()));
            return Optional.empty();
        }
        cited.add(name);
        Optional<Source> source = sources.get(name);
        if (source.isEmpty() || on.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> clause = cite.optional("clause").map(Entry::text);
        if (clause.isEmpty() && needsClause(source.get())) {
            cite.fault(
                    "'clause' is missing",
                    "the clause, table or page of " + source.get().designation());
        }
        Confirmation by = Confirming.read(cite.member("confirmed"), source.get());
        return Optional.of(new Citation(source.get(), clause.orElse(""), by, on.get()));
    }

    private static boolean needsClause(Source source) {
        return source.standing() != Standing.COMMON_PRACTICE && source.standing() != Standing.GUIDANCE;
    }

    boolean isCited(String key) {
        return cited.contains(key);
    }

    /** Those sources that are free of faults, in the file's order. */
    List<Source> all() {
        List<Source> all = new ArrayList<>();
        sources.values().forEach(source -> source.ifPresent(all::add));
        return all;
    }
}
