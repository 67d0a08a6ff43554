package org.deckplanreview.rendering.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.review.ReviewServices;
import org.deckplanreview.review.Reviewer;

/** Reviewed decks as drawings take them, under the rulesets that come with the service. */
final class DrawnDecks {

    private static final Reviewer REVIEWER = reviewer();

    private DrawnDecks() {}

    private static Reviewer reviewer() {
        Catalogue catalogue = ReviewServices.catalogue();
        return ReviewServices.reviewerOf(catalogue, ReviewServices.builtIn(catalogue.vocabulary()), "test");
    }

    static DrawnDeck of(byte[] submission) {
        ReviewResult result = REVIEWER.review(submission);
        if (result instanceof ReviewResult.Reviewed reviewed) {
            return DrawnDeck.of(reviewed.assessment(), reviewed.report());
        }
        throw new AssertionError(result);
    }

    static DrawnDeck sample(String name) {
        try {
            return of(Files.readAllBytes(Path.of("sample-submissions").resolve(name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** File names of the samples. */
    static List<String> samples() {
        try (Stream<Path> files = Files.list(Path.of("sample-submissions"))) {
            return files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".json"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Drawing> all(DrawnDeck deck) {
        return Stream.of(DrawingKind.values())
                .flatMap(k -> Drawings.of(k, deck).stream())
                .toList();
    }
}
