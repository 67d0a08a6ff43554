package org.deckplanreview.comparison;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.review.ReviewServices;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Rulesets;

/** Comparisons as the service makes them, with the rulesets and samples that come with it. */
public final class BuiltInComparisons {

    static final Catalogue CATALOGUE = ReviewServices.catalogue();
    static final Rulesets RULESETS = ReviewServices.builtIn(CATALOGUE.vocabulary());
    public static final Comparisons COMPARISONS = new Comparisons(
            ReviewServices.reviewerOf(CATALOGUE, RULESETS, "test"),
            ReviewServices.editionsOf(RULESETS),
            CATALOGUE.vocabulary());

    static final Edition ENGLAND_2014 = edition("uk-england", "2014");
    static final Edition ENGLAND_2024 = edition("uk-england", "2024");
    static final Edition SCOTLAND_2024 = edition("uk-scotland", "2024");

    private BuiltInComparisons() {}

    static Edition edition(String region, String name) {
        return RULESETS.edition(region, name).orElseThrow();
    }

    static SubmissionComparison compare(byte[] submission, Edition from, Edition to) {
        ComparisonResult result = COMPARISONS.between(from, to).compare(submission);
        if (result instanceof ComparisonResult.Compared compared) {
            return compared.comparison();
        }
        throw new AssertionError(result);
    }

    static byte[] sample(String name) {
        return read(Path.of("sample-submissions", name));
    }

    /** The bytes of every sample, by name. */
    static List<byte[]> samples() {
        try (Stream<Path> files = Files.list(Path.of("sample-submissions"))) {
            return files.filter(f -> f.toString().endsWith(".json"))
                    .sorted()
                    .map(BuiltInComparisons::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A sample on one line. */
    static String line(byte[] submission) {
        return new String(submission, StandardCharsets.UTF_8)
                .replaceAll("\\s*\\R\\s*", " ")
                .strip();
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
