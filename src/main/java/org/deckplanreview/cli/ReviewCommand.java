package org.deckplanreview.cli;

import io.quarkus.runtime.configuration.MemorySize;
import jakarta.inject.Provider;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.rendering.csv.CsvRendering;
import org.deckplanreview.rendering.drawing.Drawings;
import org.deckplanreview.rendering.drawing.DrawnDeck;
import org.deckplanreview.rendering.html.Form;
import org.deckplanreview.rendering.html.HtmlRendering;
import org.deckplanreview.rendering.json.JsonRendering;
import org.deckplanreview.rendering.pdf.PdfRendering;
import org.deckplanreview.rendering.sarif.SarifRendering;
import org.deckplanreview.rendering.text.PlainText;
import org.deckplanreview.rendering.text.TextRendering;
import org.deckplanreview.rendering.text.WorkingShown;
import org.deckplanreview.report.Detail;
import org.deckplanreview.report.Report;
import org.deckplanreview.review.ReviewResult;
import org.deckplanreview.review.Reviewer;
import org.deckplanreview.submission.Fault;
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

    private final Provider<Reviewer> reviewer;
    private final long limit;

    @Spec
    CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The submission; - for standard input.")
    String file;

    @Option(names = "--json", description = "Print the report as JSON, on one line.")
    boolean json;

    @Option(
            names = "--detail",
            paramLabel = "WHICH",
            defaultValue = "full",
            converter = DetailWord.class,
            description = "How much of the report --json prints: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    Detail detail;

    @Option(
            names = "--working",
            paramLabel = "WHICH",
            defaultValue = "governing",
            converter = WorkingWord.class,
            description =
                    "Calculations in the text report: ${COMPLETION-CANDIDATES}. Governing ones are those that do not comply"
                            + " and the most utilised one of each concern. Default: ${DEFAULT-VALUE}.")
    WorkingShown working;

    @Option(names = "--html", paramLabel = "FILE", description = "Write the report as a page of HTML, too.")
    Optional<Path> html;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write the report as PDF, too.")
    Optional<Path> pdf;

    @Option(names = "--svg", paramLabel = "FILE", description = "Write the plan as SVG, too.")
    Optional<Path> svg;

    @Option(names = "--sarif", paramLabel = "FILE", description = "Write the open findings as SARIF 2.1.0, too.")
    Optional<Path> sarif;

    @Option(names = "--csv", paramLabel = "FILE", description = "Write the findings as CSV, too.")
    Optional<Path> csv;

    @Option(names = "--schedule-csv", paramLabel = "FILE", description = "Write the site schedule as CSV, too.")
    Optional<Path> scheduleCsv;

    ReviewCommand(
            Provider<Reviewer> reviewer,
            @ConfigProperty(name = "deckplanreview.submission.max-size") MemorySize limit) {
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
        return tell(reviewer.get().review(submission), submission);
    }

    private InputStream open() throws IOException {
        return file.equals(STANDARD_INPUT) ? System.in : Files.newInputStream(Path.of(file));
    }

    private int tell(ReviewResult result, byte[] submission) {
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
        ReviewResult.Reviewed reviewed = (ReviewResult.Reviewed) result;
        Report report = reviewed.report();
        if (!hasWritten(DrawnDeck.of(reviewed.assessment(), report), submission)) {
            return ExitCode.SOFTWARE;
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                json
                        ? new String(JsonRendering.line(report, detail), StandardCharsets.UTF_8)
                        : TextRendering.render(report, working));
        out.flush();
        return ExitCode.of(report.outcome());
    }

    /** Whether every file that was asked for is there; what stopped one is told. */
    private boolean hasWritten(DrawnDeck deck, byte[] submission) {
        return hasWritten(html, () -> HtmlRendering.render(deck, Form.SCREEN).getBytes(StandardCharsets.UTF_8))
                && hasWritten(pdf, () -> PdfRendering.render(deck))
                && hasWritten(svg, () -> Drawings.plan(deck).get(0).svg().getBytes(StandardCharsets.UTF_8))
                && hasWritten(sarif, () -> SarifRendering.render(deck.report(), submission, fileUri()))
                && hasWritten(csv, () -> CsvRendering.findings(deck.report()))
                && hasWritten(scheduleCsv, () -> CsvRendering.schedule(deck.report()));
    }

    /** The file as the command line names it, so that a log made in a repository names it from there. */
    private String fileUri() {
        String name = file.equals(STANDARD_INPUT) ? "submission.json" : file.replace(File.separatorChar, '/');
        try {
            return new URI(null, null, name, null).toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("A path is always a URI's path", e);
        }
    }

    private boolean hasWritten(Optional<Path> target, Supplier<byte[]> content) {
        if (target.isEmpty()) {
            return true;
        }
        try {
            Files.write(target.get(), content.get());
            return true;
        } catch (NoSuchFileException e) {
            complain(target.get() + " cannot be written: there is no such directory");
        } catch (AccessDeniedException e) {
            complain(target.get() + " cannot be written: it may not be written to");
        } catch (FileSystemException e) {
            complain(target.get() + " cannot be written: "
                    + Optional.ofNullable(e.getReason()).orElse("the system does not say why"));
        } catch (IOException e) {
            complain(target.get() + " cannot be written: " + e.getMessage());
        }
        return false;
    }

    private void complain(String why) {
        PrintWriter err = spec.commandLine().getErr();
        err.print(PlainText.of(why) + "\n");
        err.flush();
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
