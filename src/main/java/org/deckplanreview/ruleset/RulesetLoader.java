package org.deckplanreview.ruleset;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.vocabulary.Vocabulary;

/** Reads rulesets: standards, bases, editions and amendments, resolved and checked against the vocabulary, and the cases beside them. */
public final class RulesetLoader {

    private static final String NAME = "[A-Za-z0-9][A-Za-z0-9.-]*";
    private static final Pattern STANDARD = Pattern.compile("standards/" + NAME + "\\.yaml");
    private static final Pattern CASES = Pattern.compile("(" + NAME + ")/cases/(" + NAME + ")/" + NAME + "\\.yaml");
    private static final Pattern TABLE = Pattern.compile(NAME + "/tables/" + NAME + "\\.csv");
    private static final Pattern AMENDMENT =
            Pattern.compile("(?!standards/|common/)" + NAME + "/amendments/" + NAME + "\\.yaml");
    private static final Pattern AMENDMENT_CASES =
            Pattern.compile("(" + NAME + ")/cases/amendments/(" + NAME + ")/" + NAME + "\\.yaml");
    private static final Pattern BASE = Pattern.compile("common/" + NAME + "\\.yaml");
    private static final Pattern EDITION = Pattern.compile("(?!standards/|common/)" + NAME + "/" + NAME + "\\.yaml");
    private static final String PLACES = "standards/<standard>.yaml, common/<base>.yaml, <region>/<edition>.yaml, "
            + "<region>/amendments/<amendment>.yaml, <region>/tables/<name>.csv, common/cases/<base>/<name>.yaml, <region>/cases/<edition>/<name>.yaml, "
            + "<region>/cases/amendments/<amendment>/<name>.yaml or " + ReleasedEditions.FILE;

    private final RulesetFiles files;
    private final boolean trusted;
    private final Map<String, RulesetFile> read = new ConcurrentSkipListMap<>();
    private final List<String> listed;
    private final List<String> paths;
    private final CsvTables tables;
    private final Shelf<StandardFile> standards;
    private final Shelf<Entry> bases;
    private final Shelf<Entry> roots;
    private final Shelf<Entry> amending;

    /** @param trusted whether the files' format was checked when they were built in */
    private RulesetLoader(RulesetFiles files, boolean trusted) {
        this.files = files;
        this.trusted = trusted;
        this.listed = list();
        this.paths = listed.stream().distinct().toList();
        this.tables = new CsvTables(new Shelf<>(those(TABLE), this::table));
        this.standards = new Shelf<>(
                those(STANDARD),
                path -> entry(path, Format.STANDARD).flatMap(root -> sound(() -> StandardFile.read(root, tables))));
        this.bases = new Shelf<>(those(BASE), this::base);
        this.roots = new Shelf<>(those(EDITION), path -> entry(path, Format.EDITION));
        this.amending = new Shelf<>(those(AMENDMENT), path -> entry(path, Format.AMENDMENT));
    }

    /** All standards and editions, or all faults in them. Never throws for what stands in the files. */
    public static LoadResult load(RulesetFiles files, Vocabulary vocabulary) {
        return new RulesetLoader(files, false).load(vocabulary);
    }

    /**
     * Rulesets that {@link #load} found no fault in when the service was built. Each edition is read when it is first asked
     * for, with the files that it builds on and no others.
     *
     * @throws IllegalStateException if they have faults nevertheless; what asks for an edition throws it too
     */
    public static Rulesets trust(RulesetFiles files, Vocabulary vocabulary) {
        return new RulesetLoader(files, true).trust(vocabulary);
    }

    /** All cases beside loaded editions, or all faults in them. Never throws for what stands in the files. */
    public static CasesResult readCases(RulesetFiles files, Rulesets rulesets) {
        return new RulesetLoader(files, false).cases(rulesets);
    }

    private Rulesets trust(Vocabulary vocabulary) {
        List<EditionHeading> headings = roots.paths().stream()
                .flatMap(path -> roots.get(path).stream())
                .flatMap(root -> EditionHeading.read(root).stream())
                .toList();
        List<Amendment> amendments = amending.paths().stream()
                .flatMap(path -> amending.get(path).stream())
                .flatMap(root -> AmendmentFile.read(root, headings).stream())
                .toList();
        if (!faults().isEmpty()) {
            throw untrue();
        }
        Needed unasked = new Needed();
        Shelf<Edition> editions = new Shelf<>(
                roots.paths(),
                path -> Optional.of(edition(path, vocabulary, unasked).orElseThrow(this::untrue)));
        return new Rulesets(headings, editions, amendments, resolver(vocabulary));
    }

    private IllegalStateException untrue() {
        return new IllegalStateException(
                faults().stream().map(RulesetFault::message).collect(Collectors.joining("\n")));
    }

    private Optional<Edition> edition(String path, Vocabulary vocabulary, Needed needed) {
        return roots.get(path)
                .flatMap(
                        root -> sound(() -> EditionReader.read(root, List.of(), bases, standards, vocabulary, needed)));
    }

    private Resolver resolver(Vocabulary vocabulary) {
        return new Resolver(roots, bases, standards, amending, vocabulary);
    }

    private LoadResult load(Vocabulary vocabulary) {
        paths.stream()
                .filter(path -> listed.indexOf(path) != listed.lastIndexOf(path))
                .forEach(path -> file(path)
                        .fault(
                                1,
                                "'" + path + "'",
                                "A file of this path is built in already, and what is built in does not change",
                                "another path, such as an amendment of another name"));
        standards.paths().forEach(standards::get);
        tables.readAll();
        tables.tellOthers(this::file);
        bases.paths().forEach(bases::get);
        Needed needed = new Needed();
        Shelf<Edition> editions = new Shelf<>(roots.paths(), path -> edition(path, vocabulary, needed));
        Map<String, Edition> sound = new TreeMap<>();
        editions.paths().forEach(path -> editions.get(path).ifPresent(edition -> sound.put(path, edition)));
        amending.paths().forEach(amending::get);
        Resolver resolver = resolver(vocabulary);
        List<Amendment> amendments = amendments(sound, resolver, needed);
        paths.stream()
                .filter(path -> !hasPlace(path))
                .forEach(
                        path -> file(path).fault(1, "'" + path + "'", "This is no place for a ruleset's file", PLACES));
        if (faults().isEmpty()) {
            needed.tellOthers();
            bases.paths().forEach(path -> bases.get(path).ifPresent(base -> tellUnused(base, sound.values())));
        }
        Calendar.check(sound, this::file);
        if (paths.contains(ReleasedEditions.FILE) && faults().isEmpty()) {
            bytes(ReleasedEditions.FILE)
                    .ifPresent(bytes -> ReleasedEditions.check(file(ReleasedEditions.FILE), bytes, sound));
        }
        List<RulesetFault> faults = faults();
        return faults.isEmpty()
                ? new LoadResult.Loaded(new Rulesets(
                        sound.values().stream().map(Edition::heading).toList(), editions, amendments, resolver))
                : new LoadResult.Faulty(faults);
    }

    private List<String> those(Pattern place) {
        return paths.stream().filter(path -> place.matcher(path).matches()).toList();
    }

    private Optional<CsvTable> table(String path) {
        return bytes(path).flatMap(bytes -> file(path).text(bytes)).flatMap(text -> CsvTable.read(file(path), text));
    }

    /** Those whose files have no faults; what they amend must be there, so a faulty edition is told first. */
    private List<Amendment> amendments(Map<String, Edition> editions, Resolver resolver, Needed needed) {
        List<Amendment> amendments = new ArrayList<>();
        boolean editionsAreSound = read.values().stream()
                .filter(file -> !amending.has(file.path()))
                .allMatch(RulesetFile::faultless);
        if (editionsAreSound) {
            List<EditionHeading> headings =
                    editions.values().stream().map(Edition::heading).toList();
            amending.paths().stream()
                    .flatMap(path -> amending.get(path).stream())
                    .forEach(root -> sound(() -> AmendmentFile.read(root, headings))
                            .ifPresent(amendment -> {
                                root.membersOf("sources").forEach((key, source) -> needed.account(key, source, false));
                                root.membersOf("uses").forEach((name, path) -> needed.account(name, path, false));
                                AmendmentFile.check(root, amendment, editions.values(), resolver, needed);
                                amendments.add(amendment);
                            }));
        }
        return amendments;
    }

    /** What no edition builds on is read by nobody, so its faults would stay unseen. */
    private static void tellUnused(Entry base, Collection<Edition> editions) {
        boolean used = editions.stream()
                .flatMap(edition -> edition.bases().stream())
                .anyMatch(one -> one.path().equals(base.file().path()));
        if (!used) {
            base.fault("No edition builds on this base", "its path among the bases of an edition, or no such file");
        }
    }

    private CasesResult cases(Rulesets rulesets) {
        List<CaseFile> cases = new ArrayList<>();
        for (String path : paths) {
            var place = CASES.matcher(path);
            var amendment = AMENDMENT_CASES.matcher(path);
            if (place.matches()) {
                entry(path, Format.CASES)
                        .flatMap(root -> sound(
                                () -> Optional.of(CaseReader.read(root, place.group(1), place.group(2), rulesets))))
                        .ifPresent(cases::addAll);
            } else if (amendment.matches()) {
                entry(path, Format.CASES)
                        .flatMap(root -> sound(() -> Optional.of(
                                CaseReader.besideAmendment(root, amendment.group(1), amendment.group(2), rulesets))))
                        .ifPresent(cases::addAll);
            }
        }
        List<RulesetFault> faults = faults();
        return faults.isEmpty() ? new CasesResult.Read(cases) : new CasesResult.Faulty(faults);
    }

    private static boolean hasPlace(String path) {
        return path.equals(ReleasedEditions.FILE)
                || STANDARD.matcher(path).matches()
                || TABLE.matcher(path).matches()
                || BASE.matcher(path).matches()
                || EDITION.matcher(path).matches()
                || AMENDMENT.matcher(path).matches()
                || AMENDMENT_CASES.matcher(path).matches()
                || CASES.matcher(path).matches();
    }

    private List<String> list() {
        try {
            return files.list();
        } catch (IOException e) {
            file(".")
                    .fault(
                            1,
                            String.valueOf(e.getMessage()),
                            "The rulesets cannot be listed",
                            "a directory that can be read");
            return List.of();
        }
    }

    private static <T> Optional<T> sound(Supplier<Optional<T>> reading) {
        try {
            return reading.get();
        } catch (Unsound e) {
            e.tell();
            return Optional.empty();
        }
    }

    private Optional<Entry> entry(String path, Format format) {
        RulesetFile file = file(path);
        return bytes(path)
                .flatMap(bytes -> YamlReader.read(file, bytes))
                .map(node -> trusted ? new Entry(file, Pointer.ROOT, node) : format.check(file, node));
    }

    private Optional<Entry> base(String path) {
        Optional<Entry> root = entry(path, Format.BASE).filter(Entry::isMap);
        root.flatMap(r -> r.optional("base")).filter(Entry::isSound).ifPresent(name -> {
            if (!path.equals("common/" + name.text() + ".yaml")) {
                name.fault("The file has another name than the base", "the file as common/" + name.text() + ".yaml");
            }
        });
        return root;
    }

    private Optional<byte[]> bytes(String path) {
        try (InputStream in = files.open(path)) {
            return Optional.of(in.readNBytes(RulesetFile.MOST_BYTES + 1));
        } catch (IOException e) {
            file(path).fault(1, "'" + path + "'", "The file cannot be read", "a file that can be read");
            return Optional.empty();
        }
    }

    private RulesetFile file(String path) {
        return read.computeIfAbsent(path, RulesetFile::new);
    }

    private List<RulesetFault> faults() {
        return read.values().stream().flatMap(file -> file.faults().stream()).toList();
    }
}
