package org.deckplanreview.review;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.assessment.Determination;
import org.deckplanreview.ruleset.Amending;
import org.deckplanreview.ruleset.Amendment;
import org.deckplanreview.ruleset.CaseFile;
import org.deckplanreview.ruleset.CasesResult;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.LoadResult;
import org.deckplanreview.ruleset.Provision;
import org.deckplanreview.ruleset.RulesetCase;
import org.deckplanreview.ruleset.RulesetFault;
import org.deckplanreview.ruleset.RulesetFiles;
import org.deckplanreview.ruleset.RulesetLoader;
import org.deckplanreview.ruleset.Rulesets;

/** Loads rulesets, runs their cases, and asks that each provision has a case that complies and one that does not. */
final class RulesetCheck implements RulesetChecker {

    private static final List<Determination> ASKED = List.of(Determination.COMPLIES, Determination.DOES_NOT_COMPLY);

    /** A mistyped directory must not pass for one whose rulesets are well. */
    private static final RulesetFault NOTHING =
            new RulesetFault(".", 1, "no edition", "There is nothing to check", "at least one <region>/<edition>.yaml");

    private final Catalogue catalogue;
    private final Optional<Path> configured;

    /** @param configured a directory whose rulesets join the built-in ones */
    RulesetCheck(Catalogue catalogue, Optional<Path> configured) {
        this.catalogue = catalogue;
        this.configured = configured;
    }

    @Override
    public Checked check(Asked asked, Progress progress) {
        RulesetFiles checked =
                asked.directory().map(RulesetFiles::ofDirectory).orElseGet(() -> ReviewServices.files(configured));
        RulesetFiles files =
                asked.added().map(RulesetFiles::ofDirectory).map(checked::and).orElse(checked);
        LoadResult loaded = RulesetLoader.load(files, catalogue.vocabulary());
        if (loaded instanceof LoadResult.Faulty faulty) {
            return faulty(faulty.faults());
        }
        Rulesets rulesets = ((LoadResult.Loaded) loaded).rulesets();
        if (rulesets.regions().isEmpty()) {
            return faulty(List.of(NOTHING));
        }
        CasesResult read = RulesetLoader.readCases(files, rulesets);
        if (read instanceof CasesResult.Faulty faulty) {
            return faulty(faulty.faults());
        }
        List<CaseFile> cases = ((CasesResult.Read) read).files();
        Selection selection = Selection.of(asked.only(), cases);
        List<Run> runs = runs(cases, selection);
        if (runs.isEmpty() && asked.only().isPresent()) {
            return new Checked(List.of(selection.unknown()), 0, 0);
        }
        List<String> faults = new ArrayList<>(run(runs, asked, progress));
        for (String region : rulesets.regions()) {
            rulesets.editions(region)
                    .forEach(e -> faults.addAll(unproved(e, asking(e.provisions(), e, selection), cases)));
        }
        for (String region : rulesets.regions()) {
            rulesets.amendments(region).forEach(a -> faults.addAll(unproved(a, rulesets, selection, cases)));
        }
        return new Checked(faults, rulesets.headings().size(), (int)
                runs.stream().map(Run::place).distinct().count());
    }

    private static Checked faulty(List<RulesetFault> faults) {
        return new Checked(faults.stream().map(RulesetFault::message).toList(), 0, 0);
    }

    /** A case under one edition. */
    private record Run(String path, RulesetCase one, Edition edition) {

        /** Where the case stands. */
        String place() {
            return path + ":" + one.line();
        }

        /** Runs of the same deck have the same one. */
        List<String> deck() {
            return List.of(one.base(), one.patch());
        }

        String told(String fault) {
            return "%s: %s: under %s/%s: %s".formatted(place(), one.name(), edition.region(), named(edition), fault);
        }
    }

    private static List<Run> runs(List<CaseFile> files, Selection selection) {
        return files.stream()
                .flatMap(file -> file.cases().stream()
                        .filter(one -> selection.includes(file, one.provision()))
                        .map(one -> new Run(file.path(), one, file.edition())))
                .toList();
    }

    /** Runs those of one deck after each other, so that it is read once; the faults come in the order of the runs. */
    private List<String> run(List<Run> runs, Asked asked, Progress progress) {
        CaseRun running =
                new CaseRun(catalogue, Samples.beside(asked.directory().or(asked::added)));
        Map<List<String>, List<Integer>> byDeck = new LinkedHashMap<>();
        for (int i = 0; i < runs.size(); i++) {
            byDeck.computeIfAbsent(runs.get(i).deck(), deck -> new ArrayList<>())
                    .add(i);
        }
        SortedMap<Integer, String> faults = new TreeMap<>();
        int ran = 0;
        for (List<Integer> alike : byDeck.values()) {
            RulesetCase first = runs.get(alike.get(0)).one();
            CaseRun.Deck deck = running.deck(first.base(), first.patch());
            for (int i : alike) {
                Run run = runs.get(i);
                running.fault(run.one(), deck, run.edition()).ifPresent(fault -> faults.put(i, run.told(fault)));
                progress.ran(++ran, runs.size());
            }
        }
        return List.copyOf(faults.values());
    }

    private static List<Provision> asking(List<Provision> provisions, Edition edition, Selection selection) {
        return provisions.stream()
                .filter(provision -> selection.proves(edition, provision.id()))
                .toList();
    }

    private static String named(Edition edition) {
        return edition.name()
                + edition.amendments().stream()
                        .map(applied -> " with " + applied.amendment().name())
                        .collect(Collectors.joining());
    }

    /** Over each edition, what an amendment asks for is proved beside it as an edition's own provisions are. */
    private static List<String> unproved(
            Amendment amendment, Rulesets rulesets, Selection selection, List<CaseFile> files) {
        List<String> faults = new ArrayList<>();
        for (String name : amendment.amends()) {
            Edition edition = rulesets.edition(amendment.region(), name, List.of(amendment.name()))
                    .map(amending -> ((Amending.Amended) amending).edition())
                    .orElseThrow();
            List<Provision> own = edition.provisions().stream()
                    .filter(p -> p.ruledBy().equals(amendment.path()))
                    .toList();
            faults.addAll(unproved(edition, asking(own, edition, selection), files));
            if (own.isEmpty()
                    && selection.provesAll(edition)
                    && cases(edition, files).isEmpty()) {
                faults.add(amendment.path() + ": it has no case over the edition " + name);
            }
        }
        return faults;
    }

    private static List<RulesetCase> cases(Edition edition, List<CaseFile> files) {
        return files.stream()
                .filter(f -> f.edition().digest().equals(edition.digest()))
                .flatMap(f -> f.cases().stream())
                .toList();
    }

    private static List<String> unproved(Edition edition, List<Provision> provisions, List<CaseFile> files) {
        List<RulesetCase> cases = cases(edition, files);
        List<String> faults = new ArrayList<>();
        for (Provision p : provisions) {
            for (Determination d : ASKED) {
                boolean isProved = cases.stream()
                        .anyMatch(c -> c.provision().equals(p.id())
                                && c.expect().determination().equals(d.word()));
                if (!isProved) {
                    faults.add(edition.region() + "/" + named(edition) + ": " + p.id() + " has no case that "
                            + (d == Determination.COMPLIES ? "complies" : "does not comply"));
                }
            }
        }
        return faults;
    }
}
