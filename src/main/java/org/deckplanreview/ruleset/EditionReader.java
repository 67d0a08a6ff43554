package org.deckplanreview.ruleset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Vocabulary;

/** Reads one edition: resolves its bases and standards, then reads loads and provisions against the vocabulary. */
final class EditionReader {

    private final Entry root;
    private final Composition composition;
    private final Needed needed;
    private final Vocabulary vocabulary;
    private final Shelf<StandardFile> standardFiles;
    private final Map<String, StandardFile> standards = new LinkedHashMap<>();
    private final Layers layers = new Layers();
    private final Citations citations;
    private final ConditionReader conditions;
    private final ReachReader reaches;
    private final ParameterReader parameters;
    private final LookUpReader lookUps;

    private EditionReader(
            Entry root,
            Composition composition,
            Shelf<StandardFile> standardFiles,
            Vocabulary vocabulary,
            Needed needed) {
        this.root = root;
        this.composition = composition;
        this.needed = needed;
        this.vocabulary = vocabulary;
        this.standardFiles = standardFiles;
        this.citations = new Citations(sources(), scopes(composition.amendments()));
        this.conditions = new ConditionReader(vocabulary);
        this.reaches = new ReachReader(composition.membersOf("scopes"), conditions, citations);
        this.parameters = new ParameterReader(layers, citations);
        this.lookUps = new LookUpReader(layers, conditions);
    }

    /**
     * Reads an edition whose format was checked; empty if it or a standard that it uses has faults.
     *
     * @param amendments laid over it, in order; their format was checked, and they are sound
     * @param needed where the reading is accounted for
     */
    static Optional<Edition> read(
            Entry root,
            List<Entry> amendments,
            Shelf<Entry> bases,
            Shelf<StandardFile> standardFiles,
            Vocabulary vocabulary,
            Needed needed) {
        if (!root.isMap()) {
            return Optional.empty();
        }
        return Composition.of(root, bases, amendments)
                .flatMap(parts -> new EditionReader(root, parts, standardFiles, vocabulary, needed).read());
    }

    private Optional<Edition> read() {
        composition
                .edition()
                .each("sets")
                .forEach(sets ->
                        sets.members().forEach((standard, settings) -> layers.set(standard, settings, citations)));
        composition
                .amendments()
                .forEach(amendment -> amendment
                        .membersOf("sets")
                        .forEach((standard, settings) -> layers.amend(standard, settings, citations)));
        Optional<EditionHeading> heading = EditionHeading.read(root);
        SiteValues site = new SiteReader(citations).read(composition.amendments());
        composition
                .amendments()
                .forEach(amendment -> amendment.itemsOf("withdraws").stream()
                        .flatMap(item -> item.optional("cite").stream())
                        .forEach(citations::read));
        Optional<LoadRules> loads = onlyLoads().filter(Entry::isSound).flatMap(this::loads);
        Optional<Parameters> schedule = only("schedule").filter(Entry::isSound).flatMap(this::schedule);
        List<Provision> provisions = provisions();
        account();
        // A fault may also stand in a standard's file, found only when its value was used.
        boolean complete = Stream.concat(composition.files().stream(), composition.amendments().stream())
                        .allMatch(file -> file.file().faultless())
                && standards.values().stream().allMatch(StandardFile::faultless)
                && standards.size() == composition.membersOf("uses").size();
        return complete
                ? Optional.of(edition(heading.orElseThrow(), site, loads.orElseThrow(), schedule, provisions))
                : Optional.empty();
    }

    private Edition edition(
            EditionHeading heading,
            SiteValues site,
            LoadRules loads,
            Optional<Parameters> schedule,
            List<Provision> provisions) {
        List<Edition.Base> bases = composition.files().stream()
                .filter(file -> file != root)
                .map(file -> new Edition.Base(
                        file.file().path(),
                        file.member("title").text(),
                        CanonicalEdition.digestOf(file.node().plain())))
                .toList();
        List<Edition.BasedOn> basedOn = new ArrayList<>();
        standards.forEach((name, file) -> basedOn.add(new Edition.BasedOn(name, sourceOf(name, file), file.digest())));
        return CanonicalEdition.complete(new Edition(
                heading.region(),
                heading.regionTitle(),
                heading.name(),
                heading.title(),
                heading.binding(),
                bases,
                basedOn,
                citations.all(),
                site,
                loads,
                schedule,
                provisions,
                texts("cautions"),
                texts("referrals"),
                texts("notes"),
                composition.amendments().stream()
                        .map(amendment -> new Amendment.Applied(Amendment.of(amendment), List.of()))
                        .toList(),
                "",
                ""));
    }

    private List<String> texts(String name) {
        return composition
                .each(name)
                .flatMap(texts -> texts.texts().stream())
                .distinct()
                .toList();
    }

    /** The loads of the one file that has them. */
    private Optional<Entry> onlyLoads() {
        Optional<Entry> loads = only("loads");
        if (loads.isEmpty()) {
            root.fault("'loads' is missing", "loads here or in a base");
        }
        return loads;
    }

    /** What one of the files has under this name; a second one is told. */
    private Optional<Entry> only(String name) {
        List<Entry> all = composition.edition().each(name).toList();
        all.stream()
                .skip(1)
                .forEach(entry -> entry.fault(
                        all.get(0).file().path() + " has " + name + " already", name + " in one of these files"));
        return all.stream().findFirst();
    }

    /** Tells members of the same name that differ between files. */
    private static void tellContradictions(Composition parts, String name, String what) {
        Map<String, Entry> first = parts.membersOf(name);
        parts.each(name)
                .forEach(all -> all.members().forEach((key, entry) -> {
                    Entry other = first.get(key);
                    if (!other.isLike(entry)) {
                        entry.file()
                                .fault(
                                        entry.line(),
                                        "'" + key + "'",
                                        "%s has another %s of this name on line %d"
                                                .formatted(other.file().path(), what, other.line()),
                                        "the same " + what + ", or another name");
                    }
                }));
    }

    /** The files' own sources, then the standards that they use. */
    private Map<String, Optional<Source>> sources() {
        Map<String, Optional<Source>> sources = new LinkedHashMap<>();
        tellContradictions(composition.edition(), "sources", "source");
        tellContradictions(composition, "uses", "standard");
        tellContradictions(composition, "scopes", "scope");
        composition.edition().membersOf("sources").forEach((key, source) -> sources.put(key, source(key, source)));
        scopes(composition.amendments())
                .forEach((path, scope) -> composition.amendments().stream()
                        .filter(amendment -> amendment.file().path().equals(path))
                        .forEach(amendment -> amendment
                                .membersOf("sources")
                                .forEach((key, source) -> sources.put(scope + key, source(scope + key, source)))));
        composition.membersOf("uses").forEach((name, path) -> {
            if (sources.containsKey(name)) {
                path.file().fault(path.line(), "'" + name + "'", "A source has this name already", "another name");
            }
            Optional<StandardFile> file = standard(path);
            file.ifPresentOrElse(
                    f -> {
                        standards.put(name, f);
                        layers.add(name, sourceOf(name, f), f);
                    },
                    () -> layers.addUnreadable(name));
            sources.put(name, file.map(f -> sourceOf(name, f)));
        });
        return sources;
    }

    private static Optional<Source> source(String key, Entry source) {
        return Optional.of(source).filter(Entry::isSound).map(s -> StandardFile.source(key, s));
    }

    /** An amendment's sources are its own affair: two amendments may call different documents by one key. */
    private static Map<String, String> scopes(List<Entry> amendments) {
        Map<String, String> scopes = new LinkedHashMap<>();
        amendments.forEach(amendment -> scopes.put(
                amendment.file().path(), amendment.member("amendment").text() + "/"));
        return scopes;
    }

    private Optional<StandardFile> standard(Entry path) {
        if (!path.isSound()) {
            return Optional.empty();
        }
        if (!standardFiles.has(path.text())) {
            path.unknown(path.text(), "standard's file", standardFiles.paths());
            return Optional.empty();
        }
        return standardFiles.get(path.text());
    }

    private static Source sourceOf(String name, StandardFile file) {
        Source s = file.source();
        return new Source(name, s.title(), s.edition(), s.publisher(), s.standing());
    }

    private void account() {
        composition
                .each("scopes")
                .forEach(scopes ->
                        scopes.members().forEach((name, scope) -> needed.account(name, scope, reaches.isUsed(name))));
        composition
                .edition()
                .each("sources")
                .forEach(sources -> sources.members()
                        .forEach((key, source) -> needed.account(key, source, citations.isCited(key))));
        Map<String, String> scopes = scopes(composition.amendments());
        composition
                .amendments()
                .forEach(amendment -> amendment
                        .membersOf("sources")
                        .forEach((key, source) -> needed.account(
                                key,
                                source,
                                citations.isCited(scopes.get(amendment.file().path()) + key))));
        composition
                .each("uses")
                .forEach(uses -> uses.members()
                        .forEach((name, path) ->
                                needed.account(name, path, citations.isCited(name) || layers.isUsed(name))));
        standards.forEach((standard, file) -> file.csvFiles()
                .forEach((table, csv) -> needed.account(table, csv.path(), layers.isUsed(standard, table))));
    }

    private Optional<Parameters> schedule(Entry schedule) {
        refuseUncited(schedule);
        return parameters.read(schedule, "the site schedule", vocabulary.scheduleParameters(), Optional.empty());
    }

    private static void refuseUncited(Entry entry) {
        entry.membersOf("with").values().stream()
                .filter(value -> !value.isMap())
                .forEach(value -> value.fault("This value has no citation", "{value, cite}"));
    }

    private Optional<LoadRules> loads(Entry loads) {
        Entry imposed = amendedImposed().orElseGet(() -> loads.member("imposed"));
        ConditionReader.refuseUnreachable(imposed);
        List<LoadRules.ImposedRow> rows = new ArrayList<>();
        imposed.items().forEach(row -> imposed(row).ifPresent(rows::add));
        refuseUncited(loads);
        Optional<Parameters> resolved =
                parameters.read(loads, "the load path", vocabulary.loadParameters(), Optional.empty());
        return resolved.map(p -> new LoadRules(rows, p));
    }

    /** The imposed loads of the first amendment that has some; another may only repeat them. */
    private Optional<Entry> amendedImposed() {
        List<Entry> all = composition.amendments().stream()
                .flatMap(amendment -> amendment.optional("loads").stream())
                .map(loads -> loads.member("imposed"))
                .toList();
        all.stream()
                .filter(other -> !other.isLike(all.get(0)))
                .forEach(other -> Overlay.tellContradiction(other, all.get(0)));
        return all.stream().findFirst();
    }

    private Optional<LoadRules.ImposedRow> imposed(Entry row) {
        Optional<Condition> when = conditions.when(row, SubjectKind.PLATFORMS);
        Optional<Measure> uniform = TokenReader.number(row.member("uniform"), MeasureUnit.KILONEWTON_PER_SQUARE_METRE);
        Optional<Entry> point = row.optional("concentrated");
        Optional<Measure> concentrated = point.flatMap(p -> TokenReader.number(p, MeasureUnit.KILONEWTON));
        Optional<Citation> citation = citations.read(row.member("cite"));
        if (when.isEmpty() || uniform.isEmpty() || point.isPresent() && concentrated.isEmpty() || citation.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LoadRules.ImposedRow(
                when.get(),
                uniform.get(),
                concentrated,
                row.optional("category").map(Entry::text),
                citation.get(),
                row.member("reason").text()));
    }

    private List<Provision> provisions() {
        List<Provision> provisions = new ArrayList<>();
        if (composition.provisions().isEmpty()) {
            root.fault("'provisions' is missing", "provisions here or in a base");
        }
        Map<Stated, Provision> read = new LinkedHashMap<>();
        for (Stated stated : composition.provisions()) {
            if (stated.isSound()) {
                provision(stated, provisions.size()).ifPresent(provision -> {
                    provisions.add(provision);
                    read.put(stated, provision);
                });
            }
        }
        new CalculatedReader(composition.provisions(), provisions).tell();
        WordingCheck wordings = new WordingCheck(new Figures(provisions, vocabulary));
        read.forEach(wordings::check);
        return provisions;
    }

    private static List<String> ids(Entry calculated) {
        return calculated.items().stream().map(Entry::text).toList();
    }

    private Optional<Provision> provision(Stated stated, int order) {
        SubjectKind subjects = stated.member("subjects").worded(SubjectKind.class);
        Optional<Citation> citation = citations.read(stated.member("cite"));
        Optional<Condition> when = conditions.when(stated.conditioned(), subjects);
        Optional<List<Reach>> scope = reaches.read(stated.optional("scope"), subjects);
        Optional<Rule> rule = rule(stated, subjects, citation);
        if (citation.isEmpty() || when.isEmpty() || scope.isEmpty() || rule.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Provision(
                order,
                stated.member("id").text(),
                stated.member("title").text(),
                stated.member("concern").worded(Concern.class),
                stated.member("obligation").worded(Obligation.class),
                citation.get(),
                subjects,
                when.get(),
                scope.get(),
                rule.get(),
                stated.optional("calculated").map(EditionReader::ids).orElse(List.of()),
                stated.member("advice").text(),
                stated.optional("caution").map(Entry::text),
                stated.optional("referral").map(Entry::text),
                stated.setBy(),
                stated.ruledBy()));
    }

    private Optional<Rule> rule(Stated stated, SubjectKind subjects, Optional<Citation> citation) {
        Optional<Entry> limit = stated.rule("limit");
        if (limit.isPresent()) {
            return conditions.limit(limit.get(), subjects);
        }
        Optional<Entry> lookUp = stated.rule("lookUp");
        return lookUp.isPresent()
                ? lookUps.read(lookUp.get(), subjects)
                : calculation(stated.member("calculate"), subjects, citation);
    }

    private Optional<Rule> calculation(Entry calculate, SubjectKind subjects, Optional<Citation> own) {
        Entry name = calculate.member("method");
        Optional<MethodDescription> method = vocabulary.method(name.text());
        if (method.isEmpty()) {
            name.unknown(
                    name.text(),
                    "method",
                    vocabulary.methods().stream()
                            .map(MethodDescription::name)
                            .sorted()
                            .toList());
            return Optional.empty();
        }
        if (!method.get().subjects().contains(subjects)) {
            name.fault(
                    "This method does not look at " + subjects.word(),
                    "subjects: "
                            + String.join(
                                    ", ",
                                    method.get().subjects().stream()
                                            .map(SubjectKind::word)
                                            .toList()));
        }
        return parameters
                .read(calculate, name.text(), method.get().parameters(), own)
                .map(p -> new Rule.Calculation(name.text(), p));
    }
}
