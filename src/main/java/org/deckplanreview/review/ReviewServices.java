package org.deckplanreview.review;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.method.decking.ManufacturedDecking;
import org.deckplanreview.method.durability.Durability;
import org.deckplanreview.method.en1995.En1995;
import org.deckplanreview.method.equilibrium.Equilibrium;
import org.deckplanreview.method.foundation.Foundation;
import org.deckplanreview.method.guard.Guards;
import org.deckplanreview.method.nds2018.Nds2018;
import org.deckplanreview.method.stair.StairMethods;
import org.deckplanreview.quantity.Quantities;
import org.deckplanreview.report.Reports;
import org.deckplanreview.ruleset.Amending;
import org.deckplanreview.ruleset.Amendment;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.EditionHeading;
import org.deckplanreview.ruleset.LoadResult;
import org.deckplanreview.ruleset.RulesetFiles;
import org.deckplanreview.ruleset.RulesetLoader;
import org.deckplanreview.ruleset.Rulesets;
import org.deckplanreview.submission.SubmissionReader;
import org.deckplanreview.vocabulary.Vocabulary;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Puts the review together once, from the rulesets that come with the service. */
@ApplicationScoped
public class ReviewServices {
    /** Names a directory whose rulesets join those that come with the service. */
    public static final String DIRECTORY = "deckplanreview.rulesets.directory";

    /** Every quantity and method of this version. */
    public static Catalogue catalogue() {
        return new Catalogue(
                Quantities.all(),
                Stream.of(
                                En1995.methods(),
                                Nds2018.methods(),
                                Equilibrium.methods(),
                                Foundation.methods(),
                                Durability.methods(),
                                ManufacturedDecking.methods(),
                                Guards.methods(),
                                StairMethods.methods())
                        .flatMap(List::stream)
                        .toList());
    }

    /** The editions of these rulesets. */
    public static Editions editionsOf(Rulesets rulesets) {
        return new Editions() {
            @Override
            public List<EditionHeading> headings() {
                return rulesets.headings();
            }

            @Override
            public List<Edition> of(String region) {
                return rulesets.editions(region);
            }

            @Override
            public List<Amendment> amendments(String region) {
                return rulesets.amendments(region);
            }

            @Override
            public Optional<Amending> edition(String region, String name, List<String> amendments) {
                return rulesets.edition(region, name, amendments);
            }
        };
    }

    /** A review under the given rulesets. */
    public static Reviewer reviewerOf(Catalogue catalogue, Rulesets rulesets, String serviceVersion) {
        return new DeckReview(
                new SubmissionReader(),
                rulesets,
                new Assessor(catalogue),
                new Reports(catalogue.vocabulary(), serviceVersion));
    }

    /** The rulesets that come with the service. The build checks them, so that each edition is read when it is first asked for. */
    public static Rulesets builtIn(Vocabulary vocabulary) {
        return RulesetLoader.trust(RulesetFiles.ofClassPath(), vocabulary);
    }

    /**
     * The built-in rulesets; with those of a directory, if there is one, all of them checked.
     *
     * @throws FaultyRulesets naming every fault; the service does not start on rulesets that it cannot trust
     */
    public static Rulesets loaded(Vocabulary vocabulary, Optional<Path> directory) {
        if (directory.isEmpty()) {
            return builtIn(vocabulary);
        }
        LoadResult result = RulesetLoader.load(files(directory), vocabulary);
        if (result instanceof LoadResult.Faulty faulty) {
            throw new FaultyRulesets(directory, faulty.faults());
        }
        return ((LoadResult.Loaded) result).rulesets();
    }

    static RulesetFiles files(Optional<Path> directory) {
        RulesetFiles builtIn = RulesetFiles.ofClassPath();
        return directory.map(RulesetFiles::ofDirectory).map(builtIn::and).orElse(builtIn);
    }

    @Produces
    @Singleton
    Catalogue allThatCanBeNamed() {
        return catalogue();
    }

    @Produces
    @Singleton
    Vocabulary vocabulary(Catalogue catalogue) {
        return catalogue.vocabulary();
    }

    @Produces
    @Singleton
    Rulesets rulesets(Vocabulary vocabulary, @ConfigProperty(name = DIRECTORY) Optional<Path> directory) {
        return loaded(vocabulary, directory);
    }

    @Produces
    @Singleton
    Editions editions(Rulesets rulesets) {
        return editionsOf(rulesets);
    }

    @Produces
    @Singleton
    Reviewer reviewer(
            Catalogue catalogue,
            Rulesets rulesets,
            @ConfigProperty(name = "quarkus.application.version") String serviceVersion) {
        return reviewerOf(catalogue, rulesets, serviceVersion);
    }

    @Produces
    @Singleton
    RulesetChecker checker(Catalogue catalogue, @ConfigProperty(name = DIRECTORY) Optional<Path> configured) {
        return new RulesetCheck(catalogue, configured);
    }
}
