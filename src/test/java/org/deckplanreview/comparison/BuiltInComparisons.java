package org.deckplanreview.comparison;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.deckplanreview.review.BuiltIn;
import org.deckplanreview.review.ReviewServices;
import org.deckplanreview.ruleset.Edition;

/** Comparisons as the service makes them, with the rulesets and samples that come with it. */
public final class BuiltInComparisons {

    public static final Comparisons COMPARISONS =
            new Comparisons(BuiltIn.REVIEWER, ReviewServices.editionsOf(BuiltIn.RULESETS), BuiltIn.VOCABULARY);

    static final Edition ENGLAND_2014 = edition("uk-england", "2014");
    static final Edition ENGLAND_2024 = edition("uk-england", "2024");
    static final Edition SCOTLAND_2024 = edition("uk-scotland", "2024");

    private BuiltInComparisons() {}

    static Edition edition(String region, String name) {
        return BuiltIn.RULESETS.edition(region, name).orElseThrow();
    }

    static SubmissionComparison compare(byte[] submission, Edition from, Edition to) {
        ComparisonResult result = COMPARISONS.between(from, to).compare(submission);
        if (result instanceof ComparisonResult.Compared compared) {
            return compared.comparison();
        }
        throw new AssertionError(result);
    }

    static byte[] sample(String name) {
        return BuiltIn.read(BuiltIn.file(name));
    }

    /** The bytes of every sample, by name. */
    static List<byte[]> samples() {
        return BuiltIn.samples().stream().map(BuiltIn::read).toList();
    }

    /** A sample on one line. */
    static String line(byte[] submission) {
        return new String(submission, StandardCharsets.UTF_8)
                .replaceAll("\\s*\\R\\s*", " ")
                .strip();
    }
}
