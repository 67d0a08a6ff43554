package org.deckplanreview.ruleset;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.deckplanreview.kernel.Pointer;

/** Reads one file of cases. */
final class CaseReader {

    private static final ObjectMapper JSON = new ObjectMapper();

    private CaseReader() {}

    /**
     * The cases of a file whose format was checked, once for each edition that they are run under; none if the file has
     * faults, which are then told.
     *
     * @param folder the region, or {@code common}
     * @param name the edition's, or the base's
     */
    static List<CaseFile> read(Entry root, String folder, String name, Rulesets rulesets) {
        List<Edition> all = rulesets.regions().stream()
                .flatMap(r -> rulesets.editions(r).stream())
                .toList();
        return folder.equals("common")
                ? beside("common/" + name + ".yaml", root, all)
                : beside(folder, name, root, all);
    }

    private static List<CaseFile> beside(String region, String name, Entry root, List<Edition> all) {
        Optional<Edition> edition = all.stream()
                .filter(e -> e.region().equals(region) && e.name().equals(name))
                .findFirst();
        if (edition.isEmpty()) {
            root.unknown(
                    region + "/" + name,
                    "edition",
                    all.stream().map(e -> e.region() + "/" + e.name()).toList());
            return List.of();
        }
        List<RulesetCase> cases = cases(
                root,
                "provision in this edition",
                edition.get().provisions().stream().map(Provision::id).toList());
        return root.file().faultless() ? List.of(new CaseFile(root.file().path(), edition.get(), cases)) : List.of();
    }

    /** An edition that withdraws a provision, or asks for something else, proves that itself. */
    private static List<CaseFile> beside(String base, Entry root, List<Edition> all) {
        List<Edition> built = all.stream()
                .filter(e -> e.bases().stream().anyMatch(b -> b.path().equals(base)))
                .toList();
        if (built.isEmpty()) {
            root.unknown(
                    base,
                    "base of an edition",
                    all.stream()
                            .flatMap(e -> e.bases().stream())
                            .map(Edition.Base::path)
                            .distinct()
                            .toList());
            return List.of();
        }
        List<RulesetCase> cases = cases(
                root,
                "provision that an edition takes from this base",
                built.stream().flatMap(e -> ruled(e, base).stream()).distinct().toList());
        return root.file().faultless()
                ? built.stream()
                        .map(e -> new CaseFile(
                                root.file().path(),
                                e,
                                cases.stream()
                                        .filter(c -> ruled(e, base).contains(c.provision()))
                                        .toList()))
                        .toList()
                : List.of();
    }

    /** The cases beside an amendment are run over each edition that it amends and that has their provisions. */
    static List<CaseFile> besideAmendment(Entry root, String region, String name, Rulesets rulesets) {
        List<String> known =
                rulesets.amendments(region).stream().map(Amendment::name).toList();
        Optional<Amendment> amendment = rulesets.amendments(region).stream()
                .filter(a -> a.name().equals(name))
                .findFirst();
        if (amendment.isEmpty()) {
            root.unknown(name, "amendment of " + region, known);
            return List.of();
        }
        List<Edition> amended = amendment.get().amends().stream()
                .flatMap(edition -> rulesets.edition(region, edition, List.of(name)).stream())
                .map(amending -> ((Amending.Amended) amending).edition())
                .toList();
        List<RulesetCase> cases = cases(
                root,
                "provision in an edition so amended",
                amended.stream()
                        .flatMap(e -> e.provisions().stream().map(Provision::id))
                        .distinct()
                        .toList());
        return root.file().faultless()
                ? amended.stream()
                        .map(e -> new CaseFile(
                                root.file().path(),
                                e,
                                cases.stream()
                                        .filter(c -> AmendedValues.byId(e).containsKey(c.provision()))
                                        .toList()))
                        .toList()
                : List.of();
    }

    private static List<String> ruled(Edition edition, String base) {
        return edition.provisions().stream()
                .filter(p -> p.ruledBy().equals(base))
                .map(Provision::id)
                .toList();
    }

    private static List<RulesetCase> cases(Entry root, String what, List<String> provisions) {
        List<RulesetCase> cases = new ArrayList<>();
        Map<String, Integer> names = new TreeMap<>();
        for (Entry entry : root.itemsOf("cases")) {
            if (!entry.isSound()) {
                continue;
            }
            RulesetCase one = one(entry);
            Integer first = names.putIfAbsent(one.name(), one.line());
            if (first != null) {
                entry.member("name").fault("Line " + first + " has a case of this name already", "another name");
            }
            if (!provisions.contains(one.provision())) {
                entry.member("provision").unknown(one.provision(), what, provisions);
            }
            cases.add(one);
        }
        return cases;
    }

    private static RulesetCase one(Entry entry) {
        Entry expect = entry.member("expect");
        return new RulesetCase(
                entry.member("name").text(),
                entry.line(),
                entry.member("provision").text(),
                entry.member("base").text(),
                entry.optional("patch").map(CaseReader::json).orElse("[]"),
                new RulesetCase.Expectation(
                        Pointer.of(expect.member("subject").text()),
                        expect.member("determination").text(),
                        expect.optional("found").map(Entry::text),
                        expect.optional("allowed").map(Entry::text),
                        expect.optional("needs").map(Entry::text).map(Pointer::of)),
                entry.member("source").text());
    }

    private static String json(Entry patch) {
        try {
            return JSON.writeValueAsString(patch.node().plain());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Maps, lists and scalars can be written", e);
        }
    }
}
