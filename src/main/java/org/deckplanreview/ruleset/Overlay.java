package org.deckplanreview.ruleset;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lays the provisions of amendments over those of an edition, one after the other. What two amendments state must be the
 * same: neither is above the other.
 */
final class Overlay {

    private static final List<String> NO_CONTENT = List.of("id", "overrides");

    private final Map<String, Stated> edition = new LinkedHashMap<>();
    private final Map<String, Stated> provisions = new LinkedHashMap<>();
    private final Map<String, Entry> added = new LinkedHashMap<>();
    private final Map<String, Entry> withdrawn = new LinkedHashMap<>();

    /** By id and member; both kinds of rule are one member. */
    private final Map<String, Entry> overridden = new LinkedHashMap<>();

    private Overlay(List<Stated> edition) {
        edition.stream()
                .filter(Stated::isSound)
                .forEach(stated -> this.edition.put(stated.member("id").text(), stated));
        provisions.putAll(this.edition);
    }

    /** The provisions that hold; what contradicts the edition or another amendment is told where it stands. */
    static List<Stated> of(List<Stated> edition, List<Entry> amendments) {
        if (amendments.isEmpty()) {
            return edition;
        }
        Overlay overlay = new Overlay(edition);
        amendments.forEach(overlay::lay);
        return List.copyOf(overlay.provisions.values());
    }

    /** The id that an item of {@code withdraws} names. */
    static Entry withdrawnId(Entry item) {
        return item.isMap() ? item.member("id") : item;
    }

    private void lay(Entry amendment) {
        amendment.itemsOf("withdraws").forEach(item -> withdraw(withdrawnId(item)));
        Map<String, Entry> own = new LinkedHashMap<>();
        for (Entry entry : amendment.itemsOf("provisions")) {
            Entry id = entry.member("id");
            Entry first = own.putIfAbsent(id.text(), id);
            if (first != null) {
                id.fault("Line " + first.line() + " has a provision of this id already", "another id");
            } else if (entry.optional("overrides").isPresent()) {
                override(entry, id);
            } else {
                add(entry, id);
            }
        }
    }

    private void withdraw(Entry id) {
        if (!edition.containsKey(id.text())) {
            id.unknown(id.text(), "provision in the edition", edition.keySet());
            return;
        }
        overridden.entrySet().stream()
                .filter(e -> e.getKey().startsWith(id.text() + "/"))
                .map(Map.Entry::getValue)
                .findFirst()
                .ifPresent(other -> tellContradiction(id, other));
        withdrawn.putIfAbsent(id.text(), id);
        provisions.remove(id.text());
    }

    private void override(Entry entry, Entry id) {
        if (!edition.containsKey(id.text())) {
            id.unknown(id.text(), "provision to override in the edition", edition.keySet());
            return;
        }
        Optional<Entry> gone = Optional.ofNullable(withdrawn.get(id.text()));
        gone.ifPresent(other -> tellContradiction(id, other));
        entry.members().forEach((name, member) -> {
            if (!NO_CONTENT.contains(name)) {
                String place = id.text() + "/" + (Stated.RULE.contains(name) ? "rule" : name);
                Entry other = overridden.putIfAbsent(place, member);
                if (other != null && !other.isLike(member)) {
                    tellContradiction(member, other);
                }
            }
        });
        if (gone.isEmpty()) {
            provisions.put(id.text(), provisions.get(id.text()).with(entry));
        }
    }

    private void add(Entry entry, Entry id) {
        if (edition.containsKey(id.text())) {
            id.fault(
                    "The edition has a provision of this id, set by "
                            + String.join(", ", edition.get(id.text()).setBy()),
                    "overrides: true with what differs, or another id");
            return;
        }
        Entry other = added.putIfAbsent(id.text(), entry);
        if (other == null) {
            provisions.put(id.text(), Stated.whole(entry));
        } else if (!other.isLike(entry)) {
            tellContradiction(id, other);
        }
    }

    /** For what two amendments state of one thing. */
    static void tellContradiction(Entry entry, Entry other) {
        entry.fault(
                other.file().path() + " states this otherwise on line " + other.line(),
                "the same, or not both of these amendments");
    }
}
