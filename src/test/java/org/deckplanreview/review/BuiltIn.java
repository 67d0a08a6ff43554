package org.deckplanreview.review;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.deckplanreview.assessment.Assessment;
import org.deckplanreview.assessment.Assessor;
import org.deckplanreview.assessment.Catalogue;
import org.deckplanreview.report.Report;
import org.deckplanreview.ruleset.Edition;
import org.deckplanreview.ruleset.Rulesets;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SampleDeck;
import org.deckplanreview.submission.Submission;
import org.deckplanreview.submission.SubmissionReader;
import org.deckplanreview.vocabulary.Vocabulary;

/** The review as the service puts it together, with the rulesets that come with it, and the samples; loaded once for all tests. */
public final class BuiltIn {

    static final Path SAMPLES = Path.of("sample-submissions");

    public static final Catalogue CATALOGUE = ReviewServices.catalogue();
    public static final Vocabulary VOCABULARY = CATALOGUE.vocabulary();
    public static final Rulesets RULESETS = ReviewServices.builtIn(VOCABULARY);
    public static final Reviewer REVIEWER = ReviewServices.reviewerOf(CATALOGUE, RULESETS, "test");
    static final Edition ENGLAND_2024 = RULESETS.edition("uk-england", "2024").orElseThrow();

    private static final Map<Path, ReviewResult.Reviewed> SAMPLES_REVIEWED = new ConcurrentHashMap<>();

    private BuiltIn() {}

    static Report report(byte[] submission) {
        return reviewed(submission).report();
    }

    public static ReviewResult.Reviewed reviewed(byte[] submission) {
        ReviewResult result = REVIEWER.review(submission);
        if (result instanceof ReviewResult.Reviewed reviewed) {
            return reviewed;
        }
        throw new AssertionError(result);
    }

    /** A sample as it is, reviewed once for all tests. */
    public static ReviewResult.Reviewed reviewed(Path sample) {
        return SAMPLES_REVIEWED.computeIfAbsent(sample, file -> reviewed(read(file)));
    }

    static ReviewResult review(JsonNode submission) {
        return REVIEWER.review(bytes(submission));
    }

    /** Findings before they are rounded for show. */
    static Assessment assess(Submission submission) {
        return new Assessor(CATALOGUE).assess(submission, ENGLAND_2024);
    }

    static Submission submission(JsonNode document) {
        return submission(bytes(document));
    }

    static Submission submission(byte[] document) {
        ReadResult read = new SubmissionReader().read(document);
        if (read instanceof ReadResult.Read whole) {
            return whole.submission();
        }
        throw new AssertionError(read);
    }

    static byte[] bytes(JsonNode document) {
        return document.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The file of a sample, from its name without ending. */
    public static Path file(String sample) {
        return SAMPLES.resolve(sample + ".json");
    }

    static JsonNode sample(String name) {
        return document(SAMPLES.resolve(name));
    }

    static JsonNode document(Path file) {
        return SampleDeck.parse(new String(read(file), StandardCharsets.UTF_8));
    }

    /** The samples' files by name. */
    public static List<Path> samples() {
        return in(SAMPLES, ".json");
    }

    /** The files of a folder with that ending, by name. */
    static List<Path> in(Path folder, String ending) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
