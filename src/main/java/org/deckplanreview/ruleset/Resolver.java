package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.deckplanreview.vocabulary.Vocabulary;

/**
 * Lays amendments over editions. Reads the checked files each time anew and tells faults in files of its own, so that what
 * does not go together leaves no trace. Thread-safe.
 *
 * @param editions root entries
 * @param bases root entries
 * @param amendments root entries
 */
record Resolver(
        Shelf<Entry> editions,
        Shelf<Entry> bases,
        Shelf<StandardFile> standards,
        Shelf<Entry> amendments,
        Vocabulary vocabulary) {

    /** @param edition empty where something stands against it */
    record Resolution(Optional<Edition> edition, List<RulesetFault> faults) {}

    /**
     * The edition with one more amendment on those that it has already.
     *
     * @param below an edition that was loaded, or what this method made of one
     */
    Resolution lay(Edition below, Amendment amendment, Needed needed) {
        List<Amendment> all = new ArrayList<>();
        below.amendments().forEach(applied -> all.add(applied.amendment()));
        all.add(amendment);
        Map<String, RulesetFile> told = new TreeMap<>();
        Function<String, RulesetFile> file = path -> told.computeIfAbsent(path, RulesetFile::new);
        Optional<Edition> resolved = read(below.region() + "/" + below.name() + ".yaml", all, file, needed);
        List<RulesetFault> faults =
                told.values().stream().flatMap(f -> f.faults().stream()).toList();
        return new Resolution(
                resolved.filter(edition -> faults.isEmpty()).map(edition -> {
                    List<Amendment.Applied> applied = new ArrayList<>(below.amendments());
                    applied.add(new Amendment.Applied(amendment, AmendedValues.between(below, edition, vocabulary)));
                    return edition.with(applied);
                }),
                faults);
    }

    private Optional<Edition> read(
            String edition, List<Amendment> over, Function<String, RulesetFile> file, Needed needed) {
        try {
            return EditionReader.read(
                    editions.get(edition).orElseThrow().in(file.apply(edition)),
                    over.stream()
                            .map(a -> amendments.get(a.path()).orElseThrow().in(file.apply(a.path())))
                            .toList(),
                    bases.each((path, root) -> root.in(file.apply(path))),
                    standards.each((path, standard) -> standard.in(file.apply(path))),
                    vocabulary,
                    needed);
        } catch (Unsound e) {
            e.tell();
            return Optional.empty();
        }
    }
}
