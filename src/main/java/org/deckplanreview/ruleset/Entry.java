package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.kernel.Worded;

/**
 * A part of a ruleset's file with its place. The accessors expect the format to be checked: asking a sound entry for
 * what the schema requires cannot fail.
 */
record Entry(RulesetFile file, Pointer pointer, YamlNode node) {

    /** The same part, whose faults are told in another place. */
    Entry in(RulesetFile other) {
        return new Entry(other, pointer, node);
    }

    boolean isSound() {
        return file.isSound(pointer.value());
    }

    /** Whether it says the same, wherever it stands. */
    boolean isLike(Entry other) {
        return node.plain().equals(other.node.plain());
    }

    int line() {
        return node.line();
    }

    boolean isMap() {
        return node instanceof YamlNode.MapNode;
    }

    boolean isList() {
        return node instanceof YamlNode.ListNode;
    }

    /** Members in the file's order; none if it is no map. */
    Map<String, Entry> members() {
        Map<String, Entry> members = new LinkedHashMap<>();
        if (node instanceof YamlNode.MapNode map) {
            map.members().forEach((name, value) -> members.put(name, new Entry(file, pointer.child(name), value)));
        }
        return members;
    }

    /** Items in the file's order; none if it is no list. */
    List<Entry> items() {
        List<Entry> items = new ArrayList<>();
        if (node instanceof YamlNode.ListNode list) {
            for (YamlNode item : list.items()) {
                items.add(new Entry(file, pointer.child(items.size()), item));
            }
        }
        return items;
    }

    /** Members of a member; none if it is not there. */
    Map<String, Entry> membersOf(String name) {
        return optional(name).map(Entry::members).orElseGet(LinkedHashMap::new);
    }

    /** Items of a member; none if it is not there. */
    List<Entry> itemsOf(String name) {
        return optional(name).map(Entry::items).orElse(List.of());
    }

    Optional<Entry> optional(String name) {
        return node instanceof YamlNode.MapNode map
                ? Optional.ofNullable(map.members().get(name)).map(value -> new Entry(file, pointer.child(name), value))
                : Optional.empty();
    }

    Entry member(String name) {
        return optional(name).orElseThrow(() -> new Unsound(this, "the member '" + name + "'"));
    }

    /** The text of a scalar, as written. */
    String text() {
        if (node instanceof YamlNode.TextNode t) {
            return t.text();
        }
        if (node instanceof YamlNode.NumberNode n) {
            return n.text();
        }
        if (node instanceof YamlNode.FlagNode f) {
            return Boolean.toString(f.yes());
        }
        throw new Unsound(this, "a number, a word, or true or false");
    }

    List<String> texts() {
        return items().stream().map(Entry::text).toList();
    }

    Optional<LocalDate> date() {
        try {
            return Optional.of(LocalDate.parse(text()));
        } catch (DateTimeParseException e) {
            fault("This is no day of the calendar", "a day such as 2024-10-01");
            return Optional.empty();
        }
    }

    /** The member of a closed list that has this word; the schema lists the same words. */
    <E extends Enum<E> & Worded> E worded(Class<E> type) {
        for (E e : type.getEnumConstants()) {
            if (e.word().equals(text())) {
                return e;
            }
        }
        throw new Unsound(this, "a word of the list that the schema gives");
    }

    void fault(String detail, String accepted) {
        file.fault(line(), node.shown(), detail, accepted);
    }

    /** Reports a name that is not known. */
    void unknown(String name, String what, Collection<String> known) {
        file.fault(
                line(), "'" + Shortened.of(name) + "'", "There is no such " + what, KnownNames.accepted(name, known));
    }
}
