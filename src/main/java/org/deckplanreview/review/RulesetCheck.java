package org.deckplanreview.review;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    public List<String> check(Optional<Path> directory, Optional<Path> added) {
        RulesetFiles checked =
                directory.map(RulesetFiles::ofDirectory).orElseGet(() -> ReviewServices.files(configured));
        RulesetFiles files =
                added.map(RulesetFiles::ofDirectory).map(checked::and).orElse(checked);
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
        CaseRun run = new CaseRun(catalogue, Samples.beside(directory.or(() -> added)));
        for (CaseFile file : cases) {
            for (RulesetCase one : file.cases()) {
                run.fault(one, file.edition())
                        .ifPresent(f -> faults.add("%s:%d: %s: under %s/%s: %s"
                                .formatted(
                                        file.path(),
                                        one.line(),
                                        one.name(),
                                        file.edition().region(),
                                        named(file.edition()),
                                        f)));
            }
        }
        for (String region : rulesets.regions()) {
            rulesets.editions(region).forEach(e -> faults.addAll(unproved(e, e.provisions(), cases)));
        }
        for (String region : rulesets.regions()) {
            rulesets.amendments(region).forEach(a -> faults.addAll(unproved(a, rulesets, cases)));
        }
        return List.copyOf(faults);
    }

    private static String named(Edition edition) {
        return edition.name()
                + edition.amendments().stream()
                        .map(applied -> " with " + applied.amendment().name())
                        .collect(Collectors.joining());
    }

    /** Over each edition, what an amendment asks for is proved beside it as an edition's own provisions are. */
    private static List<String> unproved(Amendment amendment, Rulesets rulesets, List<CaseFile> files) {
        List<String> faults = new ArrayList<>();
        for (String name : amendment.amends()) {
            Edition edition = rulesets.edition(amendment.region(), name, List.of(amendment.name()))
                    .map(amending -> ((Amending.Amended) amending).edition())
                    .orElseThrow();
            List<Provision> own = edition.provisions().stream()
                    .filter(p -> p.ruledBy().equals(amendment.path()))
                    .toList();
            faults.addAll(unproved(edition, own, files));
            if (own.isEmpty() && cases(edition, files).isEmpty()) {
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
