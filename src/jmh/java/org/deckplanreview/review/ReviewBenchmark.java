package org.deckplanreview.review;

import java.util.concurrent.TimeUnit;
import org.deckplanreview.comparison.ComparisonResult;
import org.deckplanreview.comparison.Comparisons;
import org.deckplanreview.comparison.SubmissionComparer;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.rendering.pdf.PdfRendering;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.submission.ReadResult;
import org.deckplanreview.submission.SubmissionReader;
import org.deckplanreview.report.Detail;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a review of an ordinary deck costs, part by part.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(
        value = 1,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xmx1g"})
public class ReviewBenchmark {
    private final byte[] submission = BuiltIn.read(BuiltIn.SAMPLES.resolve("sloping-garden-deck.json"));
    private final SubmissionReader reader = new SubmissionReader();
    private final ReviewResult.Reviewed reviewed = (ReviewResult.Reviewed) BuiltIn.REVIEWER.review(submission);
    private final SubmissionComparer comparer = new Comparisons(
                    BuiltIn.REVIEWER, ReviewServices.editionsOf(BuiltIn.RULESETS), BuiltIn.CATALOGUE.vocabulary())
            .between(BuiltIn.RULESETS.edition("uk-england", "2014").orElseThrow(), BuiltIn.ENGLAND_2024);

    @Benchmark
    public ReadResult read() {
        return reader.read(submission);
    }

    @Benchmark
    public ReviewResult review() {
        return BuiltIn.REVIEWER.review(submission);
    }

    @Benchmark
    public byte[] reviewToJson() {
        return JsonRendering.line(BuiltIn.report(submission), Detail.FULL);
    }

    @Benchmark
    public byte[] writeJson() {
        return JsonRendering.line(reviewed.report(), Detail.FULL);
    }

    @Benchmark
    public String writeText() {
        return TextRendering.render(reviewed.report(), WorkingShown.GOVERNING);
    }

    @Benchmark
    public byte[] writePdf() {
        return PdfRendering.render(DrawnDeck.of(reviewed.assessment(), reviewed.report()));
    }

    @Benchmark
    public ComparisonResult compareEditions() {
        return comparer.compare(submission);
    }
}
