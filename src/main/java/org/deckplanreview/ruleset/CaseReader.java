package org.deckplanreview.ruleset;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.deckplanreview.submission.Pointer;

/** Reads one file of cases. */
final class CaseReader {

    private static final ObjectMapper JSON = new ObjectMapper();

    private CaseReader() {}

    /** The cases of a file whose format was checked; empty if it has faults, which are then told. */
    static Optional<CaseFile> read(Entry root, String region, String editionName, Rulesets rulesets) {
        Optional<Edition> edition = rulesets.edition(region, editionName);
        if (edition.isEmpty()) {
            root.unknown(
                    region + "/" + editionName,
                    "edition",
                    rulesets.regions().stream()
                            .flatMap(r -> rulesets.editions(r).stream())
                            .map(e -> e.region() + "/" + e.name())
                            .toList());
            return Optional.empty();
        }
        List<String> provisions =
                edition.get().provisions().stream().map(Provision::id).toList();
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
                entry.member("provision").unknown(one.provision(), "provision in this edition", provisions);
            }
            cases.add(one);
        }
        return root.file().faultless()
                ? Optional.of(new CaseFile(root.file().path(), edition.get(), cases))
                : Optional.empty();
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
