package org.deckplanreview.rendering;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.report.Report;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.review.ReviewServices;
import org.deckplanreview.review.Reviewer;

/** The samples that come with the project, reviewed. */
public final class ReviewedSamples {

    private static final Path DIRECTORY = Path.of("sample-submissions");
    private static final Catalogue CATALOGUE = ReviewServices.catalogue();
    private static final Reviewer REVIEWER =
            ReviewServices.reviewerOf(CATALOGUE, ReviewServices.builtIn(CATALOGUE.vocabulary()), "1.2.3");

    private ReviewedSamples() {}

    /** Names of the files, in rising order. */
    public static List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(DIRECTORY)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    public static byte[] bytes(String name) throws IOException {
        return Files.readAllBytes(DIRECTORY.resolve(name));
    }

    public static Report report(byte[] submission) {
        return reviewed(submission).report();
    }

    public static ReviewResult.Reviewed reviewed(byte[] submission) {
        return (ReviewResult.Reviewed) REVIEWER.review(submission);
    }

    /** A sample whose text has these words in place of others. */
    public static byte[] changed(String name, String from, String to) throws IOException {
        String text = Files.readString(DIRECTORY.resolve(name));
        if (!text.contains(from)) {
            throw new IllegalArgumentException(name + " has no " + from);
        }
        return text.replace(from, to).getBytes(StandardCharsets.UTF_8);
    }
}
