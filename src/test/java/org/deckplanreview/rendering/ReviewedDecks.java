package org.deckplanreview.rendering;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.deckplanreview.rendering.drawing.Drawing;
import org.deckplanreview.rendering.drawing.DrawingKind;
import org.deckplanreview.rendering.drawing.Drawings;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.report.Report;
import org.deckplanreview.review.BuiltIn;
import org.deckplanreview.review.ReviewResult;

/** Decks as renderings take them, reviewed as the service does. */
public final class ReviewedDecks {
    private ReviewedDecks() {}

    /** Names of all samples, without ending. */
    public static List<String> names() {
        return BuiltIn.samples().stream()
                .map(file -> file.getFileName().toString().replaceFirst("\\.json$", ""))
                .toList();
    }

    public static byte[] bytes(String sample) {
        return BuiltIn.read(BuiltIn.file(sample));
    }

    /** A sample with these words in place of others. */
    public static byte[] changed(String sample, String from, String to) {
        String text = new String(bytes(sample), StandardCharsets.UTF_8);
        if (!text.contains(from)) {
            throw new IllegalArgumentException(sample + " has no " + from);
        }
        return text.replace(from, to).getBytes(StandardCharsets.UTF_8);
    }

    public static Report report(byte[] submission) {
        return BuiltIn.reviewed(submission).report();
    }

    /** Reviewed once for all tests. */
    public static Report report(String sample) {
        return BuiltIn.reviewed(BuiltIn.file(sample)).report();
    }

    /** Reviewed once for all tests. */
    public static DrawnDeck sample(String name) {
        return drawn(BuiltIn.reviewed(BuiltIn.file(name)));
    }

    /** A sample with something changed. */
    public static DrawnDeck sample(String name, Consumer<ObjectNode> change) {
        return drawn(reviewed(name, change));
    }

    public static DrawnDeck of(byte[] submission) {
        return drawn(BuiltIn.reviewed(submission));
    }

    public static ReviewResult.Reviewed reviewed(String sample, Consumer<ObjectNode> change) {
        try {
            ObjectMapper json = new ObjectMapper();
            ObjectNode submission = (ObjectNode) json.readTree(bytes(sample));
            change.accept(submission);
            return BuiltIn.reviewed(json.writeValueAsBytes(submission));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static DrawnDeck drawn(ReviewResult.Reviewed reviewed) {
        return DrawnDeck.of(reviewed.assessment(), reviewed.report());
    }

    public static List<Drawing> drawings(DrawnDeck deck) {
        return Stream.of(DrawingKind.values())
                .flatMap(kind -> Drawings.of(kind, deck).stream())
                .toList();
    }
}
