package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an edition is put together from: the files that it builds on, each once and after those that it builds on itself,
 * its own file, and the amendments that are laid over it, in order; and the provisions that these come to.
 */
record Composition(List<Entry> files, List<Entry> amendments, List<Stated> provisions) {

    Composition {
        files = List.copyOf(files);
        amendments = List.copyOf(amendments);
        provisions = List.copyOf(provisions);
    }

    /**
     * Puts together what a file and its bases state; faults are told where they stand. Empty if a base is not there,
     * cannot be read or builds on itself.
     */
    static Optional<Composition> of(Entry root, Shelf<Entry> bases, List<Entry> amendments) {
        return new Composer(bases)
                .compose(root, List.of(root.file().path()))
                .map(edition ->
                        new Composition(edition.files(), amendments, Overlay.of(edition.provisions(), amendments)));
    }

    /** Without what was laid over it. */
    Composition edition() {
        return new Composition(files, List.of(), provisions);
    }

    /** The entry of this name in the first file that has it. */
    Map<String, Entry> membersOf(String name) {
        Map<String, Entry> all = new LinkedHashMap<>();
        each(name).forEach(entry -> entry.members().forEach(all::putIfAbsent));
        return all;
    }

    /** What each of the files and amendments has under this name. */
    Stream<Entry> each(String name) {
        return Stream.concat(files.stream(), amendments.stream()).flatMap(file -> file.optional(name).stream());
    }

    private record Composer(Shelf<Entry> bases) {

        Optional<Composition> compose(Entry root, List<String> chain) {
            List<Entry> files = new ArrayList<>();
            Map<String, Stated> provisions = new LinkedHashMap<>();
            for (Entry path : root.itemsOf("bases")) {
                Optional<Composition> base = base(path, chain);
                if (base.isEmpty()) {
                    return Optional.empty();
                }
                base.get().files().stream()
                        .filter(file -> !files.contains(file))
                        .forEach(files::add);
                base.get().provisions().forEach(stated -> add(stated, path, provisions));
            }
            files.add(root);
            withdraw(root, provisions);
            state(root, provisions);
            return Optional.of(new Composition(files, List.of(), List.copyOf(provisions.values())));
        }

        private Optional<Composition> base(Entry path, List<String> chain) {
            if (!path.isSound()) {
                return Optional.empty();
            }
            if (chain.contains(path.text())) {
                path.fault(
                        "A base builds on itself: " + String.join(", ", chain) + ", " + path.text(),
                        "bases that do not build on this file");
                return Optional.empty();
            }
            if (!bases.has(path.text())) {
                path.unknown(path.text(), "base file", bases.paths());
                return Optional.empty();
            }
            List<String> longer = new ArrayList<>(chain);
            longer.add(path.text());
            return bases.get(path.text()).flatMap(root -> compose(root, longer));
        }

        private static void add(Stated stated, Entry path, Map<String, Stated> provisions) {
            String id = stated.member("id").text();
            Stated other = provisions.putIfAbsent(id, stated);
            if (other != null && !other.equals(stated)) {
                path.fault(
                        "Another base has a provision '" + id + "' already, set by " + String.join(", ", other.setBy()),
                        "bases that state each provision once");
            }
        }

        private static void withdraw(Entry root, Map<String, Stated> provisions) {
            for (Entry id : root.itemsOf("withdraws")) {
                if (id.isSound() && provisions.remove(id.text()) == null) {
                    id.unknown(id.text(), "provision in a base", provisions.keySet());
                }
            }
        }

        private static void state(Entry root, Map<String, Stated> provisions) {
            Map<String, Stated> inherited = Collections.unmodifiableMap(new LinkedHashMap<>(provisions));
            Map<String, Entry> own = new LinkedHashMap<>();
            for (Entry entry : root.itemsOf("provisions")) {
                Optional<Entry> id = entry.optional("id").filter(Entry::isSound);
                if (id.isEmpty()) {
                    continue;
                }
                String name = id.get().text();
                Entry first = own.putIfAbsent(name, id.get());
                if (first != null) {
                    id.get().fault("Line " + first.line() + " has a provision of this id already", "another id");
                } else if (entry.optional("overrides").isPresent()) {
                    override(entry, id.get(), inherited, provisions);
                } else if (inherited.containsKey(name)) {
                    id.get()
                            .fault(
                                    "A base has a provision of this id, set by "
                                            + String.join(
                                                    ", ", inherited.get(name).setBy()),
                                    "overrides: true with what differs, or another id");
                } else {
                    provisions.put(name, Stated.whole(entry));
                }
            }
        }

        private static void override(
                Entry entry, Entry id, Map<String, Stated> inherited, Map<String, Stated> provisions) {
            if (inherited.containsKey(id.text())) {
                provisions.put(id.text(), inherited.get(id.text()).with(entry));
            } else {
                id.unknown(id.text(), "provision to override in a base", inherited.keySet());
            }
        }
    }
}
