package org.deckplanreview.cli;

import io.quarkus.runtime.configuration.MemorySize;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.rendering.text.PlainText;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.report.Report;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.review.Reviewer;
import org.deckplanreview.submission.Fault;
import org.deckplanreview.submission.Pointer;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "review",
        description = "Reviews one submission and prints the report.",
        exitCodeList = {
            "0:complies, in all that the provisions demand",
            "1:does not comply",
            "2:undetermined: what is missing stands in the report",
            "3:not a valid submission, not readable, or under an unknown ruleset",
            ExitCode.USAGE_MEANS,
            ExitCode.SOFTWARE_MEANS
        })
class ReviewCommand implements Callable<Integer> {
    private static final String STANDARD_INPUT = "-";

    private final Reviewer reviewer;
    private final long limit;

    @Spec
    CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The submission; - for standard input.")
    String file;

    @Option(names = "--json", description = "Print the report as JSON.")
    boolean json;

    @Option(
            names = "--working",
            paramLabel = "WHICH",
            defaultValue = "governing",
            converter = WorkingWord.class,
            description =
                    "Calculations in the text report: ${COMPLETION-CANDIDATES}. Governing ones are those that do not comply"
                            + " and the most utilised one of each concern. Default: ${DEFAULT-VALUE}.")
    WorkingShown working;

    ReviewCommand(Reviewer reviewer, @ConfigProperty(name = "deckplanreview.submission.max-size") MemorySize limit) {
        this.reviewer = reviewer;
        this.limit = limit.asLongValue();
    }

    @Override
    public Integer call() {
        byte[] submission;
        try (InputStream in = open()) {
            submission = in.readNBytes((int) Math.min(Integer.MAX_VALUE - 8, limit + 1));
        } catch (NoSuchFileException e) {
            return refuse("cannot be read: there is no such file", List.of());
        } catch (IOException e) {
            return refuse("cannot be read: " + e.getMessage(), List.of());
        }
        if (submission.length > limit) {
            return refuse("is larger than a submission may be, " + limit + " bytes", List.of());
        }
        return tell(reviewer.review(submission));
    }

    private InputStream open() throws IOException {
        return file.equals(STANDARD_INPUT) ? System.in : Files.newInputStream(Path.of(file));
    }

    private int tell(ReviewResult result) {
        if (result instanceof ReviewResult.NotJson notJson) {
            return refuse(
                    "is not JSON: line " + notJson.line() + ", column " + notJson.column() + ": " + notJson.detail(),
                    List.of());
        }
        if (result instanceof ReviewResult.UnknownRuleset unknown) {
            return refuse(
                    "asks for a ruleset that there is none of:",
                    List.of(new Fault(unknown.pointer(), unknown.detail(), unknown.accepted())));
        }
        if (result instanceof ReviewResult.Invalid invalid) {
            return refuse("is not a valid submission:", invalid.faults());
        }
        Report report = ((ReviewResult.Reviewed) result).report();
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                json
                        ? new String(JsonRendering.render(report), StandardCharsets.UTF_8)
                        : TextRendering.render(report, working));
        out.flush();
        return ExitCode.of(report.outcome());
    }

    private int refuse(String why, List<Fault> faults) {
        PrintWriter err = spec.commandLine().getErr();
        String name = file.equals(STANDARD_INPUT) ? "standard input" : file;
        err.print(PlainText.of(name + " " + why) + "\n");
        for (Fault fault : faults) {
            String place = fault.pointer().equals(Pointer.ROOT)
                    ? "the whole document"
                    : fault.pointer().value();
            err.print(PlainText.of(place) + "\n");
            err.print("    " + PlainText.of(fault.detail()) + "\n");
            err.print("    Accepted: " + PlainText.of(fault.accepted()) + "\n");
        }
        err.flush();
        return ExitCode.NOT_A_SUBMISSION;
    }
}
