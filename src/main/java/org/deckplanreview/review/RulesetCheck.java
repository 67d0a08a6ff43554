package org.deckplanreview.review;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.assessment.Determination;
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

    RulesetCheck(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    @Override
    public List<String> check(Optional<Path> directory) {
        RulesetFiles files = directory.map(RulesetFiles::ofDirectory).orElseGet(RulesetFiles::ofClassPath);
        LoadResult loaded = RulesetLoader.load(files, catalogue.vocabulary());
        if (loaded instanceof LoadResult.Faulty faulty) {
            return faulty.faults().stream().map(RulesetFault::message).toList();
        }
        Rulesets rulesets = ((LoadResult.Loaded) loaded).rulesets();
        if (rulesets.regions().isEmpty()) {
            return List.of(NOTHING.message());
        }
        CasesResult read = RulesetLoader.readCases(files, rulesets);
        if (read instanceof CasesResult.Faulty faulty) {
            return faulty.faults().stream().map(RulesetFault::message).toList();
        }
        List<CaseFile> cases = ((CasesResult.Read) read).files();
        List<String> faults = new ArrayList<>();
        CaseRun run = new CaseRun(catalogue, Samples.beside(directory));
        for (CaseFile file : cases) {
            for (RulesetCase one : file.cases()) {
                run.fault(one, file.edition())
                        .ifPresent(f -> faults.add("%s:%d: %s: under %s/%s: %s"
                                .formatted(
                                        file.path(),
                                        one.line(),
                                        one.name(),
                                        file.edition().region(),
                                        file.edition().name(),
                                        f)));
            }
        }
        for (String region : rulesets.regions()) {
            rulesets.editions(region).forEach(e -> faults.addAll(unproved(e, cases)));
        }
        return List.copyOf(faults);
    }

    private static List<String> unproved(Edition edition, List<CaseFile> files) {
        List<RulesetCase> cases = files.stream()
                .filter(f -> f.edition().region().equals(edition.region())
                        && f.edition().name().equals(edition.name()))
                .flatMap(f -> f.cases().stream())
                .toList();
        List<String> faults = new ArrayList<>();
        for (Provision p : edition.provisions()) {
            for (Determination d : ASKED) {
                boolean isProved = cases.stream()
                        .anyMatch(c -> c.provision().equals(p.id())
                                && c.expect().determination().equals(d.word()));
                if (!isProved) {
                    faults.add(edition.region() + "/" + edition.name() + ": " + p.id() + " has no case that "
                            + (d == Determination.COMPLIES ? "complies" : "does not comply"));
                }
            }
        }
        return faults;
    }
}
