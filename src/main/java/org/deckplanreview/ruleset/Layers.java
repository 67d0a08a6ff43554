package org.deckplanreview.ruleset;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.Value;

/** The values of the standards that an edition uses, with what the edition sets otherwise on top. */
final class Layers {

    private final Map<String, Map<String, Layered>> standards = new LinkedHashMap<>();
    private final Map<String, Entry> set = new TreeMap<>();
    private final Map<String, Entry> amended = new TreeMap<>();
    private final TreeSet<String> unreadable = new TreeSet<>();
    private final TreeSet<String> used = new TreeSet<>();

    void add(String standard, Source source, StandardFile file) {
        Map<String, Layered> values = new TreeMap<>();
        file.statements()
                .forEach((name, statement) -> values.put(
                        name,
                        new Layered(
                                standard, name, statement.content(), statement.citation(source), Optional.empty())));
        standards.put(standard, values);
    }

    /** A standard whose file cannot be read, so that nothing can be said of what it lacks. */
    void addUnreadable(String standard) {
        standards.put(standard, new TreeMap<>());
        unreadable.add(standard);
    }

    boolean isUsed(String standard) {
        return used.contains(standard);
    }

    /** Whether some rule takes this value or table of the standard. */
    boolean isUsed(String standard, String name) {
        return used.contains(standard + "." + name);
    }

    /** Sets values of one standard otherwise. What one file sets, another may only repeat. */
    void set(String standard, Entry settings, Citations citations) {
        set(standard, settings, citations, set);
    }

    /** Sets values of one standard otherwise than the edition does. What one amendment sets, another may only repeat. */
    void amend(String standard, Entry settings, Citations citations) {
        set(standard, settings, citations, amended);
    }

    private void set(String standard, Entry settings, Citations citations, Map<String, Entry> layer) {
        if (!standards.containsKey(standard)) {
            settings.unknown(standard, "standard in uses", standards.keySet());
            return;
        }
        Map<String, Layered> values = standards.get(standard);
        settings.members().forEach((name, setting) -> {
            if (!setting.isSound() || isSet(standard + "/" + name, setting, layer)) {
                return;
            }
            Optional<Citation> citation = citations.read(setting.member("cite"));
            if (unreadable.contains(standard)) {
                return;
            }
            if (!values.containsKey(name)) {
                setting.unknown(name, "value or table in this standard's file", values.keySet());
                return;
            }
            Layered old = values.get(name);
            Optional<StandardFile.Content> content = content(setting, old.content());
            if (citation.isPresent() && content.isPresent()) {
                values.put(name, old.set(content.get(), citation.get()));
            }
        });
    }

    private static boolean isSet(String name, Entry setting, Map<String, Entry> layer) {
        Optional<Entry> first = Optional.ofNullable(layer.putIfAbsent(name, setting));
        first.filter(f -> !f.isLike(setting))
                .ifPresent(f -> setting.fault(
                        f.file().path() + " sets this otherwise on line " + f.line(), "the same, or not set here"));
        return first.isPresent();
    }

    private static Optional<StandardFile.Content> content(Entry setting, StandardFile.Content old) {
        Optional<Entry> rows = setting.optional("rows");
        if (old instanceof StandardFile.Content.Grid grid) {
            if (rows.isEmpty()) {
                setting.fault("The standard gives a table here", "{rows, cite}");
                return Optional.empty();
            }
            return Optional.of(new StandardFile.Content.Grid(
                    grid.columns(), GridReader.rows(rows.get(), grid.columns()), grid.labels()));
        }
        if (rows.isPresent()) {
            setting.fault("The standard gives a single value here", "{value, cite}");
            return Optional.empty();
        }
        Entry token = setting.member("value");
        Value before = TokenReader.unread(((StandardFile.Content.Single) old).token());
        Value after = TokenReader.unread(token);
        if (!alike(before, after)) {
            token.fault("The standard gives another kind of value here", "a value like " + shown(before));
            return Optional.empty();
        }
        return Optional.of(new StandardFile.Content.Single(token));
    }

    private static boolean alike(Value a, Value b) {
        if (a instanceof Measure m && b instanceof Measure n) {
            return m.unit().sameDimension(n.unit());
        }
        return a.getClass() == b.getClass();
    }

    private static String shown(Value value) {
        return value instanceof Measure m
                ? "a number in " + String.join(", ", m.unit().alternatives())
                : "a word or flag";
    }

    /** The short names among these that are in use; others are told. */
    List<String> known(Collection<Entry> names) {
        return names.stream().filter(this::isKnown).map(Entry::text).toList();
    }

    private boolean isKnown(Entry name) {
        if (!standards.containsKey(name.text())) {
            name.unknown(name.text(), "standard in uses", standards.keySet());
            return false;
        }
        used.add(name.text());
        return true;
    }

    /** The table that an entry names by standard and name; empty if there is none, which is told. */
    Optional<Layered> table(Entry reference) {
        String[] parts = reference.text().split("\\.", 2);
        if (!standards.containsKey(parts[0])) {
            reference.unknown(parts[0], "standard in uses", standards.keySet());
            return Optional.empty();
        }
        used.add(parts[0]);
        Optional<Layered> found = find(parts[1], List.of(parts[0]));
        if (found.isEmpty() && !unreadable.contains(parts[0])) {
            reference.unknown(
                    parts[1],
                    "table in this standard's file",
                    standards.get(parts[0]).keySet());
        }
        return found.filter(layered -> isTable(layered, reference));
    }

    private static boolean isTable(Layered layered, Entry reference) {
        boolean isTable = layered.content() instanceof StandardFile.Content.Grid;
        if (!isTable) {
            reference.fault("The standard gives a single value here", "the name of a table");
        }
        return isTable;
    }

    /** The value of this name in the last of the standards that has it. */
    Optional<Layered> find(String name, List<String> names) {
        for (int i = names.size() - 1; i >= 0; i--) {
            Layered found = standards.get(names.get(i)).get(name);
            if (found != null) {
                used.add(found.standard() + "." + name);
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** Names that these standards have; empty if one of them cannot be read. */
    Optional<Collection<String>> names(List<String> names) {
        if (names.stream().anyMatch(unreadable::contains)) {
            return Optional.empty();
        }
        TreeSet<String> all = new TreeSet<>();
        names.forEach(name -> all.addAll(standards.get(name).keySet()));
        return Optional.of(all);
    }
}
