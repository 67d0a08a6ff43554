package org.deckplanreview.comparison;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.deckplanreview.comparison.BuiltInComparisons.COMPARISONS;
import static org.deckplanreview.comparison.BuiltInComparisons.ENGLAND_2014;
import static org.deckplanreview.comparison.BuiltInComparisons.ENGLAND_2024;
import static org.deckplanreview.comparison.BuiltInComparisons.SCOTLAND_2024;
import static org.deckplanreview.comparison.BuiltInComparisons.compare;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.deckplanreview.review.InOrder;
import org.deckplanreview.review.SubmissionLines;
import org.deckplanreview.ruleset.Edition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Many submissions under two editions. */
class CorpusComparisonTest {
    private static final int MOST_BYTES = 2_000_000;

    private static final List<byte[]> SAMPLES = BuiltInComparisons.samples();

    private static Run withinEngland;
    private static Run toScotland;

    private record Run(String lines, ComparisonSummary summary) {}

    private static Run run(String input, Edition from, Edition to, int threads) {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            ComparisonSummary summary = new CorpusComparison(
                            COMPARISONS.between(from, to), new InOrder(workers, 2 * threads))
                    .run(
                            new SubmissionLines(new ByteArrayInputStream(input.getBytes(UTF_8)), MOST_BYTES),
                            CorpusComparisonTest::line,
                            lines::write);
            return new Run(lines.toString(UTF_8), summary);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            workers.shutdownNow();
        }
    }

    /** Not while the class is made ready, for which the threads of a run would wait. */
    @BeforeAll
    static void runOnce() {
        withinEngland = run(samples(), ENGLAND_2014, ENGLAND_2024, 3);
        toScotland = run(samples(), ENGLAND_2024, SCOTLAND_2024, 4);
    }

    private static byte[] line(long number, String name, ComparisonResult result) {
        return result instanceof ComparisonResult.Compared compared
                ? ComparisonJson.line(compared.comparison())
                : (number + " " + result.getClass().getSimpleName() + "\n").getBytes(UTF_8);
    }

    private static String samples() {
        return SAMPLES.stream().map(BuiltInComparisons::line).collect(Collectors.joining("\n"));
    }

    @Test
    void a_corpus_comes_to_the_sum_of_its_submissions() {
        List<SubmissionComparison> single = SAMPLES.stream()
                .map(s -> compare(s, ENGLAND_2024, SCOTLAND_2024))
                .toList();
        ComparisonSummary summary = toScotland.summary();

        assertThat(summary.submissions()).isEqualTo(single.size());
        assertThat(summary.refused()).isZero();
        assertThat(summary.gotWorse())
                .isEqualTo(
                        single.stream().filter(SubmissionComparison::gotWorse).count())
                .isPositive();
        assertThat(summary.gotBetter())
                .isEqualTo(
                        single.stream().filter(SubmissionComparison::gotBetter).count());
        for (ComparisonSummary.OutcomeTally tally : summary.outcomes()) {
            assertThat(tally.submissions())
                    .as("%s to %s", tally.before(), tally.after())
                    .isEqualTo(single.stream()
                            .map(SubmissionComparison::outcome)
                            .filter(o -> o.before() == tally.before() && o.after() == tally.after())
                            .count());
        }
        assertThat(summary.findings())
                .isEqualTo(single.stream()
                        .map(SubmissionComparison::counts)
                        .reduce(SubmissionComparison.Counts.NONE, SubmissionComparison.Counts::plus));
        for (ComparisonSummary.CauseTally cause : summary.causes()) {
            assertThat(cause.findings())
                    .as("%s", cause.provision())
                    .isEqualTo(single.stream()
                            .flatMap(s -> s.findings().stream())
                            .filter(f -> f.cause().provision().equals(cause.provision()))
                            .count())
                    .isPositive();
        }
        assertThat(summary.causes().stream()
                        .mapToLong(ComparisonSummary.CauseTally::findings)
                        .sum())
                .isEqualTo(single.stream().mapToLong(s -> s.findings().size()).sum());
    }

    @Test
    void each_line_is_that_of_the_submission_alone() {
        String expected = SAMPLES.stream()
                .map(BuiltInComparisons::line)
                .map(line -> new String(
                        ComparisonJson.line(compare(line.getBytes(UTF_8), ENGLAND_2014, ENGLAND_2024)), UTF_8))
                .collect(Collectors.joining());

        assertThat(withinEngland.lines()).isEqualTo(expected);
    }

    @Test
    void the_number_of_threads_changes_no_byte() {
        Run one = run(samples(), ENGLAND_2024, SCOTLAND_2024, 1);

        assertThat(toScotland.lines()).isEqualTo(one.lines());
        assertThat(ComparisonJson.line(toScotland.summary())).isEqualTo(ComparisonJson.line(one.summary()));
    }

    @Test
    void the_causes_come_by_falling_number_and_then_by_name() {
        List<ComparisonSummary.CauseTally> causes = withinEngland.summary().causes();

        assertThat(causes).hasSizeGreaterThan(2);
        for (int i = 1; i < causes.size(); i++) {
            ComparisonSummary.CauseTally before = causes.get(i - 1);
            ComparisonSummary.CauseTally after = causes.get(i);
            assertThat(before.findings()).isGreaterThanOrEqualTo(after.findings());
            if (before.findings() == after.findings()) {
                assertThat(before.provision().orElseThrow())
                        .isLessThan(after.provision().orElseThrow());
            }
        }
    }

    @Test
    void bad_lines_are_told_in_their_place_and_the_others_go_on() {
        String good = BuiltInComparisons.line(SAMPLES.get(0));
        String input = "{\r\n\r\n" + good + "\r\n{\"a\": 1}\n" + " ".repeat(MOST_BYTES + 1) + "\n  \n" + good;
        Run run = run(input, ENGLAND_2014, ENGLAND_2024, 2);
        List<String> lines = run.lines().lines().toList();

        assertThat(lines).hasSize(5);
        assertThat(lines.get(0)).isEqualTo("1 Refused");
        assertThat(lines.get(1)).startsWith("{\"notice\"");
        assertThat(lines.get(2)).isEqualTo("4 Refused");
        assertThat(lines.get(3)).isEqualTo("5 TooLarge");
        assertThat(lines.get(4)).isEqualTo(lines.get(1));
        assertThat(run.summary().submissions()).isEqualTo(5);
        assertThat(run.summary().refused()).isEqualTo(3);
    }

    @Test
    void the_summary_is_as_the_published_schema_says() {
        assertThat(ComparisonSchema.faults("lastLine", new String(ComparisonJson.line(toScotland.summary()), UTF_8)))
                .isEmpty();
        assertThat(toScotland.summary().firstWorse())
                .hasSize((int) toScotland.summary().gotWorse());
    }
}
