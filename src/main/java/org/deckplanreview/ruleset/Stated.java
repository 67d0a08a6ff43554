package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A provision as files state it: the first entry states it whole, each further one what differs. An entry's members stay
 * in their own file, so that faults are told there.
 */
record Stated(List<Entry> entries) {

    static final List<String> RULE = List.of("limit", "lookUp", "calculate");
    private static final List<String> RULING = List.of("subjects", "when", "scope", "limit", "lookUp", "calculate");

    Stated {
        entries = List.copyOf(entries);
    }

    static Stated whole(Entry entry) {
        return new Stated(List.of(entry));
    }

    Stated with(Entry override) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(override);
        return new Stated(more);
    }

    boolean isSound() {
        return entries.stream().allMatch(Entry::isSound);
    }

    Optional<Entry> optional(String name) {
        return last(List.of(name)).flatMap(entry -> entry.optional(name));
    }

    Entry member(String name) {
        return optional(name).orElseThrow(() -> new Unsound(entries.get(0), "the member '" + name + "'"));
    }

    /** The entry that holds the condition; the last one where none does. */
    Entry conditioned() {
        return last(List.of("when")).orElseGet(() -> entries.get(entries.size() - 1));
    }

    /** The rule that holds, if it is of this name. */
    Optional<Entry> rule(String name) {
        return last(RULE).flatMap(entry -> entry.optional(name));
    }

    /** The files that state it, in order. */
    List<String> setBy() {
        return entries.stream().map(entry -> entry.file().path()).toList();
    }

    /** The last file that states which subjects it has, when it holds, how far it reaches or what it asks for. */
    String ruledBy() {
        return last(RULING).orElseThrow().file().path();
    }

    private Optional<Entry> last(List<String> names) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            if (names.stream().anyMatch(name -> entry.optional(name).isPresent())) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }
}
