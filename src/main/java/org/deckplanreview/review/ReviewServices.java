package org.deckplanreview.review;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.method.durability.Durability;
import org.deckplanreview.method.en1995.En1995;
import org.deckplanreview.method.foundation.Foundation;
import org.deckplanreview.method.geometry.Quantities;
import org.deckplanreview.method.guard.Guards;
import org.deckplanreview.method.nds2018.Nds2018;
import org.deckplanreview.method.stair.StairMethods;
import org.deckplanreview.report.Reports;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.LoadResult;
import org.deckplanreview.ruleset.RulesetFault;
import org.deckplanreview.ruleset.RulesetFiles;
import org.deckplanreview.ruleset.RulesetLoader;
import org.deckplanreview.ruleset.Rulesets;
import org.deckplanreview.submission.SubmissionReader;
import org.deckplanreview.vocabulary.Vocabulary;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Puts the review together once, from the rulesets that come with the service. */
@ApplicationScoped
public class ReviewServices {

    /** Every quantity and method of this version. */
    public static Catalogue catalogue() {
        return new Catalogue(
                Quantities.all(),
                Stream.of(
                                En1995.methods(),
                                Nds2018.methods(),
                                Foundation.methods(),
                                Durability.methods(),
                                Guards.methods(),
                                StairMethods.methods())
                        .flatMap(List::stream)
                        .toList());
    }

    /** A review under the given rulesets. */
    public static Reviewer reviewerOf(Catalogue catalogue, Rulesets rulesets, String serviceVersion) {
        return new DeckReview(
                new SubmissionReader(),
                rulesets,
                new Assessor(catalogue),
                new Reports(catalogue.vocabulary(), serviceVersion));
    }

    /** @throws IllegalStateException naming every fault; the service does not start on rulesets that it cannot trust */
    public static Rulesets builtIn(Vocabulary vocabulary) {
        LoadResult result = RulesetLoader.load(RulesetFiles.ofClassPath(), vocabulary);
        if (result instanceof LoadResult.Faulty faulty) {
            throw new IllegalStateException(faulty.faults().stream()
                    .map(RulesetFault::message)
                    .collect(Collectors.joining("\n", "The rulesets have faults:\n", "")));
        }
        return ((LoadResult.Loaded) result).rulesets();
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
    Rulesets rulesets(Vocabulary vocabulary) {
        return builtIn(vocabulary);
    }

    @Produces
    @Singleton
    Editions editions(Rulesets rulesets) {
        List<Edition> all = rulesets.regions().stream()
                .flatMap(r -> rulesets.editions(r).stream())
                .toList();
        return () -> all;
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
    RulesetChecker checker(Catalogue catalogue) {
        return new RulesetCheck(catalogue);
    }
}
