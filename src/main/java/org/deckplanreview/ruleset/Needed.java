package org.deckplanreview.ruleset;

import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Keeps account of the sources, standards, scopes and tables in CSV files that files name and of those that some edition needs. */
final class Needed {

    private final Map<String, Named> named = new TreeMap<>();
    private final TreeSet<String> needed = new TreeSet<>();

    private record Named(String name, Entry entry) {}

    /** @param name the member's name, under which the entry stands */
    void account(String name, Entry entry, boolean isNeeded) {
        String place = entry.file().path() + entry.pointer().value();
        named.putIfAbsent(place, new Named(name, entry));
        if (isNeeded) {
            needed.add(place);
        }
    }

    /** Tells what no edition needs. */
    void tellOthers() {
        named.forEach((place, one) -> {
            if (!needed.contains(place)) {
                tell(one.entry(), one.name());
            }
        });
    }

    private static void tell(Entry entry, String name) {
        if (entry.pointer().value().startsWith("/uses/")) {
            entry.file()
                    .fault(
                            entry.line(),
                            "'" + name + "'",
                            "Nothing uses this standard",
                            "its name in values or a citation, or no such standard");
        } else if (entry.pointer().value().startsWith("/scopes/")) {
            entry.file()
                    .fault(
                            entry.line(),
                            "'" + name + "'",
                            "No provision has this scope",
                            "its name in the scope of a provision, or no such scope");
        } else if (entry.pointer().value().startsWith("/tables/")) {
            entry.file()
                    .fault(
                            entry.line(),
                            "'" + name + "'",
                            "Nothing uses this table",
                            "its name in a lookUp, or no such table");
        } else {
            entry.file()
                    .fault(
                            entry.line(),
                            "'" + name + "'",
                            "Nothing cites this source",
                            "a citation, or no such source");
        }
    }
}
