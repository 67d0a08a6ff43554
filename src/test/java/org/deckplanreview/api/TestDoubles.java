package org.deckplanreview.api;

import static org.deckplanreview.report.FindingBuilder.finding;
import static org.deckplanreview.report.ReportBuilder.drawnAssessment;
import static org.deckplanreview.report.ReportBuilder.report;

import io.quarkus.test.Mock;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.deckplanreview.comparison.BuiltInComparisons;
import org.deckplanreview.comparison.Comparisons;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.rendering.ReviewedDecks;
import org.deckplanreview.report.ReportBuilder;
import org.deckplanreview.review.Editions;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.review.Reviewer;
import org.deckplanreview.review.RulesetChecker;
import org.deckplanreview.ruleset.Amending;
import org.deckplanreview.ruleset.Amendment;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.EditionHeading;
import org.deckplanreview.submission.Fault;
import org.deckplanreview.vocabulary.Vocabulary;

/** Stands in for the review, so that these tests prove the surface alone. The body says what the review comes to. */
@Mock
@Singleton
class TestDoubles {
    @Produces
    @Mock
    @Singleton
    Reviewer reviewer() {
        return new Reviewer() {
            @Override
            public ReviewResult review(byte[] bytes) {
                return result(bytes);
            }

            @Override
            public List<ReviewResult> review(byte[] bytes, List<Edition> editions) {
                return editions.stream().map(edition -> result(bytes)).toList();
            }
        };
    }

    private static ReviewResult result(byte[] bytes) {
        return switch (new String(bytes, StandardCharsets.UTF_8).strip()) {
            case "{" -> new ReviewResult.NotJson("The document ends too early", 1, 2);
            case "{\"is\":\"invalid\"}" ->
                new ReviewResult.Invalid(List.of(
                        new Fault(Pointer.of("/platforms/0/joists/spacing"), "600000 is too large", "at most 2000"),
                        new Fault(Pointer.of("").child("a b/ü"), "unknown member", "no such member")));
            case "{\"is\":\"unknown\"}" ->
                new ReviewResult.UnknownRuleset(
                        "There is no ruleset of 'atlantis'", "shire", Pointer.of("/ruleset/region"));
            case "{\"is\":\"drawn\"}" -> ReviewedDecks.reviewed("small-level-deck", sample -> {});
            case "{\"is\":\"failing\"}" -> throw new IllegalStateException("secret of the house");
            default -> new ReviewResult.Reviewed(report("Bächlein", finding("a").doesNotComply()), drawnAssessment());
        };
    }

    @Produces
    @Mock
    @Singleton
    Editions editions() {
        return new Editions() {
            @Override
            public List<EditionHeading> headings() {
                return List.of(ReportBuilder.edition().heading());
            }

            @Override
            public List<Edition> of(String region) {
                return Stream.of(ReportBuilder.edition())
                        .filter(e -> e.region().equals(region))
                        .toList();
            }

            @Override
            public List<Amendment> amendments(String region) {
                return List.of();
            }

            @Override
            public Optional<Amending> edition(String region, String name, List<String> amendments) {
                return of(region).stream()
                        .filter(e -> e.name().equals(name))
                        .findFirst()
                        .map(Amending.Amended::new);
            }
        };
    }

    /** Comparisons are of the rulesets that come with the service: an edition by hand has nothing to compare. */
    @Produces
    @Mock
    @Singleton
    Comparisons comparisons() {
        return BuiltInComparisons.COMPARISONS;
    }

    @Produces
    @Mock
    @Singleton
    Vocabulary vocabulary() {
        return ReportBuilder.VOCABULARY;
    }

    @Produces
    @Mock
    @Singleton
    RulesetChecker checker() {
        return (asked, progress) -> new RulesetChecker.Checked(
                asked.directory()
                        .map(d -> List.of(d + ":3: 'atLest' is not known. Accepted: atLeast"))
                        .orElse(List.of()),
                1,
                2);
    }
}
