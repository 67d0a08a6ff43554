package org.deckplanreview.rendering;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.review.ReviewServices;
import org.deckplanreview.review.Reviewer;

/** The samples as the service reviews them. */
public final class ReviewedDecks {
    private static final Path SAMPLES = Path.of("sample-submissions");
    private static final Catalogue CATALOGUE = ReviewServices.catalogue();
    private static final Reviewer REVIEWER =
            ReviewServices.reviewerOf(CATALOGUE, ReviewServices.builtIn(CATALOGUE.vocabulary()), "test");

    private ReviewedDecks() {}

    /** Names of all samples, without ending. */
    public static List<String> names() {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".json"))
                    .map(f -> f.substring(0, f.length() - ".json".length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static DrawnDeck sample(String name) {
        return sample(name, submission -> {});
    }

    /** A sample with something changed. */
    public static DrawnDeck sample(String name, Consumer<ObjectNode> change) {
        ReviewResult.Reviewed reviewed = reviewed(name, change);
        return DrawnDeck.of(reviewed.assessment(), reviewed.report());
    }

    public static ReviewResult.Reviewed reviewed(String name, Consumer<ObjectNode> change) {
        try {
            ObjectMapper json = new ObjectMapper();
            ObjectNode submission =
                    (ObjectNode) json.readTree(SAMPLES.resolve(name + ".json").toFile());
            change.accept(submission);
            ReviewResult result = REVIEWER.review(json.writeValueAsBytes(submission));
            if (result instanceof ReviewResult.Reviewed reviewed) {
                return reviewed;
            }
            throw new AssertionError(result);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
