package org.deckplanreview.review;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.report.Detail;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How the cost of a review grows with the deck: joists, beams, posts and footings from ten to as many as may be submitted. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 4)
@Measurement(iterations = 3, time = 4)
@Fork(
        value = 1,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xmx2g"})
public class GrowthBenchmark {

    /** Platforms, joists on each, beams under each, posts under each beam. */
    @Param({"1 4 2 2", "1 26 8 4", "4 50 10 10", "10 24 20 10"})
    public String deck;

    private byte[] submission;

    /** Joists, beams, and posts with their footings. */
    static int members(String deck) {
        int[] n = numbers(deck);
        return n[0] * (n[1] + n[2] + 2 * n[2] * n[3]);
    }

    private static int[] numbers(String deck) {
        return Arrays.stream(deck.split(" ")).mapToInt(Integer::parseInt).toArray();
    }

    @Setup
    public void build() {
        int[] n = numbers(deck);
        submission = new LargeDeck()
                .platforms(n[0])
                .joists(n[1])
                .beams(n[2], n[3])
                .bytes();
    }

    @Benchmark
    public byte[] reviewToJson() {
        return JsonRendering.line(BuiltIn.report(submission), Detail.FULL);
    }
}
