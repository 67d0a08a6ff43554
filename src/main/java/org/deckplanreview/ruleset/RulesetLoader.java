package org.deckplanreview.ruleset;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Pattern;
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
    private final Map<String, RulesetFile> read = new TreeMap<>();

    private RulesetLoader(RulesetFiles files) {
        this.files = files;
    }

    /** All standards and editions, or all faults in them. Never throws for what stands in the files. */
    public static LoadResult load(RulesetFiles files, Vocabulary vocabulary) {
        return new RulesetLoader(files).load(vocabulary);
    }

    /** All cases beside loaded editions, or all faults in them. Never throws for what stands in the files. */
    public static CasesResult readCases(RulesetFiles files, Rulesets rulesets) {
        return new RulesetLoader(files).cases(rulesets);
    }

    private LoadResult load(Vocabulary vocabulary) {
        List<String> listed = paths();
        List<String> paths = listed.stream().distinct().toList();
        paths.stream()
                .filter(path -> listed.indexOf(path) != listed.lastIndexOf(path))
                .forEach(path -> file(path)
                        .fault(
                                1,
                                "'" + path + "'",
                                "A file of this path is built in already, and what is built in does not change",
                                "another path, such as an amendment of another name"));
        CsvTables tables = new CsvTables(tables(paths));
        Map<String, Optional<StandardFile>> standards = new TreeMap<>();
        paths.stream()
                .filter(path -> STANDARD.matcher(path).matches())
                .forEach(path -> standards.put(
                        path,
                        entry(path, Format.STANDARD).flatMap(root -> sound(() -> StandardFile.read(root, tables)))));
        tables.tellOthers(this::file);
        Map<String, Optional<Entry>> bases = new TreeMap<>();
        paths.stream().filter(path -> BASE.matcher(path).matches()).forEach(path -> bases.put(path, base(path)));
        Needed needed = new Needed();
        Map<String, Entry> roots = new TreeMap<>();
        Map<String, Edition> editions = new TreeMap<>();
        paths.stream()
                .filter(path -> EDITION.matcher(path).matches())
                .forEach(path -> entry(path, Format.EDITION).ifPresent(root -> {
                    roots.put(path, root);
                    sound(() -> EditionReader.read(root, List.of(), bases, standards, vocabulary, needed))
                            .ifPresent(edition -> editions.put(path, edition));
                }));
        Map<String, Entry> amending = new TreeMap<>();
        paths.stream()
                .filter(path -> AMENDMENT.matcher(path).matches())
                .forEach(path -> entry(path, Format.AMENDMENT).ifPresent(root -> amending.put(path, root)));
        Resolver resolver = new Resolver(roots, bases, standards, amending, vocabulary);
        List<Amendment> amendments = amendments(amending, editions, resolver, needed);
        paths.stream()
                .filter(path -> !hasPlace(path))
                .forEach(
                        path -> file(path).fault(1, "'" + path + "'", "This is no place for a ruleset's file", PLACES));
        if (faults().isEmpty()) {
            needed.tellOthers();
            bases.forEach((path, root) -> root.ifPresent(base -> tellUnused(base, editions.values())));
        }
        Calendar.check(editions, this::file);
        if (paths.contains(ReleasedEditions.FILE) && faults().isEmpty()) {
            bytes(ReleasedEditions.FILE)
                    .ifPresent(bytes -> ReleasedEditions.check(file(ReleasedEditions.FILE), bytes, editions));
        }
        List<RulesetFault> faults = faults();
        return faults.isEmpty()
                ? new LoadResult.Loaded(new Rulesets(editions.values(), amendments, resolver))
                : new LoadResult.Faulty(faults);
    }

    private Map<String, Optional<CsvTable>> tables(List<String> paths) {
        Map<String, Optional<CsvTable>> tables = new TreeMap<>();
        paths.stream()
                .filter(path -> TABLE.matcher(path).matches())
                .forEach(path -> tables.put(
                        path,
                        bytes(path)
                                .flatMap(bytes -> file(path).text(bytes))
                                .flatMap(text -> CsvTable.read(file(path), text))));
        return tables;
    }

    /** Those whose files have no faults; what they amend must be there, so a faulty edition is told first. */
    private List<Amendment> amendments(
            Map<String, Entry> roots, Map<String, Edition> editions, Resolver resolver, Needed needed) {
        List<Amendment> amendments = new ArrayList<>();
        boolean editionsAreSound = read.values().stream()
                .filter(file -> !roots.containsKey(file.path()))
                .allMatch(RulesetFile::faultless);
        if (editionsAreSound) {
            roots.values()
                    .forEach(root -> sound(() -> AmendmentFile.read(root, editions.values()))
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
        for (String path : paths().stream().distinct().toList()) {
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

    private List<String> paths() {
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
        return bytes(path).flatMap(bytes -> YamlReader.read(file, bytes)).map(node -> format.check(file, node));
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
