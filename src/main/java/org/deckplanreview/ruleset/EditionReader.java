package org.deckplanreview.ruleset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.deckplanreview.measure.Measure;
import org.deckplanreview.measure.MeasureUnit;
import org.deckplanreview.submission.SubjectKind;
import org.deckplanreview.vocabulary.MethodDescription;
import org.deckplanreview.vocabulary.Parameters;
import org.deckplanreview.vocabulary.Vocabulary;

/** Reads one edition: resolves its standards, then reads loads and provisions against the vocabulary. */
final class EditionReader {

    private final Entry root;
    private final Vocabulary vocabulary;
    private final Map<String, Optional<StandardFile>> standardFiles;
    private final Map<String, StandardFile> standards = new LinkedHashMap<>();
    private final Layers layers = new Layers();
    private final Citations citations;
    private final ConditionReader conditions;
    private final ParameterReader parameters;

    private EditionReader(Entry root, Map<String, Optional<StandardFile>> standardFiles, Vocabulary vocabulary) {
        this.root = root;
        this.vocabulary = vocabulary;
        this.standardFiles = standardFiles;
        this.citations = new Citations(sources());
        this.conditions = new ConditionReader(vocabulary);
        this.parameters = new ParameterReader(layers, citations);
    }

    /**
     * Reads an edition whose format was checked; empty if it or a standard that it uses has faults.
     *
     * @param standardFiles by path, empty where a file has faults
     */
    static Optional<Edition> read(
            Entry root, Map<String, Optional<StandardFile>> standardFiles, Vocabulary vocabulary) {
        return root.isMap() ? new EditionReader(root, standardFiles, vocabulary).read() : Optional.empty();
    }

    private Optional<Edition> read() {
        root.membersOf("sets").forEach((standard, settings) -> layers.set(standard, settings, citations));
        checkPath();
        Optional<Entry> inForce = part("inForce");
        Optional<LocalDate> from =
                inForce.flatMap(period -> period.member("from").date());
        Optional<LocalDate> until =
                inForce.flatMap(period -> period.optional("until")).flatMap(Entry::date);
        if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
            inForce.get()
                    .member("until")
                    .fault("The last day in force is before the first", "a day from " + from.get() + " on");
        }
        Optional<LoadRules> loads = part("loads").flatMap(this::loads);
        Optional<Parameters> schedule = part("schedule").flatMap(this::schedule);
        List<Provision> provisions = provisions();
        if (root.file().faultless()) {
            tellUnused();
        }
        // A fault may also stand in a standard's file, found only when its value was used.
        boolean complete = root.file().faultless()
                && standards.values().stream().allMatch(StandardFile::faultless)
                && standards.size() == root.membersOf("uses").size();
        return complete
                ? Optional.of(edition(from.orElseThrow(), until, loads.orElseThrow(), schedule, provisions))
                : Optional.empty();
    }

    private Edition edition(
            LocalDate from,
            Optional<LocalDate> until,
            LoadRules loads,
            Optional<Parameters> schedule,
            List<Provision> provisions) {
        List<Edition.BasedOn> basedOn = new ArrayList<>();
        standards.forEach((name, file) -> basedOn.add(new Edition.BasedOn(name, sourceOf(name, file), file.digest())));
        return CanonicalEdition.complete(new Edition(
                root.member("region").text(),
                root.member("regionTitle").text(),
                root.member("edition").text(),
                root.member("title").text(),
                from,
                until,
                basedOn,
                citations.all(),
                loads,
                schedule,
                provisions,
                texts("cautions"),
                texts("referrals"),
                texts("notes"),
                "",
                ""));
    }

    private List<String> texts(String name) {
        return root.optional(name).map(Entry::texts).orElse(List.of());
    }

    private Optional<Entry> part(String name) {
        return root.optional(name).filter(Entry::isSound);
    }

    private void checkPath() {
        Optional<Entry> region = part("region");
        Optional<Entry> edition = part("edition");
        if (region.isPresent() && edition.isPresent()) {
            String path = region.get().text() + "/" + edition.get().text() + ".yaml";
            if (!root.file().path().equals(path)) {
                edition.get()
                        .fault(
                                "The file stands in another place than its region and edition say",
                                "the file as " + path);
            }
        }
    }

    /** The file's own sources, then the standards that it uses. */
    private Map<String, Optional<Source>> sources() {
        Map<String, Optional<Source>> sources = new LinkedHashMap<>();
        root.membersOf("sources")
                .forEach((key, source) -> sources.put(
                        key, Optional.of(source).filter(Entry::isSound).map(s -> StandardFile.source(key, s))));
        root.membersOf("uses").forEach((name, path) -> {
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

    private Optional<StandardFile> standard(Entry path) {
        if (!path.isSound()) {
            return Optional.empty();
        }
        if (!standardFiles.containsKey(path.text())) {
            path.unknown(path.text(), "standard's file", standardFiles.keySet());
            return Optional.empty();
        }
        return standardFiles.get(path.text());
    }

    private static Source sourceOf(String name, StandardFile file) {
        Source s = file.source();
        return new Source(name, s.title(), s.edition(), s.publisher(), s.standing());
    }

    private void tellUnused() {
        root.membersOf("sources").forEach((key, source) -> {
            if (!citations.isCited(key)) {
                source.file()
                        .fault(
                                source.line(),
                                "'" + key + "'",
                                "Nothing cites this source",
                                "a citation, or no such source");
            }
        });
        root.membersOf("uses").forEach((name, path) -> {
            if (!citations.isCited(name) && !layers.isUsed(name)) {
                path.file()
                        .fault(
                                path.line(),
                                "'" + name + "'",
                                "Nothing uses this standard",
                                "its name in values or a citation, or no such standard");
            }
        });
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
        ConditionReader.refuseUnreachable(loads.member("imposed"));
        List<LoadRules.ImposedRow> rows = new ArrayList<>();
        loads.member("imposed").items().forEach(row -> imposed(row).ifPresent(rows::add));
        refuseUncited(loads);
        Optional<Parameters> resolved =
                parameters.read(loads, "the load path", vocabulary.loadParameters(), Optional.empty());
        return resolved.map(p -> new LoadRules(rows, p));
    }

    private Optional<LoadRules.ImposedRow> imposed(Entry row) {
        Optional<Condition> when = conditions.when(row, SubjectKind.PLATFORMS);
        Optional<Measure> uniform = TokenReader.number(row.member("uniform"), MeasureUnit.KILONEWTON_PER_SQUARE_METRE);
        Optional<Measure> concentrated = TokenReader.number(row.member("concentrated"), MeasureUnit.KILONEWTON);
        Optional<Citation> citation = citations.read(row.member("cite"));
        if (when.isEmpty() || uniform.isEmpty() || concentrated.isEmpty() || citation.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LoadRules.ImposedRow(
                when.get(),
                uniform.get(),
                concentrated.get(),
                row.member("category").text(),
                citation.get(),
                row.member("reason").text()));
    }

    private List<Provision> provisions() {
        List<Provision> provisions = new ArrayList<>();
        Map<String, Entry> ids = new TreeMap<>();
        for (Entry entry : root.itemsOf("provisions")) {
            entry.optional("id").filter(Entry::isSound).ifPresent(id -> {
                Entry first = ids.putIfAbsent(id.text(), id);
                if (first != null) {
                    id.fault("Line " + first.line() + " has a provision of this id already", "another id");
                }
            });
            if (entry.isSound()) {
                provision(entry, provisions.size()).ifPresent(provisions::add);
            }
        }
        return provisions;
    }

    private Optional<Provision> provision(Entry entry, int order) {
        SubjectKind subjects = entry.member("subjects").worded(SubjectKind.class);
        Optional<Citation> citation = citations.read(entry.member("cite"));
        Optional<Condition> when = conditions.when(entry, subjects);
        Optional<Rule> rule = entry.optional("limit")
                .map(limit -> conditions.limit(limit, subjects))
                .orElseGet(() -> calculation(entry.member("calculate"), subjects, citation));
        if (citation.isEmpty() || when.isEmpty() || rule.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Provision(
                order,
                entry.member("id").text(),
                entry.member("title").text(),
                entry.member("concern").worded(Concern.class),
                entry.member("obligation").worded(Obligation.class),
                citation.get(),
                subjects,
                when.get(),
                rule.get(),
                entry.member("advice").text(),
                entry.optional("caution").map(Entry::text),
                entry.optional("referral").map(Entry::text)));
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
