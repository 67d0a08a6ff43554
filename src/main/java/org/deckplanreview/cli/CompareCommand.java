package org.deckplanreview.cli;

import io.quarkus.runtime.configuration.MemorySize;
import jakarta.inject.Provider;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.deckplanreview.comparison.ComparisonJson;
import org.deckplanreview.comparison.ComparisonPages;
import org.deckplanreview.comparison.ComparisonSummary;
import org.deckplanreview.comparison.Comparisons;
import org.deckplanreview.comparison.CorpusComparison;
import org.deckplanreview.comparison.EditionLookup;
import org.deckplanreview.comparison.SubmissionComparer;
import org.deckplanreview.rendering.text.PlainText;
import org.deckplanreview.review.InOrder;
import org.deckplanreview.ruleset.Edition;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "compare",
        description = "Compares many submissions under two editions and tells which got worse, and by which provision.",
        exitCodeList = {
            "0:nothing got worse",
            "1:something got worse: an outcome, a finding, or a new finding that leaves something to do",
            "3:some submissions could not be compared, whatever became of the others",
            ExitCode.USAGE_MEANS,
            ExitCode.SOFTWARE_MEANS
        })
class CompareCommand implements Callable<Integer> {
    private final Provider<Comparisons> comparisons;
    private final long limit;

    @Spec
    CommandSpec spec;

    @Parameters(
            paramLabel = "INPUT",
            description =
                    "A directory, of which every .json file is a submission; a .json file; any other file with one submission"
                            + " a line (NDJSON); or - for such lines from standard input.")
    String input;

    @Option(
            names = "--from",
            required = true,
            paramLabel = "REGION/EDITION",
            description = "The first edition, for example uk-england/2014.")
    String from;

    @Option(names = "--to", required = true, paramLabel = "REGION/EDITION", description = "The second edition.")
    String to;

    @Option(names = "--html", paramLabel = "FILE", description = "Write the summary as a page with a chart.")
    Optional<Path> html;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description =
                    "Write every comparison as a line of JSON, in the order of input, and the summary as the last one.")
    Optional<Path> json;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description =
                    "How many work at once; as many as there are processors if" + " left out. The result is the same.")
    Optional<Integer> threads;

    CompareCommand(
            Provider<Comparisons> comparisons,
            @ConfigProperty(name = "deckplanreview.submission.max-size") MemorySize limit) {
        this.comparisons = comparisons;
        this.limit = limit.asLongValue();
    }

    @Override
    public Integer call() {
        SubmissionComparer comparer = comparisons.get().between(edition("--from", from), edition("--to", to));
        try {
            ComparisonSummary summary = compare(comparer);
            if (summary.submissions() == 0) {
                throw wrong("There is no submission in " + input);
            }
            if (html.isPresent()) {
                Files.writeString(html.get(), ComparisonPages.of(summary), StandardCharsets.UTF_8);
            }
            PrintWriter out = spec.commandLine().getOut();
            out.print(SummaryText.of(summary));
            out.flush();
            return exit(summary);
        } catch (IOException e) {
            spec.commandLine().getErr().println(PlainText.of("The comparison failed: " + e));
            return ExitCode.SOFTWARE;
        }
    }

    private ComparisonSummary compare(SubmissionComparer comparer) throws IOException {
        int most = threads.orElseGet(() -> Runtime.getRuntime().availableProcessors());
        if (most < 1) {
            throw wrong("--threads is at least 1, not " + most);
        }
        ProgressBar progress = new ProgressBar(spec.commandLine().getErr(), System.console() != null);
        ExecutorService workers = Executors.newFixedThreadPool(most);
        try (SubmissionInput submissions = open();
                OutputStream lines = lines()) {
            CorpusComparison corpus = new CorpusComparison(comparer, new InOrder(workers, 2 * most));
            ComparisonSummary summary = corpus.run(submissions, ComparedLine::of, line -> {
                line.complaint().ifPresent(text -> progress.interruptedBy(PlainText.of(text)));
                lines.write(line.json());
                progress.show(submissions.done());
            });
            lines.write(ComparisonJson.line(summary));
            return summary;
        } finally {
            progress.end();
            workers.shutdownNow();
        }
    }

    private static int exit(ComparisonSummary summary) {
        if (summary.refused() > 0) {
            return ExitCode.NOT_A_SUBMISSION;
        }
        return summary.gotWorse() > 0 ? ExitCode.GOT_WORSE : 0;
    }

    private Edition edition(String option, String name) {
        String[] parts = name.split("/", 2);
        if (parts.length < 2) {
            throw wrong(
                    option + " is a region and an edition with a slash between, not '" + name + "'. Accepted: one of "
                            + String.join(", ", comparisons.get().names()));
        }
        EditionLookup found = comparisons.get().edition(parts[0], parts[1]);
        if (found instanceof EditionLookup.Unknown unknown) {
            throw wrong(option + ": " + unknown.detail() + " Accepted: " + unknown.accepted());
        }
        return ((EditionLookup.Found) found).edition();
    }

    private SubmissionInput open() throws IOException {
        if (input.equals("-")) {
            return SubmissionInput.ofLines(System.in, limit);
        }
        Path path = Path.of(input);
        if (Files.isDirectory(path)) {
            return SubmissionInput.ofFiles(SubmissionInput.jsonFiles(path), limit);
        }
        if (!Files.isReadable(path)) {
            throw wrong("There is no file or directory " + input + " that can be read");
        }
        return input.endsWith(".json")
                ? SubmissionInput.ofFiles(List.of(path), limit)
                : SubmissionInput.ofFile(path, limit);
    }

    private OutputStream lines() throws IOException {
        return json.isPresent()
                ? new BufferedOutputStream(Files.newOutputStream(json.get()))
                : OutputStream.nullOutputStream();
    }

    private ParameterException wrong(String why) {
        return new ParameterException(spec.commandLine(), PlainText.of(why));
    }
}
